# Programs outside the tree link each component, by find_package from a staged install and by add_subdirectory.
set(stage ${CMAKE_CURRENT_BINARY_DIR}/stage)
add_test(NAME consumer/install
  COMMAND ${CMAKE_COMMAND} --install ${PROJECT_BINARY_DIR} --prefix ${stage})
set_tests_properties(consumer/install PROPERTIES FIXTURES_SETUP staged_install)

foreach(component formulas geometry whole)
  foreach(way find_package add_subdirectory)
    if(way STREQUAL find_package)
      set(options -DCMAKE_PREFIX_PATH=${stage})
    else()
      set(options -DAS_SUBDIRECTORY=ON -DFIELDSHAFT_SOURCE=${PROJECT_SOURCE_DIR})
    endif()
    set(test consumer/${component}/${way})
    add_test(NAME ${test} COMMAND ${CMAKE_CTEST_COMMAND}
      --build-and-test ${CMAKE_CURRENT_SOURCE_DIR}/consumer/${component}
      ${CMAKE_CURRENT_BINARY_DIR}/consumer/${component}_${way}
      --build-generator ${CMAKE_GENERATOR}
      --build-options ${options} -DCMAKE_BUILD_TYPE=Debug -DCMAKE_CXX_COMPILER=${CMAKE_CXX_COMPILER}
        -DCMAKE_CXX_FLAGS=${CMAKE_CXX_FLAGS}
      --test-command ctest --output-on-failure)
    set_tests_properties(${test} PROPERTIES FIXTURES_REQUIRED staged_install TIMEOUT 600)
  endforeach()
endforeach()

# A component that does not exist is refused with a message that says what there is.
add_test(NAME consumer/unknown_component COMMAND ${CMAKE_COMMAND}
  -S ${CMAKE_CURRENT_SOURCE_DIR}/consumer/unknown -B ${CMAKE_CURRENT_BINARY_DIR}/consumer/unknown
  -DCMAKE_PREFIX_PATH=${stage})
set_tests_properties(consumer/unknown_component PROPERTIES FIXTURES_REQUIRED staged_install
  PASS_REGULAR_EXPRESSION "fieldshaft has no component \"gearbox\"")
