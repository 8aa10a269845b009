"""Choosing k of n items."""

import random
from collections.abc import Collection, Hashable, Sequence

from cards.item import Item, Level, folded
from decks.choosing.advice import about_cards, about_mix
from decks.choosing.choice import Choice, Count, Goal
from decks.choosing.stages import Best, Wishes, best, off, steps_off
from decks.choosing.stock import (
    STEPS,
    Group,
    Range,
    Share,
    Stock,
    group_of,
    level_ranges,
    most_for_mix,
    stock_of,
    target_of,
    topic_ranges,
)


def by_level(item: Item) -> float:
    """Return the expected share of an item that no marks are known of."""
    return item.level.expected_share


def choose(  # noqa: PLR0913  (what to choose from, and one argument for each goal)
    items: Sequence[Item],
    *,
    count: int,
    seed: str,
    mix: Sequence[int] | None = None,
    target: float | None = None,
    required: Collection[Item] = (),
    share: Share = by_level,
) -> Choice:
    """Choose `count` of the items, and say how near that comes to what is wanted.

    Items that are pinned to a team and those in `required` are always in, even where they are more
    than `count`. A count of `ALL` asks for every item, or with a mix for as many as meet it.

    The goals, each as near as can be given those before it: the number of cards; the shares of
    easy, medium and hard in `mix`, within one card, or those of the content without a mix; the
    topics in the content's proportions, within one card; the mean expected share next to `target`
    (0 to 1), or without one to what the mix comes to. `share` gives an item's expected share, 0 to
    1, which is rounded to half a percent. The seed alone decides among choices that are equally
    good. Raises ValueError for a negative count.
    """
    if count < 0:
        raise ValueError("A choice needs a number of cards that is not negative.")
    needed = set(required)
    must = [item.team is not None or item in needed for item in items]
    groups = [group_of(item, share) for item in items]
    stock = stock_of(groups, must)
    asked = count or (mix and most_for_mix(stock, mix)) or len(items)
    taken = min(max(asked, sum(must)), len(items))
    wishes = _wishes(stock, taken, mix, target)
    rng = random.Random(f"{seed}/choice")
    result = best(stock, wishes, rng)
    chosen = _pick(items, groups, must, dict(zip(stock.groups, result.counts, strict=True)), rng)
    goals = (_cards(asked, taken, len(items)), *_goals(items, stock, wishes, result))
    advice = (
        *about_cards(len(items), asked, taken),
        *(() if taken < asked else about_mix(items, stock, wishes, result.counts, mix)),
    )
    return Choice(chosen, goals, _mean(chosen, share), advice)


def _wishes(stock: Stock, count: int, mix: Sequence[int] | None, target: float | None) -> Wishes:
    levels = level_ranges(stock, count, mix)
    steps = target_of(stock, levels) if target is None else round(target * STEPS * count)
    return Wishes(count, levels, topic_ranges(stock, count), steps)


def _pick(
    items: Sequence[Item],
    groups: Sequence[Group],
    must: Sequence[bool],
    counts: dict[Group, int],
    rng: random.Random,
) -> tuple[Item, ...]:
    taken = {number for number, needed in enumerate(must) if needed}
    free: dict[Group, list[int]] = {group: [] for group in counts}
    for number, group in enumerate(groups):
        if must[number]:
            counts[group] -= 1
        else:
            free[group].append(number)
    for group, count in counts.items():
        taken |= set(rng.sample(free[group], count))
    return tuple(item for number, item in enumerate(items) if number in taken)


def _mean(items: Sequence[Item], share: Share) -> float:
    return sum(map(share, items)) / len(items) if items else 0.0


def _cards(asked: int, taken: int, offered: int) -> Goal:
    missed = abs(asked - taken)
    return Goal("cards", missed, missed, (Count("all", asked, taken, offered),))


def _goals(
    items: Sequence[Item], stock: Stock, wishes: Wishes, result: Best
) -> tuple[Goal, Goal, Goal]:
    counts = result.counts
    steps = STEPS * max(1, wishes.count)
    gap = steps_off(stock, counts, wishes.target)
    topics: dict[Hashable, str] = {}
    for item in items:
        topics.setdefault(folded(item.topic), item.topic)
    levels: dict[Hashable, str] = {int(level): level.name.lower() for level in Level}
    return (
        _goal("level", wishes.levels, levels, stock, result, result.level_bound),
        _goal("topic", wishes.topics, topics, stock, result, result.topic_bound),
        Goal("share", gap / steps, min(gap, result.gap_bound) / steps),
    )


def _goal(  # noqa: PLR0913, PLR0917  (one table)
    name: str,
    ranges: Sequence[Range],
    names: dict[Hashable, str],
    stock: Stock,
    result: Best,
    bound: int,
) -> Goal:
    by_value = {span.value: span for span in ranges}
    rows = tuple(
        Count(shown, float(span.wanted), span.held(result.counts), span.held(stock.have))
        for value, shown in names.items()
        if (span := by_value[value]).wanted or span.members
    )
    return Goal(name, off(ranges, result.counts), bound, rows)
