"""How many bases and sets the class and the time are for, in numbers and in words."""

from decks.deck import Deck
from decks.lesson import Bases
from decks.lesson.crowd import crowd

LEAST_MINUTES = 4
"""What a set needs at the least to be worth laying out; our own judgement."""


def bases_laid(deck: Deck, bases: Bases) -> int:
    """Return how many bases there are at first."""
    return crowd(deck.recipe.students, len(bases.sets[0])).first


def sets_today(deck: Deck, bases: Bases) -> tuple[int, int]:
    """Return how many of the sets the time is for, and about how many minutes each."""
    minutes = deck.recipe.minutes
    used = min(len(bases.sets), max(1, minutes // LEAST_MINUTES))
    return used, max(1, minutes // used)


def all_sets(number: int) -> str:
    """Return what a number of sets, more than one, are called together."""
    return "both sets" if number == 2 else f"all {number} sets"  # noqa: PLR2004


def keep_others(number: int) -> str:
    """Say what is done with so many sets for which there is no time."""
    return f"keep the {'other' if number == 1 else 'others'} for another day"
