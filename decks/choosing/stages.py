"""Goal after goal: each missed by as little as can be, given those before it."""

import random
from collections.abc import Sequence
from fractions import Fraction

from msgspec import Struct
from msgspec.structs import replace

from decks.choosing.model import Model
from decks.choosing.stock import Range, Stock, within_one

Counts = tuple[int, ...]  # [group]

_WEIGHTS = 100_000
_UNLIKED = 1_000_000


class Wishes(Struct, frozen=True):
    """What is wanted: how many cards, of each level, of each topic, and a sum of steps.

    If they are wished for, there go before levels and topics: how many were `seen` before, that the
    sum of steps lies within `near` of the target, and as many as can be of the `liked`.
    """

    count: int
    levels: tuple[Range, ...]
    topics: tuple[Range, ...]
    target: int
    seen: tuple[Range, ...] = ()
    near: int | None = None
    liked: tuple[Range, ...] = ()


class Best(Struct, frozen=True):
    """Counts by group, and what no choice goes below: cards off, and steps off the target.

    `excess_bound` is of the steps beyond what is near the target, `gap_bound` of all of them.
    """

    counts: Counts
    seen_bound: int = 0
    excess_bound: int = 0
    liked_bound: int = 0
    level_bound: int = 0
    topic_bound: int = 0
    gap_bound: int = 0


def best(stock: Stock, wishes: Wishes, rng: random.Random) -> Best:
    """Find the choice that misses the goals by least, in their order; the lot decides ties."""
    found = _all_met(stock, wishes) or _goal_by_goal(stock, wishes)
    return replace(found, counts=_drawn(stock, wishes, found.counts, rng))


def off(ranges: Sequence[Range], counts: Sequence[int]) -> int:
    """Return how many cards lie outside the ranges."""
    return sum(span.off(counts) for span in ranges)


def steps_off(stock: Stock, counts: Sequence[int], target: int) -> int:
    """Return how far the sum of steps lies from the target."""
    steps = sum(kind.steps * n for kind, n in zip(stock.groups, counts, strict=True))
    return abs(steps - target)


def excess(stock: Stock, counts: Sequence[int], wishes: Wishes) -> int:
    """Return how far the sum of steps lies outside what is near the target."""
    if wishes.near is None:
        return 0
    return max(0, steps_off(stock, counts, wishes.target) - wishes.near)


def _all_met(stock: Stock, wishes: Wishes) -> Best | None:
    """Most contents allow every level and topic: tried first, it saves the other goals."""
    model = Model(stock, wishes.count)
    for ranges in (wishes.seen, wishes.liked, wishes.levels, wishes.topics):
        model.keep(ranges)
    if wishes.near is not None:
        model.keep_gap(wishes.target, wishes.near)
    model.minimise_gap(wishes.target)
    counts, outcome = model.solve()
    return None if counts is None else Best(counts, gap_bound=outcome.least)


def _goal_by_goal(stock: Stock, wishes: Wishes) -> Best:
    counts = _to_begin_with(stock, wishes.count)
    free = replace(wishes, seen=(), near=None, liked=(), levels=(), topics=())
    counts, seen = _fewest_strays(stock, free, wishes.seen, counts)
    free = replace(free, seen=wishes.seen)
    counts, beyond = _least_excess(stock, free, wishes.near, counts)
    free = replace(free, near=wishes.near)
    counts, lacking = _fewest_strays(stock, free, wishes.liked, counts)
    free = replace(free, liked=wishes.liked)
    counts, level = _fewest_strays(stock, free, wishes.levels, counts)
    free = replace(free, levels=wishes.levels)
    counts, topic = _fewest_strays(stock, free, wishes.topics, counts)
    model = _kept(stock, wishes, counts)
    model.minimise_gap(wishes.target)
    counts, gap = _better(model, counts)
    return Best(counts, seen, beyond, lacking, level, topic, gap)


def _fewest_strays(
    stock: Stock, kept: Wishes, ranges: Sequence[Range], counts: Counts
) -> tuple[Counts, int]:
    if not ranges:
        return counts, 0
    model = _kept(stock, kept, counts)
    model.minimise_strays(ranges)
    return _better(model, counts)


def _least_excess(
    stock: Stock, kept: Wishes, near: int | None, counts: Counts
) -> tuple[Counts, int]:
    if near is None:
        return counts, 0
    model = _kept(stock, kept, counts)
    model.minimise_excess(kept.target, near)
    return _better(model, counts)


def _kept(stock: Stock, wishes: Wishes, counts: Counts) -> Model:
    """Return a model in which no wish is missed by more than the counts miss it."""
    model = Model(stock, wishes.count)
    for ranges in (wishes.seen, wishes.liked, wishes.levels, wishes.topics):
        model.keep(ranges, off(ranges, counts))
    if wishes.near is not None:
        model.keep_gap(wishes.target, wishes.near + excess(stock, counts, wishes))
    return model


def _better(model: Model, known: Counts) -> tuple[Counts, int]:
    counts, outcome = model.solve()
    return known if counts is None else counts, outcome.least


def _drawn(stock: Stock, wishes: Wishes, counts: Counts, rng: random.Random) -> Counts:
    """Draw one of the choices that are equally good.

    With a weight drawn for every group the cheapest choice is almost surely the only cheapest one
    (isolation lemma: Mulmuley, Vazirani and Vazirani 1987), so that the solver comes to it on any
    machine. Liked, but not promised: within a level the topics keep the content's proportions.
    """
    model = _kept(stock, wishes, counts)
    model.keep_gap(wishes.target, steps_off(stock, counts, wishes.target))
    model.minimise_strays(_liked(stock, wishes.levels), _UNLIKED)
    model.weigh([rng.randrange(_WEIGHTS) for _ in stock.groups])
    drawn, _ = model.solve()
    return counts if drawn is None else drawn


def _liked(stock: Stock, levels: Sequence[Range]) -> list[Range]:
    liked = []
    for level in levels:
        topics = sorted({stock.groups[group].topic for group in level.members})
        for topic in topics:
            members = tuple(g for g in level.members if stock.groups[g].topic == topic)
            have = sum(stock.have[g] for g in members)
            part = Fraction(have, level.held(stock.have))
            liked.append(within_one(topic, members, level.wanted * part))
    return liked


def _to_begin_with(stock: Stock, count: int) -> Counts:
    """Return the items that must be in, filled up with whatever comes first."""
    counts = list(stock.must)
    left = count - sum(counts)
    for group, have in enumerate(stock.have):
        more = min(left, have - counts[group])
        counts[group] += more
        left -= more
    return tuple(counts)
