"""Pages as an eye and a screen reader meet them: letters in their order, and what lies beneath."""

import ctypes
from collections.abc import Callable, Iterator
from functools import cache
from math import hypot
from pathlib import Path

import numpy as np
import pypdfium2
from msgspec import Struct
from msgspec.structs import replace
from pypdfium2 import raw

SCALE = 2
Colour = tuple[int, int, int]


class Piece(Struct, frozen=True):
    """Letters that follow one another on one line, in points from the upper left as one reads.

    `turned` tells whether they stand on their heads; then everything is told from the other corner.
    """

    text: str
    left: float
    top: float
    right: float
    bottom: float
    size: float
    turned: bool

    @property
    def middle(self) -> float:
        """The height half way up."""
        return (self.top + self.bottom) / 2


class Page(Struct, frozen=True):
    """A page: its pieces of text in the order of the file, and the colours of its strokes.

    Colours are red, green and blue from 0 to 255; edges are strokes with corners or bends.
    """

    pieces: tuple[Piece, ...]
    edges: frozenset[Colour]
    lines: frozenset[Colour]


@cache
def read(path: Path, number: int) -> Page:
    """Return a page of a PDF as PDFium takes it apart; the first has number 0."""
    document = pypdfium2.PdfDocument(path)
    page = document[number]
    size, seen = page.get_size(), page.get_textpage()
    edges, lines, found = set(), set(), []
    for thing in page.get_objects(max_depth=4):
        if thing.type == raw.FPDF_PAGEOBJ_TEXT:
            found.append(_piece(thing, seen, size))
        elif thing.type == raw.FPDF_PAGEOBJ_PATH and _is_stroked(thing):
            is_line = raw.FPDFPath_CountSegments(thing) == len(("start", "end"))
            (lines if is_line else edges).add(_colour(raw.FPDFPageObj_GetStrokeColor, thing))
    document.close()
    pieces = tuple(_joined([piece for piece in found if piece.text.strip()]))
    return Page(pieces, frozenset(edges), frozenset(lines))


def _piece(
    thing: pypdfium2.PdfObject, seen: pypdfium2.PdfTextPage, paper: tuple[float, float]
) -> Piece:
    count = raw.FPDFTextObj_GetText(thing, seen, None, 0)
    held = (ctypes.c_ushort * (count // 2))()
    raw.FPDFTextObj_GetText(thing, seen, held, count)
    text = bytes(held).decode("utf-16-le", "replace").rstrip("\0")
    matrix, size = raw.FS_MATRIX(), ctypes.c_float()
    raw.FPDFPageObj_GetMatrix(thing, matrix)
    raw.FPDFTextObj_GetFontSize(thing, size)
    high = size.value * hypot(matrix.a, matrix.b)
    left, _, right, _ = thing.get_bounds()
    turned = matrix.a < 0
    line = matrix.f if turned else paper[1] - matrix.f
    if turned:
        left, right = paper[0] - right, paper[0] - left
    return Piece(text, left, line - 0.8 * high, right, line + 0.2 * high, high, turned)


def _joined(pieces: list[Piece]) -> Iterator[Piece]:
    """Join what follows on one line without a gap: a change of font is no gap."""
    last = None
    for piece in pieces:
        if last and _goes_on(last, piece):
            last = replace(last, text=last.text + piece.text, right=piece.right)
            continue
        if last:
            yield last
        last = piece
    if last:
        yield last


def _goes_on(last: Piece, piece: Piece) -> bool:
    gap = piece.left - last.right
    level = abs(piece.bottom - last.bottom) < 0.4 * last.size
    return last.turned == piece.turned and level and abs(gap) < 0.6 * last.size


def _is_stroked(thing: pypdfium2.PdfObject) -> bool:
    fill, stroke = ctypes.c_int(), ctypes.c_int()
    raw.FPDFPath_GetDrawMode(thing, fill, stroke)
    return bool(stroke.value)


def _colour(of: Callable[..., object], *what: object) -> Colour:
    held = [ctypes.c_uint() for _ in range(4)]
    of(*what, *map(ctypes.byref, held))
    red, green, blue, _ = (part.value for part in held)
    return red, green, blue


def comes_first(one: Piece, other: Piece) -> bool:
    """Say whether a reader comes to one piece before the other, whatever the layout.

    What stands above in the same column comes first, and what stands to the left in the same line:
    the first rule of T. M. Breuel, High Performance Document Layout Analysis (2003), and what both
    readers by columns and readers by rows do.
    """
    lower = min(one.bottom, other.bottom) - max(one.top, other.top)
    in_line = lower > 0.5 * min(one.bottom - one.top, other.bottom - other.top)
    in_column = min(one.right, other.right) - max(one.left, other.left) > 1
    if in_line:
        return not in_column and one.left < other.left
    return in_column and one.middle < other.middle


def out_of_order(pieces: tuple[Piece, ...]) -> list[tuple[str, str]]:
    """Return the pairs of texts of which the second is to be read before the first."""
    return [
        (earlier.text.strip(), later.text.strip())
        for n, earlier in enumerate(pieces)
        for later in pieces[n + 1 :]
        if earlier.turned == later.turned and comes_first(later, earlier)
    ]


class Contrast(Struct, frozen=True):
    """A letter's contrast with what lies beneath it at the worst place."""

    letter: str
    size: float
    ratio: float


def contrasts_of(path: Path, number: int) -> list[Contrast]:
    """Return the contrast of every letter of a page, after WCAG 2.2, measured on the page.

    The page is rendered without its text, so that what is beneath each letter can be seen.
    """
    document = pypdfium2.PdfDocument(path)
    page = document[number]
    letters = list(_letters(page))
    for thing in list(page.get_objects(filter=[raw.FPDF_PAGEOBJ_TEXT], max_depth=1)):
        page.remove_obj(thing)
    rendered = np.asarray(page.render(scale=SCALE).to_pil().convert("RGB"))
    ground = luminance(rendered)
    document.close()
    inks = {colour: luminance(np.array(colour)) for _, _, colour, _ in letters}
    return [
        Contrast(text, size, float(ratio(inks[colour], _under(ground, box)).min()))
        for text, size, colour, box in letters
    ]


def _letters(page: pypdfium2.PdfPage) -> Iterator[tuple]:
    """Yield each letter that is seen: text, size, colour, and its box in points."""
    seen = page.get_textpage()
    matrix = raw.FS_MATRIX()
    for n in range(seen.count_chars()):
        text = chr(raw.FPDFText_GetUnicode(seen, n))
        if text.isspace() or not text.isprintable() or raw.FPDFText_IsGenerated(seen, n):
            continue
        raw.FPDFText_GetMatrix(seen, n, matrix)
        size = raw.FPDFText_GetFontSize(seen, n) * hypot(matrix.a, matrix.b)
        left, bottom, right, top = seen.get_charbox(n)
        yield text, size, _colour(raw.FPDFText_GetFillColor, seen, n), (left, bottom, right, top)


def _under(ground: np.ndarray, box: tuple[float, float, float, float]) -> np.ndarray:
    """Return the luminances beneath a letter, but for what runs along its edges."""
    left, bottom, right, top = box
    rise = (top - bottom) * 0.15
    height = ground.shape[0] / SCALE
    rows = slice(int((height - top + rise) * SCALE), int((height - bottom - rise) * SCALE) + 1)
    return ground[rows, int(left * SCALE) : int(right * SCALE) + 1]


def _light(share: float) -> float:
    return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4


_LIGHT = np.array([_light(value / 255) for value in range(256)])


def luminance(colour: np.ndarray) -> np.ndarray:
    """Return relative luminance, 0 to 1, of sRGB values from 0 to 255 (WCAG 2.2, its glossary)."""
    return _LIGHT[colour] @ np.array([0.2126, 0.7152, 0.0722])


def ratio(one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """Return the contrast ratio of luminances, 1 to 21 (WCAG 2.2, its glossary)."""
    return (np.maximum(one, other) + 0.05) / (np.minimum(one, other) + 0.05)
