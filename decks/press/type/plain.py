"""Fira Sans in its two weights: the plain type of every page, set letter by letter."""

import unicodedata
from collections.abc import Sequence
from functools import cache
from importlib.resources import as_file, files

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas

from decks.layout.runs import Run

REGULAR = "FiraSans-Regular"
STRONG = "FiraSans-SemiBold"


def font_name(*, strong: bool) -> str:
    """Return the name that the press knows a weight by."""
    return STRONG if strong else REGULAR


@cache
def font(name: str) -> TTFont:
    """Return a weight, known to the press from then on."""
    with as_file(files("fontpkg_fira_sans") / "files" / f"{name}.ttf") as path:
        loaded = TTFont(name, str(path))
    pdfmetrics.registerFont(loaded)
    return loaded


def load() -> None:
    """Make both weights known to the press."""
    for name in (REGULAR, STRONG):
        font(name)


@cache
def has(letter: str) -> bool:
    """Return whether both weights can set a letter beside another.

    Combining marks have their place over a letter, so that they are none, nor are controls and
    codes for private use.
    """
    if unicodedata.category(letter) in {"Mn", "Me", "Cc", "Cf", "Co"}:
        return False
    return all(ord(letter) in font(name).face.charToGlyph for name in (REGULAR, STRONG))


def is_plain(text: str) -> bool:
    """Whether plain type sets a text as it stands."""
    return (text.isascii() and text.isprintable()) or all(map(has, text))


def width_of(text: str, *, strong: bool) -> float:
    """Return the width of a plain text in ems."""
    return float(font(font_name(strong=strong)).stringWidth(text, 1))


def draw(canvas: Canvas, runs: Sequence[Run], x: float, y: float, size: float) -> None:
    """Draw plain runs beside one another, from a baseline at (x, y), in the canvas's colour."""
    for run in runs:
        canvas.setFont(font_name(strong=run.strong), size * run.scale)
        canvas.drawString(x, y + run.rise * size, run.text)
        x += width_of(run.text, strong=run.strong) * run.scale * size
