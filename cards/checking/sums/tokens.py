"""A line of arithmetic, cut into numbers and signs."""

import re
from fractions import Fraction

from msgspec import Struct

from cards.checking.sums import LONGEST
from cards.checking.sums.numerals import Style, numeral

_FRACTION = r"(?:\d+ )?(?<![/.,\d])\d+/\d+(?![/.,\d])"
_NUMERAL = r"\d{1,3}(?:[ ']\d{3})+(?![\d/])(?:[.,]\d+)?|\d+(?:[.,]\d+)*|[.,]\d+"
_TOKEN = re.compile(
    rf"(?P<fraction>{_FRACTION})|(?P<numeral>{_NUMERAL})|(?P<sign>of\b|[-+×÷/^()√∛%])"
)


class NotUnderstoodError(Exception):
    """Something that is not plain arithmetic."""


class Token(Struct, frozen=True):
    """A sign, or a number with its value; `tight` says that no space follows."""

    sign: str
    tight: bool
    value: Fraction | None = None


def tokens(text: str, style: Style) -> list[Token]:
    """Return the numbers and signs of a text in plain signs.

    Raises `NotUnderstoodError` at anything else.
    """
    if len(text) > LONGEST:
        raise NotUnderstoodError
    found: list[Token] = []
    at = 0
    while at < len(text):
        match = _TOKEN.match(text, at)
        if not match:
            raise NotUnderstoodError
        at = match.end()
        found.append(_token(match, style, tight=not text[at : at + 1].isspace()))
        at += len(text[at:]) - len(text[at:].lstrip())
    return found


def _token(match: re.Match[str], style: Style, *, tight: bool) -> Token:
    if match["sign"]:
        return Token(match["sign"], tight)
    if match["fraction"]:
        return Token("fraction", tight, _fraction(match["fraction"]))
    value = numeral(match["numeral"], style)
    # 05 is part of a date or a label
    if value is None or re.match(r"0\d", match["numeral"]):
        raise NotUnderstoodError
    return Token("numeral", tight, value)


def _fraction(text: str) -> Fraction:
    """Return the value of `3/4` or `2 1/2`."""
    whole, _, part = text.rpartition(" ")
    above, below = part.split("/")
    if not int(below):
        raise NotUnderstoodError
    return Fraction(int(whole or 0)) + Fraction(int(above), int(below))
