"""Draw the icon in every size a system wants: python packaging/make_icons.py FOLDER.

Out of `resources/icons/ultraplanner.svg` come the PNGs of a hicolor theme, for the program and for
its files, an .ico for Windows and an .icns for macOS.
"""

from __future__ import annotations

import os
import struct
import sys
from collections.abc import Mapping
from pathlib import Path

os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")

from PySide6.QtCore import QBuffer, QIODevice, QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

DRAWING = Path(__file__).resolve().parents[1] / "resources" / "icons" / "ultraplanner.svg"
SIZES_PX = (16, 22, 24, 32, 48, 64, 128, 256, 512)
NAMES = {"apps": "ultraplanner", "mimetypes": "application-x-ultraplan"}

_ICO_PX = (16, 24, 32, 48, 64, 128, 256)
_ICNS_PX = {b"icp4": 16, b"icp5": 32, b"icp6": 64, b"ic07": 128, b"ic08": 256, b"ic09": 512}


def drawn(size_px: int) -> bytes:
    """Return the icon as a PNG of *size_px* by *size_px*."""
    image = QImage(size_px, size_px, QImage.Format.Format_ARGB32)
    image.fill(0)
    painter = QPainter(image)
    QSvgRenderer(str(DRAWING)).render(painter, QRectF(0.0, 0.0, size_px, size_px))
    painter.end()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    image.save(buffer, "PNG")
    return bytes(buffer.data().data())


def ico(pictures: Mapping[int, bytes]) -> bytes:
    """Return *pictures* by their size as an .ico; each is kept as the PNG it is."""
    at = 6 + 16 * len(pictures)
    entries = []
    for size_px, picture in pictures.items():
        edge = size_px % 256  # 256 is written as 0
        entries.append(struct.pack("<BBBBHHII", edge, edge, 0, 0, 1, 32, len(picture), at))
        at += len(picture)
    return b"".join((struct.pack("<HHH", 0, 1, len(pictures)), *entries, *pictures.values()))


def icns(pictures: Mapping[bytes, bytes]) -> bytes:
    """Return *pictures* by their type as an .icns."""
    body = b"".join(
        kind + struct.pack(">I", 8 + len(picture)) + picture for kind, picture in pictures.items()
    )
    return b"icns" + struct.pack(">I", 8 + len(body)) + body


def make(folder: Path) -> None:
    """Write every icon into *folder*."""
    for size_px in SIZES_PX:
        for kind, name in NAMES.items():
            there = folder / "hicolor" / f"{size_px}x{size_px}" / kind
            there.mkdir(parents=True, exist_ok=True)
            (there / f"{name}.png").write_bytes(drawn(size_px))
    for kind, name in NAMES.items():
        there = folder / "hicolor" / "scalable" / kind
        there.mkdir(parents=True, exist_ok=True)
        (there / f"{name}.svg").write_bytes(DRAWING.read_bytes())
    (folder / "ultraplanner.ico").write_bytes(ico({px: drawn(px) for px in _ICO_PX}))
    (folder / "ultraplanner.icns").write_bytes(icns({k: drawn(p) for k, p in _ICNS_PX.items()}))


if __name__ == "__main__":
    make(Path(sys.argv[1]))
