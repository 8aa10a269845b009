"""How the values of settings are read: each reader returns None for a text that is no value."""

import re
from collections.abc import Callable
from enum import StrEnum

from cards.content import LONGEST_CELL
from cards.item import folded
from decks.lengths import CardMeasure, read_measure
from decks.recipe import CardSize, Points
from decks.team import MOST_TEAMS

_ODD_BYTES = re.compile("[\ud800-\udfff]")

YES_OR_NO = ("yes", "no")
MOST_EXTRA = 20
MOST_ROUNDS = MOST_TEAMS
MOST_STUDENTS = 60
MOST_MINUTES = 90
MOST_GRADE = 18
OTHER_SPELLINGS = {"color": "colour", "gray": "grey"}
NUMBER_WORDS = (
    "one two three four five six seven eight nine ten eleven twelve".split()  # noqa: SIM905
)


def choice_of(values: type[StrEnum]) -> Callable[[str], StrEnum | None]:
    """Return what reads one of the values, in either spelling."""
    known = {value.value: value for value in values}
    return lambda text: known.get(OTHER_SPELLINGS.get(folded(text), folded(text)))


def read_card_size(text: str) -> CardSize | CardMeasure | None:
    """Read a size by name or by width and height."""
    named = {size.value: size for size in CardSize}
    return named.get(folded(text)) or read_measure(text)


def read_text(text: str) -> str | None:
    """Read a text that is not blank, not too long for a cell, and can be encoded."""
    if len(text) > LONGEST_CELL or _ODD_BYTES.search(text):
        return None
    return text.strip() or None


def read_number(text: str, least: int, most: int) -> int | None:
    """Read a whole number within bounds."""
    if not re.fullmatch(r"[0-9]{1,3}", text):
        return None
    return int(text) if least <= int(text) <= most else None


def number_from(least: int, most: int) -> Callable[[str], int | None]:
    """Return what reads a whole number within bounds."""
    return lambda text: read_number(text.strip(), least, most)


def read_teams(text: str) -> int | list[str] | None:
    """Read a number of teams, as a figure or a word, or their names."""
    if re.fullmatch(r"\s*[0-9,]*[0-9],000\s*", text):
        return None  # thousands of teams; "101,102" may be the names of rooms
    names = [name for part in text.split(",") if (name := " ".join(part.split()))]
    if len(names) == 1:
        word = folded(names[0]).removesuffix("s").removesuffix(" team")
        if word in NUMBER_WORDS:
            return NUMBER_WORDS.index(word) + 1
        if re.fullmatch(r"[0-9]+", word):
            return read_number(word, 1, MOST_TEAMS)
        if re.fullmatch(r"[-+−]?\d+(?:\.\d+)?(?:e[-+]?\d+)?", word):
            return None
    distinct = len({folded(name) for name in names}) == len(names)
    return names if distinct and 1 <= len(names) <= MOST_TEAMS else None


def read_yes_or_no(text: str) -> bool | None:
    """Read yes or no."""
    return {"yes": True, "y": True, "true": True, "no": False, "n": False, "false": False}.get(
        folded(text)
    )


def read_points(text: str) -> Points | None:
    """Read three numbers of points."""
    found = re.fullmatch(r"([0-9])\D+([0-9])\D+([0-9])", text.strip())
    return Points(*(int(number) for number in found.groups())) if found else None
