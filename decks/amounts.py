"""What the settings mean that are numbers of cards, or shares."""

import re
from typing import TypeAlias

ALL = 0
"""The number of cards that stands for all there are."""

Mix: TypeAlias = tuple[int, int, int]
"""Shares of easy, medium and hard items, of any sum."""

_MOST_DIGITS = 5
_WHOLE = 100
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

    The shares are whole numbers up to 100, of any sum: `40/40/20`, `2:2:1` and `40 %, 40 %, 20 %`
    are one mix. At least one share is above nought.
    """
    found = _MIX.fullmatch(" ".join(text.split()))
    if found is None:
        return None
    easy, medium, hard = map(int, found.groups())
    is_mix = easy + medium + hard > 0 and max(easy, medium, hard) <= _WHOLE
    return (easy, medium, hard) if is_mix else None


def read_percent(text: str) -> int | None:
    """Return the whole percents, 0 to 100, that a text names, or None.

    `80 %`, `80` and `0.8` are one share; below 1 a number is a part of the whole.
    """
    found = re.fullmatch(r"(\d{1,3}|\d?[.,]\d{1,2}) ?(%?)", " ".join(text.split()), re.ASCII)
    if found is None:
        return None
    number = float(found[1].replace(",", "."))
    is_part = not found[2] and not found[1].isdigit()
    percent = round(number * 100) if is_part else round(number)
    return percent if 0 <= percent <= _WHOLE else None
