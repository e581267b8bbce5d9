"""Whether the system asks programs to keep still, read from where each system keeps that.

Qt's own style tells it on none of them. Windows: "Animation effects" of the accessibility settings
(SPI_GETCLIENTAREAANIMATION of the Win32 API); macOS: "Reduce motion"
(accessibilityDisplayShouldReduceMotion of NSWorkspace); KDE: AnimationDurationFactor in kdeglobals;
other desktops: gtk-enable-animations in GTK's settings.ini, enable-animations of GNOME's settings.
"""

from __future__ import annotations

import os
import sys
from collections.abc import Iterator, Mapping
from contextlib import suppress
from pathlib import Path

from PySide6.QtCore import QObject, QProcess, QProcessEnvironment, QStandardPaths, Signal, Slot
from PySide6.QtGui import QGuiApplication

GNOME = ("gsettings", ("get", "org.gnome.desktop.interface", "enable-animations"))
FREE_SCREENS = ("xcb", "wayland")
NO_SCREENS = ("offscreen", "minimal")
NO = ("false", "0")


class Stillness(QObject):
    """Asks the system, without waiting for it; `told` carries whether things shall keep still."""

    told = Signal(bool)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._asked: QProcess | None = None

    @Slot()
    def ask(self) -> None:
        """Ask anew; GNOME's answer comes later, any other at once."""
        screen = QGuiApplication.platformName()
        if screen in NO_SCREENS:
            return
        still = is_still(os.environ)
        self.told.emit(still)
        program = QStandardPaths.findExecutable(GNOME[0]) if screen in FREE_SCREENS else ""
        if still or not program or is_kde(os.environ) or self._asked is not None:
            return
        self._asked = QProcess(self)
        self._asked.setProcessEnvironment(_own_libraries())
        self._asked.finished.connect(self._on_answer)
        self._asked.start(program, GNOME[1])

    def stop(self) -> None:
        """Wait for no answer any more."""
        asked, self._asked = self._asked, None
        if asked is not None:
            asked.finished.disconnect(self._on_answer)
            asked.kill()
            asked.waitForFinished(1000)

    @Slot()
    def _on_answer(self) -> None:
        asked, self._asked = self._asked, None
        if asked is None:
            return
        if asked.exitCode() == 0:
            self.told.emit(bytes(asked.readAllStandardOutput().data()).strip() == b"false")
        asked.deleteLater()


def is_still(environ: Mapping[str, str]) -> bool:
    """Return whether the system or the files of the desktop ask to keep still."""
    with suppress(OSError, AttributeError, ValueError):
        if sys.platform == "win32":
            return not _windows_animates()
        if sys.platform == "darwin":
            return _mac_reduces()
    if is_kde(environ):
        return any(
            _float(said) == 0.0
            for said in _said(environ, "kdeglobals", "KDE", "AnimationDurationFactor")
        )
    names = ("gtk-4.0/settings.ini", "gtk-3.0/settings.ini")
    answers = (_said(environ, name, "Settings", "gtk-enable-animations") for name in names)
    return any(said.lower() in NO for answer in answers for said in answer)


def is_kde(environ: Mapping[str, str]) -> bool:
    """Return whether the desktop is KDE's."""
    return "KDE" in environ.get("XDG_CURRENT_DESKTOP", "").split(":")


def _said(environ: Mapping[str, str], name: str, section: str, key: str) -> Iterator[str]:
    """Yield what the file *name* of the user says for *key*: nothing, or one answer."""
    from configparser import ConfigParser, Error

    home = Path(environ.get("XDG_CONFIG_HOME") or Path(environ.get("HOME", "/")) / ".config")
    found = ConfigParser(strict=False, interpolation=None)
    with suppress(Error, OSError, UnicodeDecodeError):
        found.read(home / name, "utf-8")
        if found.has_option(section, key):
            yield found.get(section, key).strip()


def _float(text: str) -> float | None:
    try:
        return float(text)
    except ValueError:
        return None


def _own_libraries() -> QProcessEnvironment:
    """Return the environment for a program of the system: a bundle's libraries are not its."""
    environment = QProcessEnvironment.systemEnvironment()
    environment.remove("LD_LIBRARY_PATH")
    before = environment.value("LD_LIBRARY_PATH_ORIG")
    if before:
        environment.insert("LD_LIBRARY_PATH", before)
    return environment


if sys.platform == "win32":

    def _windows_animates() -> bool:
        from ctypes import byref, c_int, windll

        animates = c_int(1)
        windll.user32.SystemParametersInfoW(0x1042, 0, byref(animates), 0)
        return bool(animates.value)


if sys.platform == "darwin":

    def _mac_reduces() -> bool:
        from ctypes import CDLL, CFUNCTYPE, c_bool, c_char_p, c_void_p

        objc = CDLL("/usr/lib/libobjc.dylib")
        objc.objc_getClass.restype = objc.sel_registerName.restype = c_void_p
        objc.objc_getClass.argtypes = objc.sel_registerName.argtypes = [c_char_p]
        get = CFUNCTYPE(c_void_p, c_void_p, c_void_p)(("objc_msgSend", objc))
        tell = CFUNCTYPE(c_bool, c_void_p, c_void_p)(("objc_msgSend", objc))
        shared = objc.sel_registerName(b"sharedWorkspace")
        reduces = objc.sel_registerName(b"accessibilityDisplayShouldReduceMotion")
        return bool(tell(get(objc.objc_getClass(b"NSWorkspace"), shared), reduces))
