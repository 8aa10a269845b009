"""Which card goes into which slot, so that cutting leaves piles that need no sorting.

Cut and stack: where a pile is L leaves deep, its slot holds the pile's cards one to a leaf, so
that after the cut they lie on one another in order. A pile holds cards of one team only, also
where the teams do not divide the page: then some slots stay empty. Teams share a stack of leaves
as long as that saves paper; otherwise they get a stack each.
"""

from collections import Counter
from collections.abc import Iterable, Sequence
from functools import cache
from itertools import product
from operator import itemgetter, sub
from typing import TypeAlias

from msgspec import Struct
from msgspec.structs import replace

Cost: TypeAlias = tuple[int, int]
"""Leaves, then stacks: paper first, then the cuts."""


class Pile(Struct, frozen=True):
    """One slot through all leaves of a stack: card numbers `first` to `end - 1` of a team."""

    team: int
    first: int
    end: int


class Stack(Struct, frozen=True):
    """Leaves that are cut together; pile n lies in slot n, slots beyond the piles stay empty."""

    leaves: int
    piles: tuple[Pile, ...]

    @property
    def teams(self) -> tuple[int, ...]:
        """The numbers of the teams that have piles here, in order."""
        return tuple(dict.fromkeys(pile.team for pile in self.piles))


def plan(
    hands: Sequence[int], slots: int, *, apart: bool = False, spare: int = 0
) -> tuple[Stack, ...]:
    """Return the stacks for teams with these numbers of cards, on pages of `slots` slots.

    Of all ways to put teams together in stacks, the one with the fewest leaves; of those, one with
    the fewest stacks; of those, one that keeps neighbours together where there is one. `apart`
    gives every team a stack of its own, for paper of its own. Teams without cards have no pile.
    `spare` is how many slots more every team has at least, at the end of its piles; a pile may
    hold nothing else.
    """
    room = [count + spare if count else 0 for count in hands]
    return tuple(_without_spare(stack, hands) for stack in _planned(room, slots, apart=apart))


def _without_spare(stack: Stack, hands: Sequence[int]) -> Stack:
    """Return a stack with the slots that were kept free behind the last card."""
    piles = [replace(pile, end=min(pile.end, hands[pile.team])) for pile in stack.piles]
    return Stack(stack.leaves, tuple(piles))


def _planned(hands: Sequence[int], slots: int, *, apart: bool) -> tuple[Stack, ...]:
    teams = [team for team, count in enumerate(hands) if count]
    if apart:
        groups = [[team] for team in teams]
    else:
        ways = [_neighbours(teams, hands, slots), _any_teams(teams, hands, slots)]
        groups = min(ways, key=lambda way: _cost(way, hands, slots))
    return tuple(_stack(group, hands, slots) for group in groups)


def _cost(groups: Sequence[Sequence[int]], hands: Sequence[int], slots: int) -> Cost:
    leaves = sum(_depth([hands[team] for team in group], slots) for group in groups)
    return leaves, len(groups)


def _neighbours(teams: Sequence[int], hands: Sequence[int], slots: int) -> list[list[int]]:
    """Return the best groups of teams that follow one another."""
    best: list[list[list[int]]] = [[]]
    for end in range(1, len(teams) + 1):
        ways = [[*best[n], list(teams[n:end])] for n in range(max(0, end - slots), end)]
        best.append(min(ways, key=lambda way: _cost(way, hands, slots)))
    return best[-1]


def _any_teams(teams: Sequence[int], hands: Sequence[int], slots: int) -> list[list[int]]:
    """Return the best groups of any teams; teams with as many cards are alike, which is few ways.

    `left` counts how many teams of each number of cards have no stack yet.
    """
    counts = sorted({hands[team] for team in teams}, reverse=True)

    @cache
    def best(left: tuple[int, ...]) -> tuple[Cost, tuple[tuple[int, ...], ...]]:
        if not any(left):
            return (0, 0), ()
        ways = []
        for taken in _groups(left, slots):
            (leaves, stacks), groups = best(tuple(map(sub, left, taken)))
            ways.append(((leaves + depth(taken), stacks + 1), (taken, *groups)))
        return min(ways, key=itemgetter(0))

    @cache
    def depth(taken: tuple[int, ...]) -> int:
        return _depth(_repeated(counts, taken), slots)

    held = Counter(hands[team] for team in teams)
    _, groups = best(tuple(held[count] for count in counts))
    waiting = {count: [team for team in teams if hands[team] == count] for count in counts}
    named = [
        sorted(waiting[count].pop(0) for count in _repeated(counts, taken)) for taken in groups
    ]
    return sorted(named)


def _groups(left: tuple[int, ...], slots: int) -> Iterable[tuple[int, ...]]:
    """Return what a stack can hold that holds a team with the most cards of those left."""
    first = next(n for n, number in enumerate(left) if number)
    for taken in product(*(range(min(number, slots) + 1) for number in left)):
        if taken[first] and sum(taken) <= slots:
            yield taken


def _repeated(counts: Sequence[int], taken: Sequence[int]) -> list[int]:
    return [count for count, times in zip(counts, taken, strict=True) for _ in range(times)]


def _depth(counts: Sequence[int], slots: int) -> int:
    """Return the fewest leaves on which teams with these numbers of cards have piles of their own.

    A team with c cards fills ceil(c / L) slots of a stack of L leaves.
    """
    leaves = -(-sum(counts) // slots)
    while sum(-(-count // leaves) for count in counts) > slots:
        leaves += 1
    return leaves


def _stack(teams: Sequence[int], hands: Sequence[int], slots: int) -> Stack:
    """Return the shallowest stack in which every one of the teams has piles of its own."""
    leaves = _depth([hands[team] for team in teams], slots)
    piles = [
        Pile(team, first, min(first + leaves, hands[team]))
        for team in teams
        for first in range(0, hands[team], leaves)
    ]
    return Stack(leaves, tuple(piles))
