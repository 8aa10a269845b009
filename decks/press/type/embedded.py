"""Fira Sans as the PDF writer knows it: parsed, and part of every document that shows it."""

from functools import cache
from io import BytesIO

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont

from decks.press.type.plain import REGULAR, STRONG, font_data


@cache
def font(name: str) -> TTFont:
    """Return a weight, known to the PDF writer from then on."""
    loaded = TTFont(name, BytesIO(font_data(name)), shapable=False)
    pdfmetrics.registerFont(loaded)
    return loaded


def load() -> None:
    """Make both weights known to the PDF writer."""
    for name in (REGULAR, STRONG):
        font(name)
