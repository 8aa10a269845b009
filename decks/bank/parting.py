"""Which blanks of a study guide share a bank."""

from collections import defaultdict
from collections.abc import Mapping, Sequence

from cards.answers import accepted, answered
from cards.item import Item, Kind
from decks.bank.apart import spread
from decks.bank.entries import entry_of
from decks.bank.values import Worth, is_sum, worth_of, worths_of
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
    owners: defaultdict[str | Worth, set[int]] = defaultdict(set)
    for number, item in enumerate(group):
        owners[answered(item)].add(number)
        for worth in worth_of(entry_of(item)):
            owners[worth].add(number)
    rivals: list[set[int]] = [set() for _ in group]
    for number, item in enumerate(group):
        for owner in _owners_of_fitting(item, owners) - {number}:
            rivals[number].add(owner)
            rivals[owner].add(number)
    return rivals


def _owners_of_fitting(item: Item, owners: Mapping[str | Worth, set[int]]) -> set[int]:
    """Return whose answers fit an item's blank: by their letters or, for a sum, by their worth."""
    found = set[int]().union(*(owners.get(text, ()) for text in accepted(item)))
    same = found.union(*(owners.get(worth, ()) for worth in worths_of(item)))
    return same if same != found and is_sum(item) else found
