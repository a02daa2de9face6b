# The Debian package of the development files, made by cpack.
set(CPACK_GENERATOR DEB)
set(CPACK_PACKAGE_NAME libfieldshaft-dev)
set(CPACK_PACKAGE_CONTACT "the fieldshaft maintainers")
set(CPACK_PACKAGE_DESCRIPTION_SUMMARY ${PROJECT_DESCRIPTION})
set(CPACK_PACKAGING_INSTALL_PREFIX /usr)
set(CPACK_DEBIAN_FILE_NAME libfieldshaft-dev_${PROJECT_VERSION}_${CMAKE_SYSTEM_PROCESSOR}.deb)
set(CPACK_DEBIAN_PACKAGE_SECTION libdevel)
set(CPACK_DEBIAN_PACKAGE_DEPENDS "libboost-dev (>= 1.74), libeigen3-dev (>= 3.4)")
set(CPACK_DEBIAN_PACKAGE_DESCRIPTION
  "Torque, spline and shaft stress, joint angles and telescoping length over the hitch geometry,
 blade tip speed and what hangs on them, with a source and a unit for every number.")
include(CPack)
