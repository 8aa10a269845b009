"""Hints: how an answer begins, and of how many letters it is."""

import unicodedata
from collections.abc import Sequence

from decks.bank.letters import letters_of

_ELIDED, _APOSTROPHES = frozenset("cdjlmnst"), frozenset("'’")
_SHORTEST_ELIDED = 3
"""In letters, with the one that is elided: of `l’a` the second would be the whole answer."""

DASH = "_"
STAYS = "\u00a0"
BETWEEN_WORDS = f"{STAYS}{STAYS} "
"""Words stand so far apart that it shows where one ends; a line is broken nowhere else."""


def hint_of(answer: str) -> str:
    """Return an answer with the first letter of each word, and a dash for every other sign.

    A word of one letter, a figure, and a sign such as × are the answer themselves, or half of it:
    they are dashes. Hyphens, apostrophes and stops within a word, and brackets round it, stay.
    """
    return BETWEEN_WORDS.join(_of_word(word) for word in answer.split())


def _of_word(word: str) -> str:
    letters = letters_of(word)
    counted = [n for n, letter in enumerate(letters) if _counts(letter)]
    shown = {n for n, letter in enumerate(letters) if counted and _stays(letter, n, counted[0])}
    first = counted[1] if _is_elided(letters, counted) else counted[0] if counted else 0
    if len(counted) > 1 and letters[first][0].isalpha():
        shown.add(first)
    return STAYS.join(letter if n in shown else DASH for n, letter in enumerate(letters))


def _is_elided(letters: Sequence[str], counted: Sequence[int]) -> bool:
    """Say whether a word of one letter leans on the next, as in `l’ail`; its letter is a dash."""
    if len(counted) < _SHORTEST_ELIDED:
        return False
    start = counted[0]
    return letters[start].casefold() in _ELIDED and letters[start + 1] in _APOSTROPHES


def _counts(letter: str) -> bool:
    return unicodedata.category(letter[0])[0] in "LN"


def _stays(letter: str, place: int, first: int) -> bool:
    """Say whether a sign is no part of the answer; a minus, a sign before the first letter, is."""
    category = unicodedata.category(letter[0])
    opens = category in {"Ps", "Pi", "Pf"} or letter in "\"'"
    return opens if place < first else category.startswith("P")
