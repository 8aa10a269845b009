"""Sets of questions that replace each other at the bases of a room."""

import random
from collections import Counter
from collections.abc import Sequence
from itertools import pairwise

from msgspec.structs import replace

from cards.item import Item, folded
from decks.dealing import ShareOf, deal_shares, share_by_level
from decks.evenly import evenly

BASES = 8
"""About as many bases as a room has walls for, and a class can watch; our own judgement."""


def sets_for(items: int, wanted: int | None, most: int) -> int:
    """Return how many sets so many items make: as wanted, or of about eight bases each."""
    return max(1, min(items, most, wanted or round(items / BASES)))


def equal_sets(
    items: Sequence[Item], sets: int, seed: str, share_of: ShareOf = share_by_level
) -> list[list[Item]]:
    """Return sets that are as alike in level, topic and kind as a fair deal makes them."""
    names = [str(n) for n in range(sets)]
    # a card that is pinned to a team lies at a base like any other
    unpinned = [replace(item, team=None) for item in items]
    dealt = deal_shares(unpinned, names, f"{seed}/sets", share_of)
    return [list(hand) for hand in dealt.hands]


def rising_sets(
    items: Sequence[Item],
    sets: int,
    generator: random.Random,
    share_of: ShareOf = share_by_level,
) -> list[Sequence[Item]]:
    """Return sets of one size or one more, each at least as hard as the one before it."""
    rising = generator.sample(list(items), len(items))
    rising.sort(key=lambda item: -share_of(item))
    return evenly(rising, sets)


def at_bases(sets: Sequence[Sequence[Item]]) -> list[list[Item]]:
    """Order every set so that a base changes its topic from set to set as often as can be.

    The nth item of a set lies at base n; no set is longer than the one before it. What can be
    reached from one set to the next depends only on how many items of each topic lie at the bases
    of both, not on who lies where, so that going set by set loses nothing. Where a set is shorter,
    the base that is given up is one whose topic the shorter set has most of.
    """
    placed: list[list[Item]] = []
    for items in sets:
        _give_up_bases(placed, items)
        before = placed[-1] if placed else []
        placed.append(_placed(list(items), [_topic(item) for item in before]))
    return placed


def _give_up_bases(placed: Sequence[list[Item]], items: Sequence[Item]) -> None:
    """Renumber the bases of the sets so far so that the last ones can best be spared.

    Every set that has a base numbered so is renumbered alike: no neighbours change.
    """
    if not placed:
        return
    last = placed[-1]
    coming = Counter(map(_topic, items))
    for end in range(len(last) - 1, len(items) - 1, -1):
        met = coming + Counter(map(_topic, last[: end + 1]))
        spare = max(range(end + 1), key=lambda base: (met[_topic(last[base])], base))
        for each in placed:
            each[spare], each[end] = each[end], each[spare]


def _topic(item: Item) -> str:
    return folded(item.topic)


def _placed(items: list[Item], topics: Sequence[str]) -> list[Item]:
    """Return the items with as many as can be at bases whose topic was another."""
    own = [_topic(item) for item in items]
    open_to = {
        topic: [n for n in range(len(own)) if n >= len(topics) or _changes(topics[n], topic)]
        for topic in set(own)
    }
    base_of = _most_pairs([open_to[topic] for topic in own], len(items))
    free = iter(sorted(set(range(len(items))) - set(base_of.values())))
    at = {base_of[n] if n in base_of else next(free): item for n, item in enumerate(items)}
    return [at[base] for base in range(len(items))]


def _changes(before: str, after: str) -> bool:
    """Say whether a topic is another; to have none is not to have the same."""
    return before != after or not after


def _most_pairs(fits: Sequence[Sequence[int]], bases: int) -> dict[int, int]:
    """Return item -> base for as many items as can have a base that fits (Kuhn 1955).

    A free base is looked for before one that is held, so that moving up goes not deep.
    """
    holder: list[int | None] = [None] * bases
    in_vain: set[int] = set()

    def find(item: int, seen: set[int]) -> bool:
        free = next((base for base in fits[item] if holder[base] is None), None)
        if free is not None:
            holder[free] = item
            return True
        for base in fits[item]:
            if base in seen:
                continue
            seen.add(base)
            if find(_held(holder, base), seen):
                holder[base] = item
                return True
        return False

    for item, fitting in enumerate(fits):
        # where one item found none, no other that fits the same bases will
        if id(fitting) not in in_vain and not find(item, set()):
            in_vain.add(id(fitting))
    return {item: base for base, item in enumerate(holder) if item is not None}


def _held(holder: Sequence[int | None], base: int) -> int:
    item = holder[base]
    assert item is not None  # noqa: S101 (the caller has looked)
    return item


def repeats_at_bases(sets: Sequence[Sequence[Item]]) -> int:
    """Return how often a base has the same topic in two neighbouring sets."""
    return sum(
        not _changes(_topic(one), _topic(other))
        for earlier, later in pairwise(sets)
        for one, other in zip(earlier, later, strict=False)
    )
