"""Numerals with their separators, in either of the two ways of the world."""

import re
from enum import Enum
from fractions import Fraction

# A longer numeral is no sum for the classroom, and would make powers of it unwieldy.
_MOST_DIGITS = 40
_NUMERAL = r"\d{{1,3}}(?:[{groups} ']\d{{3}})+(?:{mark}\d+)?|\d*{mark}\d+|\d+"


class Style(Enum):
    """Which sign parts whole from fraction; the other one may part the thousands."""

    POINT = re.compile(_NUMERAL.format(groups=",", mark="[.]"))
    COMMA = re.compile(_NUMERAL.format(groups=".", mark="[,]"))


def numeral(text: str, style: Style) -> Fraction | None:
    """Return the value of an unsigned numeral, or None if it is none in this style."""
    if len(text) > _MOST_DIGITS or not text.isascii() or not style.value.fullmatch(text):
        return None
    mark, groups = (".", ",") if style is Style.POINT else (",", ".")
    digits = re.sub(rf"[{re.escape(groups)} ']", "", text)
    return Fraction(digits.replace(mark, "."))


def step(text: str, style: Style) -> Fraction | None:
    """Return the worth of the last digit that counts: 1/100 for 3.25, 100 for 1,200."""
    if numeral(text, style) is None:
        return None
    whole, _, part = text.partition("." if style is Style.POINT else ",")
    if part:
        return Fraction(1, 10 ** len(part))
    digits = re.sub(r"\D", "", whole)
    return Fraction(10 ** (len(digits) - len(digits.rstrip("0"))) if digits.strip("0") else 1)
