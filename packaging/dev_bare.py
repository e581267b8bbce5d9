"""The bundle on a machine that has only Debian's base and an X server: a chroot made for it."""

from __future__ import annotations

import os
import shutil
import subprocess
from pathlib import Path

from dev_setup import BUILD, Refusal

BARE = BUILD / "bare-debian"
PLACE = "opt/with a space/ultraplanner"

# A name space of its own for mounts and for the network: nothing is left behind, no display of
# this machine is in reach, and there is no way out to any network.
ENTER = (
    'mount -t proc proc "$0/proc" && '
    'exec chroot "$0" env -i HOME=/root PATH=/usr/bin:/bin sh -c "$1"'
)
INSIDE = f"""
Xvfb :1 -screen 0 1440x900x24 -nolisten tcp > /dev/null 2>&1 &
server=$!
sleep 3
DISPLAY=:1 QT_QPA_PLATFORM=xcb "/{PLACE}/ultraplanner" --self-test &&
"/{PLACE}/ultraplanner" --demo --cards "$HOME/cards.pdf"
code=$?
kill $server
exit $code
"""


def check_bare(folder: Path) -> int:
    """Go through the job with the bundle *folder* in a Debian of nothing but its base and Xvfb."""
    if not hasattr(os, "geteuid") or os.geteuid() != 0:
        raise Refusal("A bare Debian can only be made by root.")
    for tool in ("debootstrap", "unshare", "chroot"):
        if not shutil.which(tool):
            raise Refusal(f"A bare Debian needs {tool}; install it.")
    print("\n== on a bare Debian", flush=True)
    if not (BARE / "ready").exists():
        shutil.rmtree(BARE, ignore_errors=True)
        make = ["debootstrap", "--variant=minbase", "--include=xvfb", _codename(), str(BARE)]
        subprocess.run(make, check=True, stdout=subprocess.DEVNULL)
        (BARE / "ready").touch()
    place = BARE / PLACE
    shutil.rmtree(place, ignore_errors=True)
    shutil.copytree(folder, place, symlinks=True)
    cards = BARE / "root" / "cards.pdf"
    cards.unlink(missing_ok=True)
    code = subprocess.call(["unshare", "--mount", "--net", "sh", "-c", ENTER, str(BARE), INSIDE])
    if code == 0:
        print(f"ok      cards of the demo: {cards.stat().st_size} bytes", flush=True)
    return code


def _codename() -> str:
    lines = Path("/etc/os-release").read_text("utf-8").splitlines()
    named = dict(line.split("=", 1) for line in lines if "=" in line)
    if named.get("ID") != "debian":
        raise Refusal("A bare Debian can only be made on Debian.")
    return named["VERSION_CODENAME"].strip('"')
