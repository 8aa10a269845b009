"""One deal among all that are equally fair, drawn by the seed, team by team.

Every pick is a small program of its own: dealing all teams in one program finds the same
fairness, but takes minutes for thousands of cards, since its teams can be exchanged at will.
"""

import random
from collections.abc import Sequence

from decks.dealing.cells import Table
from decks.dealing.even import Range
from decks.dealing.flow import cheapest
from decks.dealing.nests import Nests, two_nests
from decks.dealing.program import Program
from decks.dealing.solving import solve

Counts = tuple[tuple[int, ...], ...]  # [team][cell], beside the pinned items

_WEIGHTS = 100_000


def draw(
    table: Table, ranges: Sequence[Range], rng: random.Random, *, tries: int = 4
) -> Counts | None:
    """Deal all free items so that every team stays within every range.

    A team may find no hand because of the hands drawn before it: then all is drawn anew, up to
    `tries` times. None means that there is no such deal, or that it was missed every time.
    """
    teams = len(table.pinned)
    nests = two_nests([span.group for span in ranges], len(table.cells))
    for _ in range(tries):
        hands = _draw_once(table, ranges, nests, rng)
        if len(hands) == teams:
            return tuple(hands[team] for team in range(teams))
        if not hands:
            return None
    return None


def _draw_once(
    table: Table, ranges: Sequence[Range], nests: Nests | None, rng: random.Random
) -> dict[int, tuple[int, ...]]:
    """Draw hands until every team has one, or one finds none."""
    teams = list(range(len(table.pinned)))
    rng.shuffle(teams)
    left = table.free
    hands: dict[int, tuple[int, ...]] = {}
    while teams:
        team = teams.pop()
        bounds = [_bounds(span, left, team, teams) for span in ranges]
        hand = _hand(left, bounds, nests, rng) if teams and any(left) else left
        if hand is None:
            break
        hands[team] = hand
        left = tuple(have - taken for have, taken in zip(left, hand, strict=True))
    return hands


Bounds = tuple[Range, int, int]


def _bounds(span: Range, left: Sequence[int], team: int, others: Sequence[int]) -> Bounds:
    """Return how many free cards of the range's group a team may take, leaving enough to others."""
    free = sum(left[cell] for cell in span.group)
    room = sum(span.most - span.pinned[other] for other in others)
    need = sum(max(0, span.least - span.pinned[other]) for other in others)
    return (
        span,
        max(span.least - span.pinned[team], free - room),
        min(span.most - span.pinned[team], free - need),
    )


def _hand(
    left: Sequence[int], bounds: Sequence[Bounds], nests: Nests | None, rng: random.Random
) -> tuple[int, ...] | None:
    """Choose one hand, as counts per cell.

    With a weight drawn for every cell the cheapest hand is almost surely the only cheapest one
    (isolation lemma: Mulmuley, Vazirani and Vazirani 1987), so that the solver comes to it on any
    machine, whatever its path, and so does a flow, which needs no solver to be loaded.
    """
    weights = [rng.randrange(_WEIGHTS) for _ in left]
    if nests is not None:
        return cheapest(nests, [(lower, upper) for _span, lower, upper in bounds], left, weights)
    program = Program()
    for have, weight in zip(left, weights, strict=True):
        program.column(0, have, cost=weight)
    for span, lower, upper in bounds:
        program.row(lower, upper, [(cell, 1) for cell in span.group if left[cell]])
    return solve(program).values
