# Installs what is missing on Debian 12; elsewhere says what is needed. Source it, then call
# `need_packages NAME...`.
need_packages() {
  local missing=()
  if command -v dpkg-query >/dev/null && command -v apt-get >/dev/null; then
    local name
    for name in "$@"; do
      dpkg-query -W -f='${Status}' "$name" 2>/dev/null | grep -q 'ok installed' || missing+=("$name")
    done
    [ ${#missing[@]} -eq 0 ] && return 0
    local as_root=()
    if [ "$(id -u)" -ne 0 ]; then
      command -v sudo >/dev/null || { echo "Please install as root: ${missing[*]}" >&2; return 1; }
      as_root=(sudo)
    fi
    echo "Installing: ${missing[*]}" >&2
    local log
    log=$(mktemp)
    if ! { "${as_root[@]}" apt-get update -qq && "${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
             apt-get install -y -qq --no-install-recommends "${missing[@]}"; } >"$log" 2>&1; then
      cat "$log" >&2
      rm -f "$log"
      return 1
    fi
    rm -f "$log"
  else
    command -v cmake >/dev/null && command -v ninja >/dev/null && command -v c++ >/dev/null && return 0
    echo "Please install a C++17 compiler, CMake 3.25 or newer, Ninja, Boost 1.81 or newer (Units, JSON," >&2
    echo "Program_options), yaml-cpp 0.7 or newer and doctest 2.4 or newer, then run this again." >&2
    return 1
  fi
}

# A locale with a decimal comma, for the test that numbers do not depend on the locale.
need_comma_locale() {
  command -v localedef >/dev/null || return 0
  locale -a 2>/dev/null | grep -qiE '^de_DE\.utf-?8$' && return 0
  local as_root=()
  [ "$(id -u)" -eq 0 ] || as_root=(sudo)
  "${as_root[@]}" localedef -i de_DE -f UTF-8 de_DE.UTF-8
}

build_packages=(g++ cmake ninja-build libboost1.81-dev libboost-program-options1.81-dev libboost-json1.81-dev
                libyaml-cpp-dev doctest-dev)
