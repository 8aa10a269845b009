"""Fira Sans in its two weights: what it can print, and how wide a text is."""

import unicodedata
from functools import cache
from importlib.resources import as_file, files

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

REGULAR = "FiraSans-Regular"
STRONG = "FiraSans-SemiBold"


def font_name(*, strong: bool) -> str:
    """Return the name that the press knows a weight by."""
    return STRONG if strong else REGULAR


@cache
def _font(name: str) -> TTFont:
    with as_file(files("fontpkg_fira_sans") / "files" / f"{name}.ttf") as path:
        font = TTFont(name, str(path))
    pdfmetrics.registerFont(font)
    return font


def load() -> None:
    """Make both weights known to the press."""
    for name in (REGULAR, STRONG):
        _font(name)


@cache
def measure(text: str, strong: bool = False) -> float:  # noqa: FBT001, FBT002 (it is a Measure)
    """Return the width of a text in ems."""
    return float(_font(font_name(strong=strong)).stringWidth(text, 1))


@cache
def _letters() -> frozenset[int]:
    faces = [_font(name).face for name in (REGULAR, STRONG)]
    return frozenset.intersection(*(frozenset(face.charToGlyph) for face in faces))


def unprintable(text: str) -> list[str]:
    """Return the characters of a text that the font has no letter for, in order, each once."""
    composed = unicodedata.normalize("NFC", text)
    return list(dict.fromkeys(c for c in composed if c != "\n" and ord(c) not in _letters()))
