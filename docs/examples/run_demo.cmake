# Runs the demo program on the example cases. A case with a stop is a proper result (exit status 1); a file that cannot
# be read is not.
execute_process(COMMAND ${PROGRAM} --remedies ${CASES} RESULT_VARIABLE status)
execute_process(COMMAND ${FARM_PROGRAM} ${FARMS} RESULT_VARIABLE farm_status)
if(NOT farm_status MATCHES "^[01]$")
  message(FATAL_ERROR "the study of the example farm ended with ${farm_status}")
endif()
if(NOT status MATCHES "^[01]$")
  message(FATAL_ERROR "the demo ended with ${status}")
endif()
