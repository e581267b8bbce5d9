"""What is handed to users: a folder that runs by itself, its archive, a wheel, a Debian package."""

from __future__ import annotations

import email.utils
import gzip
import hashlib
import os
import platform
import re
import shutil
import stat
import subprocess
import sys
import tarfile
import tempfile
import textwrap
from collections.abc import Iterator, Sequence
from pathlib import Path

from dev_bare import check_bare
from dev_screen import virtual_screen
from dev_setup import BUILD, LOCK_BUNDLE, LOCK_RUN, QT_PACKAGES, ROOT, Refusal, environment, prepare

PACKAGING = ROOT / "packaging"
SHARE = PACKAGING / "share"
TOOLS = BUILD / "bundle-env"
FOLDER = BUILD / "bundle" / "ultraplanner"
ICONS = BUILD / "icons"
HANDED_OUT = BUILD / "dist"
APP_ID = "org.ultraplanner.Ultraplanner"
OWNER = "The Ultraplanner contributors <ultraplanner@localhost>"
EPOCH = 315_619_200  # 1980, the first date every archive can hold; the same folder, the same bytes

# Where the files of `packaging/share` and the icons lie under a prefix such as /usr.
PLACES = {
    f"{APP_ID}.desktop": "share/applications",
    f"{APP_ID}.metainfo.xml": "share/metainfo",
    "ultraplanner-mime.xml": "share/mime/packages",
    "ultraplanner-gui.1": "share/man/man1",
}
# What the bundle leaves to a desktop, as the packages of Debian have it.
DEB_DEPENDS = "libc6 (>= {glibc}), libegl1, libgl1, libx11-6, libxcb1, fontconfig-config"


def version() -> str:
    """Return the version of the program, from the one place where it stands."""
    text = (ROOT / "ultraplanner_gui" / "__init__.py").read_text("utf-8")
    found = re.search(r'^__version__ = "([^"]+)"', text, re.MULTILINE)
    if found is None:
        raise Refusal("There is no __version__ in ultraplanner_gui/__init__.py.")
    return found[1]


def bundle(args: Sequence[str]) -> int:
    """Make a folder that runs by itself, and its archive; --check and --bare try it out as well."""
    if set(args) - {"--check", "--bare"}:
        raise Refusal("bundle knows only --check and --bare.")
    folder = make_bundle()
    code = check_bundle(folder) if "--check" in args else 0
    if not code and "--bare" in args:
        code = check_bare(folder)
    print(f"{folder}: {_mib(size(folder))}, {sum(1 for _ in _files(folder))} files")
    archive = _archive(folder)
    print(f"{archive}: {_mib(archive.stat().st_size)}", flush=True)
    return code


def make_bundle() -> Path:
    """Make the bundle anew and return its folder."""
    python = tools()
    _call([python, str(PACKAGING / "make_icons.py"), str(ICONS)])
    pyinstaller(str(PACKAGING / "ultraplanner.spec"), FOLDER.parent)
    if sys.platform == "linux" and shutil.which("strip"):
        for library in FOLDER.rglob("libpython*.so*"):
            _call(["strip", "--strip-debug", str(library)])
    _call([python, str(PACKAGING / "licences.py"), LOCK_RUN, str(FOLDER / "LICENCES.txt")])
    for text in (ROOT / "LICENSE", ROOT / "README.md", *(SHARE / "licences").iterdir()):
        shutil.copy2(text, FOLDER)
    if sys.platform == "linux":
        _lay_out_share(FOLDER)
        shutil.copy2(PACKAGING / "share" / "install-for-me.sh", FOLDER)
    return FOLDER


def pyinstaller(spec: str, out: Path, *more: str) -> None:
    """Run PyInstaller on *spec*, a spec or a script; the folder made lies in *out*."""
    command = [tools(), "-m", "PyInstaller", "--noconfirm", "--log-level=WARN"]
    command += [f"--distpath={out}", f"--workpath={BUILD / 'pyinstaller'}", *more, spec]
    # The same everywhere and for the same sources, down to the order of sets.
    env = {**environment(), "PYTHONHASHSEED": "1", "SOURCE_DATE_EPOCH": str(EPOCH)}
    _call(command, env=env)


def tools() -> str:
    """Return the Python with what bundles are made of and with, and nothing else."""
    if sys.platform == "linux":
        prepare(LOCK_RUN, QT_PACKAGES)
    python = TOOLS / ("Scripts/python.exe" if sys.platform == "win32" else "bin/python")
    lock = (PACKAGING / LOCK_BUNDLE).read_bytes()
    key = hashlib.sha256(lock + os.path.realpath(sys.executable).encode()).hexdigest()
    stamp = TOOLS / "ready"
    if stamp.exists() and stamp.read_text() == key:
        return str(python)
    print(f"Setting up {TOOLS.name} with the packages of packaging/{LOCK_BUNDLE}", flush=True)
    shutil.rmtree(TOOLS, ignore_errors=True)
    base = getattr(sys, "_base_executable", None) or sys.executable
    _call([base, "-m", "venv", str(TOOLS)])
    pip = [str(python), "-m", "pip", "install", "--quiet", "--disable-pip-version-check"]
    _call([*pip, "--require-hashes", "-r", str(PACKAGING / LOCK_BUNDLE)])
    stamp.write_text(key)
    return str(python)


# ---------------------------------------------------------------- trying it out


def check_bundle(folder: Path) -> int:
    """Move *folder* to a read-only place with a space in its name and go through the job there."""
    with tempfile.TemporaryDirectory() as temporary:
        place = Path(temporary) / "a read-only place"
        shutil.copytree(folder, place, symlinks=True)
        for path in (place, *place.rglob("*")):
            if not path.is_symlink():
                path.chmod(path.stat().st_mode & ~(stat.S_IWUSR | stat.S_IWGRP | stat.S_IWOTH))
        name = "ultraplanner-console.exe" if sys.platform == "win32" else "ultraplanner"
        program = place / name
        try:
            return _tried_offscreen(program, temporary) or _tried_on_screen(program, temporary)
        finally:
            for path in (place, *place.rglob("*")):
                if not path.is_symlink():
                    path.chmod(path.stat().st_mode | stat.S_IWUSR)


def _tried_offscreen(program: Path, home: str) -> int:
    """Start *program* with an empty environment: version, its own test, cards of the demo."""
    print("\n== with an empty environment", flush=True)
    cards = Path(home) / "cards of the demo.pdf"
    for args in (["--version"], ["--self-test"], ["--demo", "--cards", str(cards)]):
        # Windows starts nothing without this one.
        kept = {n: v for n, v in os.environ.items() if n.upper() == "SYSTEMROOT"}
        env = {**kept, "ULTRAPLANNER_HOME": str(Path(home) / "home")}
        code = subprocess.call([str(program), *args], env=env, cwd=home)
        if code:
            print(f"FAILED: {' '.join(args)} ended with {code}")
            return code
    print(f"ok      {cards.name}: {cards.stat().st_size} bytes", flush=True)
    return 0


def _tried_on_screen(program: Path, home: str) -> int:
    """Show the demo in a real window, if there can be a screen here."""
    if sys.platform != "linux" or not shutil.which("Xvfb"):
        print("skipped the window on a screen: it needs Linux and Xvfb", flush=True)
        return 0
    print("\n== in a window on a screen", flush=True)
    with virtual_screen() as screen:
        env = {**screen, "ULTRAPLANNER_HOME": str(Path(home) / "home")}
        code = subprocess.call([str(program), "--self-test"], env=env, cwd=home)
        return code or _seen(program, env)


def _seen(program: Path, env: dict[str, str]) -> int:
    """Start the demo and wait for its window to be there by name."""
    with subprocess.Popen([str(program), "--demo"], env=env) as running:
        ask = ["xdotool", "search", "--sync", "--onlyvisible", "--name", "Ultraplanner"]
        found = subprocess.run(ask, env={**os.environ, **env}, timeout=60, check=False)
        running.terminate()
    print("ok      window of the demo" if found.returncode == 0 else "FAILED: no window came")
    return found.returncode


# ---------------------------------------------------------------- wheel and Debian package


def wheel(args: Sequence[str]) -> int:
    """Make a wheel; --check installs it into a fresh environment and goes through the job."""
    if set(args) - {"--check"}:
        raise Refusal("wheel knows only --check.")
    made = make_wheel()
    print(f"{made}: {_mib(made.stat().st_size)}", flush=True)
    return check_wheel(made) if "--check" in args else 0


def make_wheel() -> Path:
    """Make the wheel and return it."""
    HANDED_OUT.mkdir(parents=True, exist_ok=True)
    env = {**environment(), "SOURCE_DATE_EPOCH": str(EPOCH)}
    # From a copy: setuptools leaves folders behind and takes old ones along.
    with tempfile.TemporaryDirectory() as folder:
        source = Path(folder) / "source"
        for name in ("ultraplanner_gui", "resources"):
            ignore = shutil.ignore_patterns("__pycache__", "*.ts")
            shutil.copytree(ROOT / name, source / name, ignore=ignore)
        for name in ("pyproject.toml", "README.md", "LICENSE"):
            shutil.copy2(ROOT / name, source)
        pip = [tools(), "-m", "pip", "wheel", "--quiet", "--no-deps", "--no-build-isolation"]
        _call([*pip, "--wheel-dir", str(HANDED_OUT), str(source)], env=env)
    return HANDED_OUT / f"ultraplanner-{version()}-py3-none-any.whl"


def check_wheel(made: Path) -> int:
    """Install *made* with the locked packages into a fresh environment, away from the checkout."""
    with tempfile.TemporaryDirectory() as folder:
        _call([sys.executable, "-m", "venv", folder])
        bin_folder = Path(folder) / ("Scripts" if sys.platform == "win32" else "bin")
        pip = [str(bin_folder / "python"), "-m", "pip", "--disable-pip-version-check"]
        lock = ["--require-hashes", "-r", str(PACKAGING / LOCK_RUN)]
        _call([*pip, "install", "--quiet", *lock])
        _call([*pip, "install", "--quiet", "--no-deps", str(made)])
        _call([*pip, "check"])
        env = {n: v for n, v in os.environ.items() if n not in ("PYTHONPATH", "DISPLAY")}
        env |= {"QT_QPA_PLATFORM": "offscreen", "LC_ALL": "C.UTF-8"}
        program = str(bin_folder / "ultraplanner-gui")
        _call([program, "--version"], env=env, cwd=folder)
        return subprocess.call([program, "--self-test"], env=env, cwd=folder)


def deb(args: Sequence[str]) -> int:
    """Make a Debian package of the bundle that is there, or of a new one; --check looks into it."""
    if set(args) - {"--check"}:
        raise Refusal("deb knows only --check.")
    if not shutil.which("dpkg-deb"):
        raise Refusal("A Debian package is made by dpkg-deb, which is not here.")
    folder = FOLDER if FOLDER.exists() else make_bundle()
    HANDED_OUT.mkdir(parents=True, exist_ok=True)
    machine = subprocess.check_output(["dpkg", "--print-architecture"], text=True).strip()
    package = HANDED_OUT / f"ultraplanner_{version()}_{machine}.deb"
    with tempfile.TemporaryDirectory() as temporary:
        root = Path(temporary) / "root"
        _lay_out_deb(folder, root, machine)
        command = ["dpkg-deb", "--root-owner-group", "--build", "-Zxz", str(root), str(package)]
        _call(command, env={**os.environ, "SOURCE_DATE_EPOCH": str(EPOCH)}, quiet=True)
    print(f"{package}: {_mib(package.stat().st_size)}", flush=True)
    return _look_into(package) if "--check" in args else 0


def _lay_out_deb(folder: Path, root: Path, machine: str) -> None:
    lib, bin_folder = root / "usr/lib/ultraplanner", root / "usr/bin"
    shutil.copytree(folder, lib, symlinks=True, ignore=shutil.ignore_patterns("share", "*.sh"))
    bin_folder.mkdir(parents=True)
    (bin_folder / "ultraplanner-gui").symlink_to("../lib/ultraplanner/ultraplanner")
    _lay_out_share(root / "usr")
    page = root / "usr/share/man/man1/ultraplanner-gui.1"
    page.with_suffix(".1.gz").write_bytes(gzip.compress(page.read_bytes(), 9, mtime=0))
    page.unlink()
    doc = root / "usr/share/doc/ultraplanner"
    doc.mkdir(parents=True)
    shutil.copy2(folder / "LICENSE", doc / "copyright")
    (doc / "changelog.gz").write_bytes(gzip.compress(_debian_changes(), 9, mtime=0))
    for path in root.rglob("*"):
        if not path.is_symlink():
            is_run = path.is_dir() or path == lib / "ultraplanner"
            path.chmod(0o755 if is_run else 0o644)
    control = root / "DEBIAN"
    control.mkdir()
    glibc = platform.libc_ver()[1] or "2.36"
    (control / "control").write_text(
        "Package: ultraplanner\n"
        f"Version: {version()}\n"
        f"Architecture: {machine}\n"
        f"Maintainer: {OWNER}\n"
        f"Installed-Size: {size(root) // 1024}\n"
        f"Depends: {DEB_DEPENDS.format(glibc=glibc)}\n"
        "Recommends: libcups2\n"
        "Section: misc\n"
        "Priority: optional\n"
        "Description: plan an ultramarathon in one sheet\n"
        " A training block counted back from the race, section targets inside the\n"
        " cutoffs, fuel by the clock, and cards small enough to carry. It works\n"
        " offline and keeps everything in one file. Python and Qt come along in a\n"
        " folder of their own.\n"
    )


def _debian_changes() -> bytes:
    """Return the changes of this version in the form Debian's tools read."""
    text = (PACKAGING / "CHANGELOG.md").read_text("utf-8").split(f"## {version()}", 1)[-1]
    lines = re.findall(r"^- (.+)$", text.split("\n## ")[0], re.MULTILINE) or ["First version."]
    day = email.utils.formatdate(EPOCH)
    wrap = textwrap.TextWrapper(78, initial_indent="  * ", subsequent_indent="    ")
    entries = "\n".join(map(wrap.fill, lines))
    head = f"ultraplanner ({version()}) stable; urgency=low"
    return f"{head}\n\n{entries}\n\n -- {OWNER}  {day}\n".encode()


def _look_into(package: Path) -> int:
    """List *package*, ask lintian where it is, and run the program out of it."""
    listing = subprocess.check_output(["dpkg-deb", "--contents", str(package)], text=True)
    for name, place in PLACES.items():
        if f"./usr/{place}/{name}" not in listing:
            print(f"FAILED: {place}/{name} is not in the package")
            return 1
    if shutil.which("lintian"):
        # A folder that brings its own libraries breaks the rules for Debian's archive
        # by design, and there is no address to write to.
        own = "embedded-library,custom-library-search-path,library-not-linked-against-libc"
        own += ",unstripped-binary-or-object,shared-library-lacks-prerequisites"
        own += ",package-installs-python-bytecode"
        own += ",bogus-mail-host,bogus-mail-host-in-debian-changelog"
        quiet = ["--fail-on=error", f"--suppress-tags={own}"]
        if subprocess.call(["lintian", "--allow-root", *quiet, str(package)]):
            return 1
    with tempfile.TemporaryDirectory() as folder:
        _call(["dpkg-deb", "--extract", str(package), folder])
        program = Path(folder) / "usr/bin/ultraplanner-gui"
        return subprocess.call([str(program), "--self-test"], env={}, cwd=folder)


# ---------------------------------------------------------------- files


def _lay_out_share(prefix: Path) -> None:
    """Put desktop file, MIME type, metainfo, man page and icons where a desktop looks for them."""
    for name, place in PLACES.items():
        (prefix / place).mkdir(parents=True, exist_ok=True)
        shutil.copy2(SHARE / name, prefix / place)
    shutil.copytree(ICONS / "hicolor", prefix / "share/icons/hicolor", dirs_exist_ok=True)


def _archive(folder: Path) -> Path:
    """Pack *folder*: a .tar.xz, on Windows a .zip; the same folder gives the same bytes."""
    HANDED_OUT.mkdir(parents=True, exist_ok=True)
    name = f"ultraplanner-{version()}-{sys.platform}-{platform.machine().lower()}"
    if sys.platform == "win32":
        packed = shutil.make_archive(str(HANDED_OUT / name), "zip", folder.parent, folder.name)
        return Path(packed)
    target = HANDED_OUT / f"{name}.tar.xz"
    with tarfile.open(target, "w:xz", preset=6) as archive:
        for path in sorted((folder, *folder.rglob("*"))):
            inside = str(Path(name) / path.relative_to(folder))
            archive.add(path, inside, recursive=False, filter=_plain)
    return target


def _plain(entry: tarfile.TarInfo) -> tarfile.TarInfo:
    entry.uid = entry.gid = 0
    entry.uname = entry.gname = ""
    entry.mtime = EPOCH
    return entry


def _files(folder: Path) -> Iterator[Path]:
    return (path for path in folder.rglob("*") if path.is_file() and not path.is_symlink())


def size(folder: Path) -> int:
    """Return the bytes of all files in *folder*."""
    return sum(path.stat().st_size for path in _files(folder))


def _mib(size: int) -> str:
    return f"{size / 1024**2:.0f} MiB"


def _call(
    command: Sequence[str],
    env: dict[str, str] | None = None,
    cwd: str | None = None,
    quiet: bool = False,
) -> None:
    out = subprocess.DEVNULL if quiet else None
    subprocess.run(command, check=True, env=env, cwd=cwd, stdout=out)
