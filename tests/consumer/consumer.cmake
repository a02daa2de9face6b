# Programs outside the tree use each component in every way that a project may bring it in.
set(stage ${CMAKE_CURRENT_BINARY_DIR}/stage)
add_test(NAME consumer/install
  COMMAND ${CMAKE_COMMAND} --install ${PROJECT_BINARY_DIR} --prefix ${stage})
set_tests_properties(consumer/install PROPERTIES FIXTURES_SETUP staged_install)

# consumer_test(name component way [options ...]): configures the program, builds it with no more of fieldshaft than it
# links, and runs it. Without debug information and optimisation, since what the builds prove does not hang on either.
# consumer_build_test: the same for some targets of it only, which are not run.
function(consumer_build_test name component way targets)
  set(test consumer/${name})
  string(REPLACE "/" "_" folder ${name})
  list(TRANSFORM targets PREPEND "--build-target;" OUTPUT_VARIABLE target_options)
  add_test(NAME ${test} COMMAND ${CMAKE_CTEST_COMMAND}
    --build-and-test ${CMAKE_CURRENT_SOURCE_DIR}/consumer ${CMAKE_CURRENT_BINARY_DIR}/consumer/${folder}
    --build-generator ${CMAKE_GENERATOR} ${target_options}
    --build-options -DCOMPONENT=${component} -DWAY=${way} -DFIELDSHAFT_SOURCE=${PROJECT_SOURCE_DIR}
      -DCMAKE_BUILD_TYPE=None -DCMAKE_CXX_COMPILER=${CMAKE_CXX_COMPILER} -DCMAKE_CXX_FLAGS=${CMAKE_CXX_FLAGS} ${ARGN})
  set_tests_properties(${test} PROPERTIES FIXTURES_REQUIRED staged_install TIMEOUT 600
    ENVIRONMENT "PKG_CONFIG_PATH=${stage}/${CMAKE_INSTALL_LIBDIR}/pkgconfig;LD_LIBRARY_PATH=${stage}/${CMAKE_INSTALL_LIBDIR}")
endfunction()
function(consumer_test name component way)
  consumer_build_test(${name} ${component} ${way} consumer ${ARGN} --test-command ctest --output-on-failure)
endfunction()

foreach(component formulas geometry fieldshaft)
  consumer_test(${component}/find_package ${component} find_package -DCMAKE_PREFIX_PATH=${stage})
endforeach()
consumer_test(formulas/fetch_content formulas fetch_content)
consumer_test(fieldshaft/pkg_config fieldshaft pkg_config)
# The first program of the handbook, by its own files.
add_test(NAME consumer/first_program COMMAND ${CMAKE_CTEST_COMMAND}
  --build-and-test ${PROJECT_SOURCE_DIR}/docs/examples/first_program ${CMAKE_CURRENT_BINARY_DIR}/consumer/first_program
  --build-generator ${CMAKE_GENERATOR}
  --build-options -DCMAKE_PREFIX_PATH=${stage} -DCMAKE_CXX_COMPILER=${CMAKE_CXX_COMPILER} -DCMAKE_CXX_FLAGS=${CMAKE_CXX_FLAGS}
  --test-command first ${PROJECT_SOURCE_DIR}/docs/examples/cases/trailed-cutter-that-fits.json)
set_tests_properties(consumer/first_program PROPERTIES FIXTURES_REQUIRED staged_install TIMEOUT 600)

# Brought in with its sources the compiled part is built by the rules of the parent, here a newer standard and a shared
# library. The program and two of the library's files stand for all: the whole of it takes minutes and is built and linked
# shared by the preset of that name.
if(CMAKE_GENERATOR MATCHES Ninja)
  set(objects fieldshaft/src/CMakeFiles/fieldshaft.dir)
  consumer_build_test(fieldshaft/add_subdirectory fieldshaft add_subdirectory
    "CMakeFiles/consumer.dir/fieldshaft.cpp.o;${objects}/core/threads.cpp.o;${objects}/case/document.cpp.o"
    -DBUILD_SHARED_LIBS=ON -DCMAKE_CXX_STANDARD=20)
endif()

# Every public header is clean under the strictest warnings that a consumer may have on, by every standard of the compiler.
# What is left out: advice about other standards and padding; comparisons of numbers that are meant to be exact; switches
# over enumerations that have a default; an exception class that lives in a header.
file(GLOB umbrellas CONFIGURE_DEPENDS RELATIVE ${PROJECT_SOURCE_DIR}/include ${PROJECT_SOURCE_DIR}/include/fieldshaft/*.hpp)
list(TRANSFORM umbrellas PREPEND "#include <" OUTPUT_VARIABLE every_header)
list(TRANSFORM every_header APPEND ">\n")
list(JOIN every_header "" every_header)
set(every_header_file ${CMAKE_CURRENT_BINARY_DIR}/every_header.cpp)
file(CONFIGURE OUTPUT ${every_header_file} CONTENT "${every_header}" @ONLY)
get_target_property(eigen_include Eigen3::Eigen INTERFACE_INCLUDE_DIRECTORIES)
list(TRANSFORM eigen_include PREPEND "-isystem" OUTPUT_VARIABLE eigen_flags)
if(CMAKE_CXX_COMPILER_ID MATCHES Clang)
  set(strict_flags -Weverything -Wno-c++98-compat -Wno-c++98-compat-pedantic -Wno-padded -Wno-float-equal
    -Wno-switch-enum -Wno-weak-vtables)
else()
  set(strict_flags -Wall -Wextra -Wpedantic -Wconversion -Wsign-conversion -Wshadow -Wold-style-cast -Wdouble-promotion
    -Wnull-dereference -Wcast-qual -Wcast-align -Wduplicated-cond -Wduplicated-branches -Wlogical-op -Wformat=2
    -Wnon-virtual-dtor -Woverloaded-virtual)
endif()
foreach(standard 17 20 23)
  if(cxx_std_${standard} IN_LIST CMAKE_CXX_COMPILE_FEATURES)
    string(REPLACE 23 2b spelling ${standard}) # clang 14 knows no other name
    add_test(NAME consumer/strict_${standard} COMMAND ${CMAKE_CXX_COMPILER} -std=c++${spelling} ${strict_flags} -Werror
      -fsyntax-only ${include_flags} ${eigen_flags} ${every_header_file})
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
