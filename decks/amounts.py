"""What the settings Cards and Mix mean."""

import re
from typing import TypeAlias

ALL = 0
"""The number of cards that stands for all there are."""

Mix: TypeAlias = tuple[int, int, int]
"""Shares of easy, medium and hard items, of any sum."""

_MOST_DIGITS = 5
_MIX = re.compile(r"(\d{1,4}) ?%? ?[/:;,-] ?(\d{1,4}) ?%? ?[/:;,-] ?(\d{1,4}) ?%?", re.ASCII)


def read_cards(text: str) -> int | None:
    """Return the number of cards that a text asks for, `ALL` for `all`, or None for neither."""
    word = text.strip().casefold()
    if word == "all":
        return ALL
    is_number = word.isascii() and word.isdigit() and len(word) <= _MOST_DIGITS
    return int(word) or None if is_number else None


def read_mix(text: str) -> Mix | None:
    """Return the shares of easy, medium and hard that a text names, or None.

    The shares are whole numbers of any sum: `40/40/20`, `2:2:1` and `40 %, 40 %, 20 %` are one
    mix. At least one share is above nought.
    """
    found = _MIX.fullmatch(" ".join(text.split()))
    if found is None:
        return None
    easy, medium, hard = map(int, found.groups())
    return (easy, medium, hard) if easy + medium + hard else None
