"""Where a PDF draws what, in millimetres from the top left corner, from its own operators."""

import io
from dataclasses import dataclass

from pypdf import PdfReader
from pypdf.generic import ContentStream

MM_PER_PT = 25.4 / 72
IDENTITY = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)


@dataclass
class Drawn:
    """Rectangles (left, top, width, height), the first glyph of each run of text (x, y, em), and
    straight lines (x, y, x, y).
    """

    width_mm: float
    height_mm: float
    rects: list
    texts: list
    lines: list


def drawn(pdf):
    """Return what each page of *pdf* draws."""
    reader = PdfReader(io.BytesIO(pdf))
    return [_page(reader, page) for page in reader.pages]


def _times(m, n):
    """Return the matrix that applies *m*, then *n* (ISO 32000-1, 8.3.4)."""
    a, b, c, d, e, f = m
    g, h, i, j, k, o = n
    return (
        a * g + b * i,
        a * h + b * j,
        c * g + d * i,
        c * h + d * j,
        e * g + f * i + k,
        e * h + f * j + o,
    )


def _page(reader, page):
    width, height = float(page.mediabox.width), float(page.mediabox.height)
    found = Drawn(width * MM_PER_PT, height * MM_PER_PT, [], [], [])
    matrix, saved, text, size, is_new = IDENTITY, [], IDENTITY, 0.0, False

    def place(x, y, by):
        return (
            (x * by[0] + y * by[2] + by[4]) * MM_PER_PT,
            (height - (x * by[1] + y * by[3] + by[5])) * MM_PER_PT,
        )

    for values, operator in ContentStream(page.get_contents(), reader).operations:
        match operator:
            case b"q":
                saved.append(matrix)
            case b"Q":
                matrix = saved.pop()
            case b"cm":
                matrix = _times(tuple(map(float, values)), matrix)
            case b"re":
                x, y, w, h = map(float, values)
                left, top = place(x, y, matrix)
                right, bottom = place(x + w, y + h, matrix)
                found.rects.append((left, top, right - left, bottom - top))
            case b"m":
                begins = place(*map(float, values), matrix)
            case b"l":
                ends = place(*map(float, values), matrix)
                found.lines.append((*begins, *ends))
                begins = ends
            case b"Tf":
                size = float(values[1])
            case b"Tm":
                text, is_new = tuple(map(float, values)), True
            case b"Td":
                text = _times((1.0, 0.0, 0.0, 1.0, *map(float, values)), text)
            case b"Tj" if is_new:
                whole = _times(text, matrix)
                found.texts.append((*place(0.0, 0.0, whole), size * abs(whole[3]) * MM_PER_PT))
                is_new = False
    return found
