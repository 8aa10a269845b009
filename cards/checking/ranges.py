"""Choices that are ranges of numbers."""

import re
from collections.abc import Sequence
from fractions import Fraction
from itertools import combinations
from math import inf

from msgspec import Struct

_NUMBER = r"(-?\d+(?:[.,]\d+)?)"
_BETWEEN = re.compile(
    rf"(?:between |from )?{_NUMBER}\s*(?:\D{{0,4}}?)\s*(?:[–—-]|\bto\b|\band\b)\s*{_NUMBER}\s*(\D*)"
)
_BELOW = re.compile(rf"(?:less than|under|below|fewer than|<)\s*{_NUMBER}\s*(\D*)")
_ABOVE = re.compile(rf"(?:more than|over|above|greater than|>)\s*{_NUMBER}\s*(\D*)")
_FIRST_YEAR, _LAST_YEAR = 1000, 2100
_MOST_CHOICES = 12


class Range(Struct, frozen=True):
    """What a choice spans; `open_end` says that neither end belongs to it."""

    low: Fraction | float
    high: Fraction | float
    open_end: bool
    unit: str


def first_overlap(texts: Sequence[str]) -> tuple[str, str] | None:
    """Return the first two of some choices that are ranges of one kind and share a number.

    Of many choices only the first dozen are held against each other.
    The years of two events may overlap, and two choices that are the same are no matter of ranges.
    """
    read = [(text, span) for text in texts[:_MOST_CHOICES] if (span := range_of(text))]
    for (first, one), (second, other) in combinations(read, 2):
        if one != other and one.unit == other.unit and _share(one, other):
            return first, second
    return None


def range_of(text: str) -> Range | None:
    """Return what a text spans, or None if it is not a range of numbers (or one of years)."""
    said = " ".join(text.casefold().replace("−", "-").split())
    if found := _BETWEEN.fullmatch(said):
        low, high = _number(found[1]), _number(found[2])
        is_time = _FIRST_YEAR <= low <= _LAST_YEAR and _FIRST_YEAR <= high <= _LAST_YEAR
        return (
            Range(low, high, open_end=False, unit=found[3]) if low < high and not is_time else None
        )
    if found := _BELOW.fullmatch(said):
        return Range(-inf, _number(found[1]), open_end=True, unit=found[2])
    if found := _ABOVE.fullmatch(said):
        return Range(_number(found[1]), inf, open_end=True, unit=found[2])
    return None


def _share(one: Range, other: Range) -> bool:
    low, high = max(one.low, other.low), min(one.high, other.high)
    return low < high or (low == high and not (one.open_end or other.open_end))


def _number(text: str) -> Fraction:
    return Fraction(text.replace(",", "."))
