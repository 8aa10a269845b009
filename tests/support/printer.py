"""A printer that lays its backs beside their fronts, and the eye that reads its test page.

The error belongs to the rollers: it lies fixed on the back of the sheet, whatever is printed. How
an image gets onto the sheet is the driver's affair: for the other flip edge it turns the image of
the back half a turn round, and an image that is wider than high a quarter of a turn to the left.
"""

import itertools
import math
from collections.abc import Iterator
from pathlib import Path

import pikepdf
from msgspec import Struct
from pdfplumber.page import Page

POINTS_PER_MM = 72 / 25.4
SIDEWAYS = {("portrait", "long"), ("landscape", "short")}
"""How a printer turns paper (HP PCL 5 reference 5961-0509, pp. 4-7 and 4-8)."""


class Error(Struct, frozen=True):
    """How far the rollers lay a back to the right and up, in mm, and turn it, in degrees."""

    right: float
    up: float
    turn: float = 0


def matrix_on_sheet(width: float, height: float, flip: str) -> pikepdf.Matrix:
    """Return how the image of a back lies on its sheet, middle on middle."""
    quarter = 90 if width > height else 0
    half = 180 if flip == "short" else 0
    return pikepdf.Matrix().rotated(quarter + half).translated(-width / 2, -height / 2)


def printed(file: Path, out: Path, error: Error, flip: str) -> Path:
    """Print a file of fronts and backs in turn: the backs land where the rollers lay them.

    The error is a turn about the middle of the sheet, then the way to the right and up.
    """
    laid = (
        pikepdf.Matrix()
        .translated(error.right * POINTS_PER_MM, error.up * POINTS_PER_MM)
        .rotated(error.turn)
    )
    with pikepdf.open(file) as pdf:
        for back in pdf.pages[1::2]:
            _left, _bottom, width, height = map(float, back.mediabox)
            there = matrix_on_sheet(width, height, flip)
            # of A @ B, A is applied first
            moved = there @ laid @ there.inverse()
            back.contents_add(f"q {moved.encode().decode()} cm\n".encode(), prepend=True)
            back.contents_add(b"\nQ")
        pdf.save(out)
    return out


def behind(width: float, height: float, flip: str, x: float, y: float) -> tuple[float, float]:
    """Return where a point of a front lies as seen on the back."""
    shape = "landscape" if width > height else "portrait"
    return (width - x, y) if (shape, flip) in SIDEWAYS else (x, height - y)


def ends(line: dict, page: Page) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return both ends of a line, in points from the lower left."""
    (x, top), (end_x, end_top) = line["pts"]
    return (x, page.height - top), (end_x, page.height - end_top)


def middle(line: dict, page: Page) -> tuple[float, float]:
    (x, y), (end_x, end_y) = ends(line, page)
    return (x + end_x) / 2, (y + end_y) / 2


def apart(one: tuple[float, float], other: tuple[float, float]) -> float:
    return math.dist(one, other) / POINTS_PER_MM


def length(line: dict, page: Page) -> float:
    """Return the length of a line in mm."""
    return apart(*ends(line, page))


def read_test_page(front: Page, back: Page, flip: str) -> dict[str, str]:
    """Return what an eye reads on each scale, to a tenth of a millimetre."""
    seen = [
        [behind(front.width, front.height, flip, *end) for end in ends(line, front)]
        for line in front.lines
        if 25 < length(line, front) < 27
    ]
    return {name: f"{_read(seen, back, at):.1f}" for name, at in _names(back)}


def _names(back: Page) -> Iterator[tuple[str, tuple[float, float]]]:
    """Yield the names of the scales, which are the largest words but the title, and where."""
    text = "".join(char["text"] for char in back.chars)
    for name in ("right", "up", "foot"):
        for start in (n for n in range(len(text)) if text.startswith(name, n)):
            first = back.chars[start]
            if 12.5 < first["size"] < 13.5:
                last = back.chars[start + len(name) - 1]
                yield name, (last["x1"], (last["y0"] + last["y1"]) / 2)


def _read(seen: list, back: Page, name_at: tuple[float, float]) -> float:
    """Return the number on the scale beside a name that a line of the front lies over."""
    near = [at for at in back.lines if _beside(middle(at, back), name_at)]
    zero, five = (_numbered(back, near, figure) for figure in "05")
    lines = [line for line in seen if _crosses(line, zero, five)]
    (crossing,) = [_along(line, zero, five) for line in lines]
    return crossing * 5


def _beside(point: tuple[float, float], name_at: tuple[float, float]) -> bool:
    across, up = point[0] - name_at[0], point[1] - name_at[1]
    return 0 < across / POINTS_PER_MM < 30 and abs(up) / POINTS_PER_MM < 13


def _numbered(back: Page, near: list, figure: str) -> tuple[float, float]:
    """Return the foot of the long tick that stands at a number."""
    ticks = [ends(line, back)[0] for line in near if 4.5 < length(line, back) < 4.7]
    chars = back.chars
    marks = [
        ((char["x0"] + char["x1"]) / 2, (char["y0"] + char["y1"]) / 2)
        for before, char in itertools.pairwise(chars)
        if char["text"] == figure and before["text"] != "−" and 8.4 < char["size"] < 8.6
    ]
    return min(((tick, mark) for tick in ticks for mark in marks), key=lambda two: apart(*two))[0]


def _along(line: list, zero: tuple[float, float], five: tuple[float, float]) -> float:
    """Return where a line crosses the one through both points: 0 at the first, 1 at the second."""
    (x, y), (end_x, end_y) = line
    run, rise = five[0] - zero[0], five[1] - zero[1]
    across, up = end_x - x, end_y - y
    return ((x - zero[0]) * up - (y - zero[1]) * across) / (run * up - rise * across)


def _crosses(line: list, zero: tuple[float, float], five: tuple[float, float]) -> bool:
    """Return whether a line meets the scale at a right angle, and within its own ends."""
    (x, y), (end_x, end_y) = line
    run, rise = five[0] - zero[0], five[1] - zero[1]
    if abs(run * (end_x - x) + rise * (end_y - y)) > abs(run * (end_y - y) - rise * (end_x - x)):
        return False
    at = _along(line, zero, five)
    meets = (zero[0] + at * run, zero[1] + at * rise)
    return apart((x, y), meets) + apart((end_x, end_y), meets) < 26.1 and abs(at) < 1.7
