# Assesses each example case under valgrind: no memory is read before it was written, read or written outside, or lost.
# The demo's exit status 1, a case with a stop, is a proper result.
set(bad 0)
foreach(case IN LISTS CASES)
  execute_process(
    COMMAND ${VALGRIND} --quiet --error-exitcode=99 --leak-check=full --errors-for-leak-kinds=all ${PROGRAM} ${case}
    RESULT_VARIABLE status OUTPUT_QUIET)
  cmake_path(GET case STEM name)
  message("${name}: exit status ${status}")
  if(NOT status MATCHES "^[01]$")
    math(EXPR bad "${bad} + 1")
  endif()
endforeach()
list(LENGTH CASES count)
message("${count} cases under valgrind, ${bad} with errors")
if(bad)
  message(FATAL_ERROR "valgrind found errors")
endif()
