"""What a hand weighs: the points that can be expected of it, and what there is to read.

Both are kept in whole numbers, so that sums and differences are exact on every machine.
"""

from collections.abc import Callable

from cards.item import Item

ShareOf = Callable[[Item], float]
"""The share of students expected to get an item right, from 0 to 1."""

POINTS, READING = "expected points", "reading load"
LOADS = (POINTS, READING)
"""In order of weight, after the counts of cards."""


def share_by_level(item: Item) -> float:
    """Return the share that is expected as long as there are no marks."""
    return item.level.expected_share


def points(item: Item, share_of: ShareOf) -> int:
    """Return the points expected of an item, in thousandths (rounded to the nearest)."""
    return round(1000 * share_of(item))


def words(item: Item) -> int:
    """Return the reading load of an item: the words of its prompt and of its answer.

    A word is what stands between white space. Words and not letters: a student can count them.
    """
    return len(item.prompt.split()) + len(item.answer.split())
