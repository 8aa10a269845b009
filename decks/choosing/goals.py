"""What a choice reaches of each goal, beside what no choice goes below."""

from collections.abc import Iterator, Mapping, Sequence

from cards.item import Item, Level, topics_of
from decks.choosing.choice import Count, Goal
from decks.choosing.stages import Best, Wishes, excess, off, steps_off
from decks.choosing.stock import STEPS, Range, Stock


def goals_of(
    items: Sequence[Item], stock: Stock, wishes: Wishes, result: Best, asked: int
) -> tuple[Goal, ...]:
    """Return the goals in order of weight; those that were not wished for are left out."""
    return tuple(_goals(items, stock, wishes, result, asked))


def _goals(
    items: Sequence[Item], stock: Stock, wishes: Wishes, result: Best, asked: int
) -> Iterator[Goal]:
    levels = {int(level): level.name.lower() for level in Level}
    steps = STEPS * max(1, wishes.count)
    gap = steps_off(stock, result.counts, wishes.target)
    yield _cards(asked, wishes.count, len(items))
    if wishes.seen:
        yield _goal("seen", wishes.seen, {"seen": "seen"}, stock, result, result.seen_bound)
    if wishes.near is not None:
        beyond = excess(stock, result.counts, wishes)
        yield Goal("target", beyond / steps, min(beyond, result.excess_bound) / steps)
    if wishes.liked:
        yield _goal("liked", wishes.liked, {"liked": "liked"}, stock, result, result.liked_bound)
    if wishes.levels:
        yield _goal("level", wishes.levels, levels, stock, result, result.level_bound)
    yield _goal("topic", wishes.topics, topics_of(items), stock, result, result.topic_bound)
    yield Goal("share", gap / steps, min(gap, result.gap_bound) / steps)


def _cards(asked: int, taken: int, offered: int) -> Goal:
    missed = abs(asked - taken)
    return Goal("cards", missed, missed, (Count("all", asked, taken, offered),))


def _goal(  # noqa: PLR0913, PLR0917 (one table)
    name: str,
    ranges: Sequence[Range],
    names: Mapping[str, str] | Mapping[int, str],
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
