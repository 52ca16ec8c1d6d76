# What the shelf record must survive: many programs at once, and places that cannot be written.
# Called with -DJARPROOF=program -DWORK=folder.
file(REMOVE_RECURSE ${WORK})
file(MAKE_DIRECTORY ${WORK})
file(WRITE ${WORK}/beans.yaml "food: green beans
pack: raw
jar: pint
method: pressure
gauge: weighted
pressure: 15 psi
time: 20 min
altitude: 4600 ft
date: 2026-07-18
jars: 9
")

function(in_shell what expected_status command)
  execute_process(COMMAND sh -c "${command}" WORKING_DIRECTORY ${WORK} RESULT_VARIABLE status
                  OUTPUT_VARIABLE out ERROR_VARIABLE err)
  if(NOT status EQUAL expected_status)
    message(SEND_ERROR "${what}: exit status ${status}, expected ${expected_status}\n${err}")
  endif()
  set(err "${err}" PARENT_SCOPE)
  set(out "${out}" PARENT_SCOPE)
endfunction()

function(expect_lines what file count)
  file(STRINGS ${WORK}/${file} lines)
  list(LENGTH lines found)
  if(NOT found EQUAL count)
    message(SEND_ERROR "${what}: ${found} lines, expected ${count}")
  endif()
endfunction()

function(expect_message what wanted)
  string(FIND "${err}" "${wanted}" at)
  if(at EQUAL -1)
    message(SEND_ERROR "${what}: standard error lacks `${wanted}`:\n${err}")
  endif()
endfunction()

# Twenty programs at once, then twenty more into a record whose last line has no end.
foreach(round 1 2)
  in_shell("parallel ${round}" 0 "
    rm -f failed
    for i in 1 2 3 4 5 6 7 8 9 10 11 12 13 14 15 16 17 18 19 20; do
      ('${JARPROOF}' check beans.yaml --set lot=lot-${round}-$i --record shelf.jsonl >/dev/null 2>&1 || touch failed) &
    done
    wait
    test ! -e failed")
  math(EXPR all "20 * ${round}")
  expect_lines("parallel ${round}" shelf.jsonl ${all})
  in_shell("every line is read" 0 "'${JARPROOF}' check shelf.jsonl --format jsonl | wc -l | grep -x ' *${all}'")
  if(round EQUAL 1)
    file(READ ${WORK}/shelf.jsonl text)
    string(REGEX REPLACE "\n$" "" text "${text}")
    file(WRITE ${WORK}/shelf.jsonl "${text}")
  endif()
endforeach()

# The same lot from many programs at once stands once.
in_shell("one lot" 0 "
  for i in 1 2 3 4 5 6 7 8; do '${JARPROOF}' check beans.yaml --set lot=one --record one.jsonl >/dev/null 2>&1 & done
  wait")
expect_lines("one lot" one.jsonl 1)

# A torn last line is completed, and is the only one that cannot be read.
file(WRITE ${WORK}/torn.jsonl "{\"record\": \"jarproof-shelf/1\", \"lot\": \"a\"}\n{\"record\": \"jarpr")
in_shell("torn" 0 "'${JARPROOF}' check beans.yaml --set lot=b --record torn.jsonl")
expect_lines("torn" torn.jsonl 3)

# Places that cannot take a record stay as they are.
file(COPY_FILE ${WORK}/one.jsonl ${WORK}/kept.jsonl)
set(check "'${JARPROOF}' check beans.yaml --set lot=new --record")
in_shell("link" 3 "ln -s one.jsonl link.jsonl && ${check} link.jsonl")
expect_message("link" "link.jsonl cannot take the record: it is a symbolic link; name the file that it leads to")
in_shell("link to nothing" 3 "ln -s nothing.jsonl loose.jsonl && ${check} loose.jsonl")
expect_message("link to nothing" "it is a symbolic link")
in_shell("missing folder" 3 "${check} none/shelf.jsonl")
expect_message("missing folder" "there is no folder none; make it first")
in_shell("folder" 3 "mkdir folder && ${check} folder")
expect_message("folder" "it is a folder; name a file in it, such as shelf.jsonl")
in_shell("file as a folder" 3 "${check} one.jsonl/shelf.jsonl")
in_shell("device" 3 "${check} /dev/full")
expect_message("device" "it is no plain file; name one, such as shelf.jsonl")
in_shell("pipe" 3 "mkfifo pipe && ${check} pipe")
expect_message("pipe" "it is no plain file")
in_shell("write-protected" 3 "chmod a-w one.jsonl && ${check} one.jsonl")
expect_message("write-protected" "one.jsonl cannot take the record: it is write-protected; take that off, or name another file")
in_shell("another file" 3 "${check} beans.yaml")
expect_message("another file" "beans.yaml is no shelf record: its first line is no JSON object; name another file")
in_shell("standard output" 3 "${check} -")
expect_message("standard output" "--record takes the name of a file, such as shelf.jsonl")

# No room: part of a line is written, and taken back. The limit counts blocks of 512 or 1024 bytes.
in_shell("no room" 3 "chmod u+w one.jsonl && cp one.jsonl full.jsonl && ulimit -f 4 &&
  for i in 1 2 3 4 5; do
    cp full.jsonl before.jsonl
    '${JARPROOF}' check beans.yaml --set lot=more-$i --record full.jsonl || { status=$?; cmp full.jsonl before.jsonl && exit $status; }
  done")
expect_message("no room" "full.jsonl cannot be written: File too large; it is as it was")
in_shell("no room for the first line" 3 "ulimit -f 0; ${check} first.jsonl")
expect_message("no room for the first line" "first.jsonl cannot be written: File too large; it is as it was")
if(EXISTS ${WORK}/first.jsonl)
  message(SEND_ERROR "a record that could not be written was left behind")
endif()

in_shell("as it was" 0 "cmp one.jsonl kept.jsonl && test ! -e nothing.jsonl")
in_shell("the plan as it was" 0 "head -n 1 beans.yaml | grep -x 'food: green beans' && wc -l < beans.yaml | grep -x ' *10'")
