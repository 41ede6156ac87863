# Sourced by build/serve and build/test. Makes .venv and installs what they need into it, once.

say() { printf '%s\n' "$*" >&2; }
die() { say "$*"; exit 1; }

# Python 3.13 is the phone's own version; any from 3.12 will do. A name on the path may be a shim
# with nothing behind it, so each is asked.
is_python() {
  "$1" -c 'import sys; sys.exit(sys.version_info < (3, 12))' >/dev/null 2>&1
}

find_python() {
  for candidate in ${PYTHON:+"$PYTHON"} python3.13 python3.12 python3.14 python3 python; do
    if is_python "$candidate"; then
      printf '%s\n' "$candidate"
      return 0
    fi
  done
  # pyenv keeps versions it has not been told to use off the path.
  for candidate in "${PYENV_ROOT:-$HOME/.pyenv}"/versions/3.1[2-9]*/bin/python; do
    if is_python "$candidate"; then
      printf '%s\n' "$candidate"
      return 0
    fi
  done
  return 1
}

make_venv() {
  is_python .venv/bin/python && return 0
  python=$(find_python) || die "Beadwright needs Python 3.12 or later, and this machine's python3 is
$(python3 --version 2>&1 || true)
Install it (on Debian or Ubuntu: apt install python3 python3-venv), or name it: PYTHON=/path/to/python3.13"
  "$python" -c 'import ensurepip, venv' >/dev/null 2>&1 ||
    die "$python has no venv: install it (on Debian or Ubuntu: apt install python3-venv)"
  say "making .venv with $("$python" --version)"
  "$python" -m venv --clear .venv || die "could not make .venv with $python"
}

# install GROUP: a dependency group of pyproject.toml, as build/pin wrote it, unless it is in already.
install() {
  make_venv
  wanted=$(cat pyproject.toml build/packages-*.txt .venv/pyvenv.cfg | cksum)
  stamp=.venv/.installed-$1
  for done in "$stamp" .venv/.installed-dev; do # dev holds every other group
    [ "$(cat "$done" 2>/dev/null)" = "$wanted" ] && return 0
  done
  say "installing into .venv (the first time takes a minute or two)"
  # Each package by the hash of its file; wheels only, since building one would fetch more. Our own
  # is then built with what was just installed.
  .venv/bin/python -m pip install -qq --disable-pip-version-check --only-binary :all: \
    --require-hashes --requirement "build/packages-$1.txt" </dev/null &&
    .venv/bin/python -m pip install -qq --disable-pip-version-check \
      --no-deps --no-build-isolation --editable . </dev/null ||
    die "pip could not install the packages; the first run needs the network. Its own words are above."
  printf '%s\n' "$wanted" >"$stamp"
}
