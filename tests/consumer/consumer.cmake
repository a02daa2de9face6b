# Programs outside the tree use each component in every way that a project may bring it in.
set(stage ${CMAKE_CURRENT_BINARY_DIR}/stage)
add_test(NAME consumer/install
  COMMAND ${CMAKE_COMMAND} --install ${PROJECT_BINARY_DIR} --prefix ${stage})
set_tests_properties(consumer/install PROPERTIES FIXTURES_SETUP staged_install)

# consumer_test(name component way [options ...])
function(consumer_test name component way)
  set(test consumer/${name})
  string(REPLACE "/" "_" folder ${name})
  add_test(NAME ${test} COMMAND ${CMAKE_CTEST_COMMAND}
    --build-and-test ${CMAKE_CURRENT_SOURCE_DIR}/consumer ${CMAKE_CURRENT_BINARY_DIR}/consumer/${folder}
    --build-generator ${CMAKE_GENERATOR}
    --build-options -DCOMPONENT=${component} -DWAY=${way} -DFIELDSHAFT_SOURCE=${PROJECT_SOURCE_DIR}
      -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_COMPILER=${CMAKE_CXX_COMPILER} -DCMAKE_CXX_FLAGS=${CMAKE_CXX_FLAGS} ${ARGN}
    --test-command ctest --output-on-failure)
  set_tests_properties(${test} PROPERTIES FIXTURES_REQUIRED staged_install TIMEOUT 600
    ENVIRONMENT "PKG_CONFIG_PATH=${stage}/${CMAKE_INSTALL_LIBDIR}/pkgconfig;LD_LIBRARY_PATH=${stage}/${CMAKE_INSTALL_LIBDIR}")
endfunction()

foreach(component formulas geometry fieldshaft)
  consumer_test(${component}/find_package ${component} find_package -DCMAKE_PREFIX_PATH=${stage})
endforeach()
consumer_test(fieldshaft/add_subdirectory fieldshaft add_subdirectory)
consumer_test(formulas/fetch_content formulas fetch_content)
consumer_test(geometry/fetch_content geometry fetch_content)
consumer_test(fieldshaft/pkg_config fieldshaft pkg_config)
foreach(standard 20 23)
  if(cxx_std_${standard} IN_LIST CMAKE_CXX_COMPILE_FEATURES)
    consumer_test(geometry/standard_${standard} geometry find_package
      -DCMAKE_PREFIX_PATH=${stage} -DCMAKE_CXX_STANDARD=${standard})
    consumer_test(fieldshaft/standard_${standard} fieldshaft find_package
      -DCMAKE_PREFIX_PATH=${stage} -DCMAKE_CXX_STANDARD=${standard})
  endif()
endforeach()

# The Debian package holds what a project needs: built, unpacked into a folder, and linked from there.
set(package_dir ${CMAKE_CURRENT_BINARY_DIR}/package)
add_test(NAME consumer/package/build COMMAND ${CMAKE_CPACK_COMMAND} -G DEB -B ${package_dir}
  --config ${PROJECT_BINARY_DIR}/CPackConfig.cmake)
set_tests_properties(consumer/package/build PROPERTIES FIXTURES_SETUP built_package)
add_test(NAME consumer/package/unpack COMMAND dpkg-deb -x
  ${package_dir}/libfieldshaft-dev_${PROJECT_VERSION}_${CMAKE_SYSTEM_PROCESSOR}.deb ${package_dir}/unpacked)
set_tests_properties(consumer/package/unpack PROPERTIES
  FIXTURES_REQUIRED built_package FIXTURES_SETUP unpacked_package)
consumer_test(package/use fieldshaft find_package -DCMAKE_PREFIX_PATH=${package_dir}/unpacked/usr)
set_tests_properties(consumer/package/use PROPERTIES FIXTURES_REQUIRED unpacked_package)

# A component that does not exist is refused with a message that says what there is.
add_test(NAME consumer/unknown_component COMMAND ${CMAKE_COMMAND}
  -S ${CMAKE_CURRENT_SOURCE_DIR}/consumer/unknown -B ${CMAKE_CURRENT_BINARY_DIR}/consumer/unknown
  -DCMAKE_PREFIX_PATH=${stage})
set_tests_properties(consumer/unknown_component PROPERTIES FIXTURES_REQUIRED staged_install
  PASS_REGULAR_EXPRESSION "fieldshaft has no component \"gearbox\"")
