"""Sets of questions that replace each other at the bases of a room."""

import random
from collections.abc import Callable, Sequence
from itertools import pairwise

from cards.item import Item
from decks.dealing import deal_shares

BASES = 8
"""About as many bases as a room has walls for, and a class can watch; our own judgement."""


def sets_for(items: int, wanted: int | None, most: int) -> int:
    """Return how many sets so many items make: as wanted, or of about eight bases each."""
    return max(1, min(items, most, wanted or round(items / BASES)))


def equal_sets(items: Sequence[Item], sets: int, seed: str) -> list[list[Item]]:
    """Return sets that are as alike in level, topic and kind as a fair deal makes them."""
    names = [str(n) for n in range(sets)]
    unpinned = deal_shares(items, names, f"{seed}/sets")
    return [list(hand) for hand in unpinned.hands]


def rising_sets(items: Sequence[Item], sets: int, generator: random.Random) -> list[list[Item]]:
    """Return sets of one size or one more, each at least as hard as the one before it."""
    rising = generator.sample(list(items), len(items))
    rising.sort(key=lambda item: -item.level.expected_share)
    each, more = divmod(len(rising), sets)
    ends = [n * each + min(n, more) for n in range(sets + 1)]
    return [rising[start:end] for start, end in pairwise(ends)]


def at_bases(sets: Sequence[Sequence[Item]]) -> list[list[Item]]:
    """Order every set so that a base changes its topic from set to set as often as can be.

    The nth item of a set lies at base n. What can be reached from one set to the next depends only
    on how many items of each topic they hold, not on who lies where, so that going set by set
    loses nothing.
    """
    placed: list[list[Item]] = []
    for items in sets:
        before = placed[-1] if placed else []
        placed.append(_placed(list(items), [item.topic for item in before]))
    return placed


def _placed(items: list[Item], topics: Sequence[str]) -> list[Item]:
    """Return the items with as many as can be at bases whose topic was another."""
    fits = [
        [n for n in range(len(items)) if n >= len(topics) or item.topic != topics[n]]
        for item in items
    ]
    base_of = _most_pairs(fits, len(items))
    free = iter(sorted(set(range(len(items))) - set(base_of.values())))
    at = {base_of[n] if n in base_of else next(free): item for n, item in enumerate(items)}
    return [at[base] for base in range(len(items))]


def _most_pairs(fits: Sequence[Sequence[int]], bases: int) -> dict[int, int]:
    """Return item -> base for as many items as can have a base that fits (Kuhn 1955)."""
    holder: list[int | None] = [None] * bases

    def find(item: int, seen: set[int]) -> bool:
        for base in fits[item]:
            if base in seen:
                continue
            seen.add(base)
            if holder[base] is None or find(_held(holder, base), seen):
                holder[base] = item
                return True
        return False

    for item in range(len(fits)):
        find(item, set())
    return {item: base for base, item in enumerate(holder) if item is not None}


def _held(holder: Sequence[int | None], base: int) -> int:
    item = holder[base]
    assert item is not None  # noqa: S101 (the caller has looked)
    return item


def repeats_at_bases(sets: Sequence[Sequence[Item]], topic: Callable[[Item], str]) -> int:
    """Return how often a base has the same topic in two neighbouring sets."""
    return sum(
        topic(one) == topic(other)
        for earlier, later in pairwise(sets)
        for one, other in zip(earlier, later, strict=False)
    )
