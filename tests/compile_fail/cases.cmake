# What must not compile, each beside a control that must: a missing include would otherwise pass as "failed as wished".
# Format: name, then the expression that must fail, then the one that must compile.
function(fieldshaft_compile_fail name wrong right)
  foreach(variant wrong right)
    set(expression "${${variant}}")
    set(file ${CMAKE_CURRENT_BINARY_DIR}/compile_fail/${name}_${variant}.cpp)
    configure_file(compile_fail/case.cpp.in ${file} @ONLY)
    set(test compile_fail/${name}/${variant})
    add_test(NAME ${test} COMMAND ${CMAKE_CXX_COMPILER} -std=c++17 -fsyntax-only
      ${include_flags} ${file})
    if("${variant}" STREQUAL "wrong")
      # The compiler must refuse it, and for the reason meant: a mismatch of types in this very expression.
      set_tests_properties(${test} PROPERTIES
        PASS_REGULAR_EXPRESSION "error: (no match|invalid operands|could not convert|no matching function|no viable|conversion from|cannot convert|type/value mismatch)")
    endif()
  endforeach()
endfunction()

# Include folders for compilers that are called directly. A folder that the compiler knows anyway must not be named:
# as a system folder it would move to another place in the search order.
set(include_flags -I${PROJECT_SOURCE_DIR}/include)
get_target_property(boost_include Boost::headers INTERFACE_INCLUDE_DIRECTORIES)
foreach(folder IN LISTS boost_include)
  if(NOT folder IN_LIST CMAKE_CXX_IMPLICIT_INCLUDE_DIRECTORIES)
    list(APPEND include_flags -isystem ${folder})
  endif()
endforeach()

fieldshaft_compile_fail(torque_times_frequency
  "Power p = newton_metres(900) * hertz(9)" "Power p = newton_metres(900) * rpm(540)")
fieldshaft_compile_fail(length_plus_force
  "auto s = millimetres(3) + newtons(4)" "auto s = millimetres(3) + inches(4)")
fieldshaft_compile_fail(bare_number_for_a_quantity
  "auto t = shaft_torque(50e3, rpm(540))" "auto t = shaft_torque(kilowatts(50), rpm(540))")
fieldshaft_compile_fail(swapped_arguments
  "auto t = shaft_torque(rpm(540), kilowatts(50))" "auto t = shaft_torque(kilowatts(50), rpm(540))")
fieldshaft_compile_fail(energy_for_a_torque
  "Torque t = joules(900)" "Torque t = newton_metres(900)")
fieldshaft_compile_fail(frequency_for_a_shaft_speed
  "AngularSpeed w = hertz(9)" "AngularSpeed w = rpm(540)")
fieldshaft_compile_fail(quantity_from_a_bare_number
  "Length l = 0.356" "Length l = millimetres(356)")
fieldshaft_compile_fail(force_times_length_is_no_torque
  "Torque t = newtons(900) * metres(1)" "Torque t = as_torque(newtons(900) * metres(1))")
