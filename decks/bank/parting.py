"""Which blanks of a study guide share a bank."""

from collections.abc import Sequence

from cards.entries import entry_of
from cards.fitting import fitting, index_of
from cards.item import Item, Kind
from decks.bank.apart import spread
from decks.evenly import even_sizes

# a bank that mixes names, numbers and sentences gives its answers away by their form
_ORDER = (Kind.VOCABULARY, Kind.QUESTION, Kind.FACT, Kind.DETAIL)
_FEWEST = 4
_TOGETHER = 30
"""Rivals are kept apart among so many parts at a time; all at once takes the square of the time."""


def parted(items: Sequence[Item], most: int) -> list[list[Item]]:
    """Divide the items into parts of one kind, with `most` blanks at most.

    The parts of a kind are as equal as can be. A kind with fewer than four items shares parts with
    the kind beside it. Within a part the items keep their order, kind by kind. Items whose answers
    fit each other's blanks are kept apart where there are parts to spread them over.
    """
    return [part for group in _groups(items) for part in _spread(group, most)]


def _groups(items: Sequence[Item]) -> list[list[Item]]:
    kinds = [[item for item in items if item.kind is kind] for kind in _ORDER]
    groups = [group for group in kinds if group]
    while len(groups) > 1 and min(map(len, groups)) < _FEWEST:
        small = min(range(len(groups)), key=lambda number: len(groups[number]))
        first = max(0, small - 1)
        groups[first : first + 2] = [groups[first] + groups[first + 1]]
    return groups


def _spread(group: Sequence[Item], most: int) -> list[list[Item]]:
    rooms = even_sizes(len(group), -(-len(group) // most))
    parts: list[list[Item]] = []
    while rooms:
        some, rooms = rooms[:_TOGETHER], rooms[_TOGETHER:]
        items, group = group[: sum(some)], group[sum(some) :]
        spread_over = spread(_rivals(items), some)
        parts += [[items[item] for item in sorted(part)] for part in spread_over]
    return parts


def _rivals(group: Sequence[Item]) -> list[set[int]]:
    """Return for each item the others whose answer fits its blank, or whose blank its answer."""
    index = index_of(map(entry_of, group))
    rivals: list[set[int]] = [set() for _ in group]
    for number, item in enumerate(group):
        for owner in fitting(item, index) - {number}:
            rivals[number].add(owner)
            rivals[owner].add(number)
    return rivals
