#!/usr/bin/env bash
# Runs commands of README.md as a newcomer would: in a minimal Debian root made for it, from a fresh clone of what is
# committed, with nothing installed but what .ci/setup installs. Needs root, debootstrap and the network.
#
#   tests/fresh_root.sh [demo | test | docs]...     without a word: demo and test
#
# The mirror is the one that this machine's apt uses, as are the certificates it trusts and its settings for proxies and pip.
# The root is a folder below TMPDIR that is removed at the end; FRESH_ROOT_KEEP=1 keeps it.
set -euo pipefail
unset CDPATH

source_root="$(cd -- "$(dirname -- "${BASH_SOURCE[0]}")/.." && pwd -P)"

fail() {
  printf 'fresh_root: %s\n' "$@" >&2
  exit 1
}

[ "$(id -u)" -eq 0 ] || fail 'chroot and debootstrap need root; run it with sudo.'
for tool in debootstrap unshare chroot git; do
  command -v "$tool" >/dev/null || fail "$tool is missing: apt-get install debootstrap util-linux coreutils git"
done
for word in "$@"; do
  case "$word" in demo | test | docs) ;; *) fail "$word is not one of: demo, test, docs" ;; esac
done
[ "$#" -gt 0 ] || set -- demo test

suite="$(. /etc/os-release && printf '%s' "${VERSION_CODENAME:-bookworm}")"
mirror="$(apt-get indextargets --format '$(REPO_URI) $(CODENAME)' 'Identifier: Packages' |
  awk -v suite="$suite" '$2 == suite { print $1; exit }')"
[ -n "$mirror" ] || fail "apt on this machine has no source for $suite."

root="$(mktemp -d "${TMPDIR:-/tmp}/fresh_root.XXXXXX")"
chmod 755 "$root"
[ "${FRESH_ROOT_KEEP:-}" ] || trap 'rm -rf --one-file-system -- "$root"' EXIT

seconds=()
timed() {
  local what="$1" start=$SECONDS
  shift
  "$@" || fail "\"$what\" failed after $((SECONDS - start)) s; see above."
  seconds+=("$(printf '%6d s  %s' $((SECONDS - start)) "$what")")
}

# Mounts of /proc and processes of the root end with the command.
inside() {
  local passed=()
  while read -r name; do passed+=("$name=${!name}"); done \
    < <(compgen -e | grep -E '^(https?_proxy|HTTPS?_PROXY|no_proxy|NO_PROXY|PIP_CERT|PIP_INDEX_URL|PIP_DEFAULT_TIMEOUT)$')
  unshare --mount --pid --fork --mount-proc="$root/proc" chroot "$root" /usr/bin/env -i \
    PATH=/usr/sbin:/usr/bin:/sbin:/bin HOME=/root LANG=C.UTF-8 "${passed[@]}" bash -c "cd /srv/fieldshaft && $1"
}

make_root() {
  debootstrap --variant=minbase "$suite" "$root" "$mirror" >"$root.log" 2>&1 || {
    tail -n 20 "$root.log"
    return 1
  }
  rm -f "$root.log"
  if compgen -G '/usr/local/share/ca-certificates/*.crt' >/dev/null; then
    mkdir -p "$root/usr/local/share/ca-certificates"
    cp /usr/local/share/ca-certificates/*.crt "$root/usr/local/share/ca-certificates/"
  fi
  cp -L /etc/resolv.conf "$root/etc/resolv.conf"
}

timed 'minimal Debian root' make_root
timed 'clone' git clone --quiet --no-hardlinks "file://$source_root" "$root/srv/fieldshaft"
for word in "$@"; do
  case "$word" in docs) setup='.ci/setup docs' ;; *) setup='.ci/setup' ;; esac
  timed "$setup" inside "$setup"
  timed "cmake --workflow --preset $word" inside "cmake --workflow --preset $word"
done
printf '%s\n' 'fresh_root: passed' "${seconds[@]}"
