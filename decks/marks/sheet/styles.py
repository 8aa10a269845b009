"""How the cells of the marks workbook look."""

from functools import cache
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from cards.workbook.texts import TEXT
from cards.workbook.tones import HAIRLINE, INK, NEEDED, PANEL, QUIET

COUNT, SHARE, MEAN = "0", "0%", "0.0"
AS_TYPED = "General"
"""Where something is filled in, so that 2.5 does not look like a whole number."""


class Style(Struct, frozen=True, eq=False):
    """The letters of a cell, where they stand, its ground, and thin lines on its edges.

    Tones are written `AARRGGBB`; without one there is no ground, or no line. Sizes are in points.
    A style is the same only as itself: thousands of cells look theirs up.
    """

    size: int = 12
    bold: bool = False
    ink: str = INK
    ground: str = ""
    across: str = "left"
    upright: str = "vcenter"
    indent: int = 1
    wrapped: bool = True
    above: str = ""
    below: str = ""
    beside: str = ""
    number_format: str = TEXT


TITLE = Style(size=18, bold=True, wrapped=False)
DIRECTIONS = Style(ink=QUIET, wrapped=False)
HEADING = Style(bold=True, ground=PANEL, below=HAIRLINE)
HEADING_TO_FILL_IN = replace(HEADING, ground=NEEDED, across="center", indent=0)
LABEL = Style(below=HAIRLINE)
SUM_LABEL = Style(bold=True, across="right")
TO_FILL_IN = Style(
    across="center",
    indent=0,
    wrapped=False,
    above=HAIRLINE,
    below=HAIRLINE,
    beside=HAIRLINE,
    number_format=AS_TYPED,
)
NONE_HERE = Style(ground=PANEL, upright="top", below=HAIRLINE)
_RESULT = Style(ink=QUIET, below=HAIRLINE, across="center", indent=0, wrapped=False)


@cache
def result(number_format: str, *, strong: bool = False) -> Style:
    """Return the style of what a formula comes to."""
    ink = INK if strong else QUIET
    return replace(_RESULT, ink=ink, bold=strong, number_format=number_format)


@cache
def numbered(style: Style) -> Style:
    """Return a style for a number that stands where otherwise a text does."""
    return replace(style, number_format=AS_TYPED)


@cache
def first_of_pile(style: Style) -> Style:
    """Return a style with a darker line above, where another pile begins."""
    return replace(style, above=QUIET)


def for_xlsxwriter(style: Style) -> dict[str, Any]:
    """Return a style in the words of the library that writes it."""
    words: dict[str, Any] = {
        "font_name": "Calibri",
        "font_size": style.size,
        "font_color": coded(style.ink),
        "bold": style.bold,
        "align": style.across,
        "valign": style.upright,
        "indent": style.indent,
        "text_wrap": style.wrapped,
        "num_format": style.number_format,
    }
    if style.ground:
        words["bg_color"] = coded(style.ground)
    edges = {"top": style.above, "bottom": style.below, "left": style.beside, "right": style.beside}
    for edge, tone in edges.items():
        if tone:
            words |= {edge: 1, f"{edge}_color": coded(tone)}
    return words


def coded(tone: str) -> str:
    """Return a tone `AARRGGBB` as `#RRGGBB`."""
    return f"#{tone[2:]}"
