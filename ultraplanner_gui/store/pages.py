"""What the pages of a damaged file still hold, read one by one without the tree above them.

The layout of pages, cells and records is that of "Database File Format" (sqlite.org). Nothing
found here is to be trusted before its checksum was compared.
"""

from __future__ import annotations

from collections.abc import Iterator

PAGE_BYTES = 4096
_SIZES = frozenset(2**power for power in range(9, 17))
_TABLE_LEAF = 0x0D
_FIRST_PAGE_HEADER = 100
_MOST_CELLS = 4096
#: Bytes put together from overflow pages, as a multiple of the file: a hostile file chains many
#: cells to the same pages.
_MOST_READ = 8

Record = tuple[int, tuple[bytes, ...]]


def page_size(raw: bytes) -> int:
    """Return the page size in the header of *raw*; the usual one if the header is lost."""
    size = int.from_bytes(raw[16:18], "big")
    size = 65_536 if size == 1 else size
    return size if size in _SIZES else PAGE_BYTES


def records(raw: bytes) -> Iterator[Record]:
    """Yield the row number and the blobs of every table row that can be put together."""
    size = page_size(raw)
    left = _MOST_READ * len(raw)
    for start in range(0, len(raw), size):
        page = memoryview(raw)[start : start + size]
        head = _FIRST_PAGE_HEADER if start == 0 else 0
        if len(page) < head + 8 or page[head] != _TABLE_LEAF:
            continue
        cells = int.from_bytes(page[head + 3 : head + 5], "big")
        for cell in range(min(cells, _MOST_CELLS)):
            at = head + 8 + 2 * cell
            place = int.from_bytes(page[at : at + 2], "big")
            found = _cell(raw, size, page, place, left)
            if found is None:
                continue
            number, payload = found
            left -= len(payload)
            blobs = _blobs(payload)
            if blobs:
                yield number, blobs


def _cell(
    raw: bytes, size: int, page: memoryview, place: int, left: int
) -> tuple[int, bytes] | None:
    length, at = _varint(page, place)
    number, at = _varint(page, at)
    if not 0 < length <= min(left, len(raw)) or at >= len(page):
        return None
    here = _local(length, size)
    payload = bytearray(page[at : at + here])
    if here < length:
        following = int.from_bytes(page[at + here : at + here + 4], "big")
        for _ in range(length // (size - 4) + 1):
            start = (following - 1) * size
            if following < 2 or start + size > len(raw):
                break
            payload += raw[start + 4 : start + size]
            following = int.from_bytes(raw[start : start + 4], "big")
            if len(payload) >= length:
                break
    return (number, bytes(payload[:length])) if len(payload) >= length else None


def _local(length: int, size: int) -> int:
    """Return how much of a payload of *length* stands in its own page (section 1.6)."""
    if length <= size - 35:
        return length
    least = (size - 12) * 32 // 255 - 23
    wish = least + (length - least) % (size - 4)
    return wish if wish <= size - 35 else least


def _blobs(payload: bytes) -> tuple[bytes, ...]:
    """Return the blobs of a record of blobs and NULLs; nothing if it is any other."""
    view = memoryview(payload)
    head, at = _varint(view, 0)
    lengths = []
    while at < head <= len(payload):
        kind, at = _varint(view, at)
        if kind == 0:
            continue
        if kind < 12 or kind % 2:
            return ()
        lengths.append((kind - 12) // 2)
    if head + sum(lengths) != len(payload):
        return ()
    blobs, at = [], head
    for length in lengths:
        blobs.append(payload[at : at + length])
        at += length
    return tuple(blobs)


def _varint(view: memoryview, at: int) -> tuple[int, int]:
    """Return the number at *at* and where it ends (section 1.6)."""
    value = 0
    for step in range(9):
        if at + step >= len(view):
            return 0, len(view)
        byte = view[at + step]
        if step == 8:
            return value << 8 | byte, at + 9
        value = value << 7 | byte & 0x7F
        if byte < 0x80:
            return value, at + step + 1
    return value, at + 9
