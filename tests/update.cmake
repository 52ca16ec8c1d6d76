# Rewrites the files that the program writes: the embedded edition, then the pages of the checks.
execute_process(COMMAND ${JARPROOF} rules --embed ${ROOT}/rules OUTPUT_VARIABLE source COMMAND_ERROR_IS_FATAL ANY)
file(WRITE ${ROOT}/lib/src/edition_builtin.cpp "${source}")
execute_process(COMMAND ${JARPROOF} rules --rules ${ROOT}/rules --pages ${ROOT}/docs/checks COMMAND_ERROR_IS_FATAL ANY)
