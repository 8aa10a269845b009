"""Which card goes into which slot, so that cutting leaves piles that need no sorting.

Cut and stack: where a pile is L leaves deep, its slot holds the pile's cards one to a leaf, so
that after the cut they lie on one another in order. A pile holds cards of one team only. Teams
share a stack of leaves as long as that saves paper; otherwise they get a stack each.
"""

from collections.abc import Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Pile:
    """One slot through all leaves of a stack: card numbers `first` to `end - 1` of a team."""

    team: int
    first: int
    end: int


@dataclass(frozen=True, slots=True)
class Stack:
    """Leaves that are cut together; pile n lies in slot n, slots beyond the piles stay empty."""

    leaves: int
    piles: tuple[Pile, ...]


def plan(hands: Sequence[int], slots: int) -> tuple[Stack, ...]:
    """Return the stacks for teams with these numbers of cards, on pages of `slots` slots.

    Of all ways to put neighbouring teams together, the one with the fewest leaves; of those, the
    one with the fewest stacks. Teams without cards have no pile.
    """
    teams = [team for team, count in enumerate(hands) if count]
    best: list[tuple[int, int, tuple[Stack, ...]]] = [(0, 0, ())]
    for end in range(1, len(teams) + 1):
        ways = []
        for start in range(max(0, end - slots), end):
            leaves, stacks, before = best[start]
            stack = _stack(teams[start:end], hands, slots)
            ways.append((leaves + stack.leaves, stacks + 1, (*before, stack)))
        best.append(min(ways, key=lambda way: way[:2]))
    return best[-1][2]


def _stack(teams: Sequence[int], hands: Sequence[int], slots: int) -> Stack:
    """Return the shallowest stack in which every one of the teams has piles of its own."""
    leaves = -(-sum(hands[team] for team in teams) // slots)
    while sum(-(-hands[team] // leaves) for team in teams) > slots:
        leaves += 1
    piles = [
        Pile(team, first, min(first + leaves, hands[team]))
        for team in teams
        for first in range(0, hands[team], leaves)
    ]
    return Stack(leaves, tuple(piles))
