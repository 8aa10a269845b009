"""The fewest items that would have to be added for the wishes to be met."""

import random
from collections.abc import Sequence

from msgspec.structs import replace

from cards.item import Level
from decks.choosing.model import Model
from decks.choosing.stages import Wishes
from decks.choosing.stock import STEPS, Group, Range, Stock, level_ranges, topic_ranges

Added = list[tuple[Group, int]]

_WEIGHTS = 1_000
_STRAY = 10_000
_ADDED = 1_000_000


def fewest_new(stock: Stock, wishes: Wishes) -> Added:
    """Return the fewest new items that let a next deck be as much new, and as hard, as is wanted.

    Levels and topics are as near to what is wanted as that allows. An item that is added is
    expected to be answered as its level is before there are marks.
    """
    topics = sorted({group.topic for group in stock.groups})
    extra = tuple(
        Group(int(level), topic, round(level.expected_share * STEPS))
        for level in Level
        for topic in topics
    )
    model = Model(_with(stock, extra, (wishes.count,) * len(extra)), wishes.count)
    model.keep(wishes.seen)
    if wishes.near is not None:
        model.keep_gap(wishes.target, wishes.near)
    first = len(stock.groups)
    levels = [_wider(span, extra, first, [kind.level for kind in extra]) for span in wishes.levels]
    topics_wanted = [
        _wider(span, extra, first, [kind.topic for kind in extra]) for span in wishes.topics
    ]
    model.minimise_strays([*levels, *topics_wanted], _STRAY)
    rng = random.Random("advice")
    model.weigh([0] * first + [_ADDED + rng.randrange(_WEIGHTS) for _ in extra])
    counts, _ = model.solve()
    if counts is None:
        return []
    return [(group, n) for group, n in zip(extra, counts[first:], strict=True) if n]


def fewest_added(
    stock: Stock, wishes: Wishes, mix: Sequence[int] | None, *, topics_too: bool
) -> Added:
    """Return the fewest items whose adding lets the levels be met, and the topics too if asked.

    They are put where the topics lack them. Every level of every topic is on offer beside the
    content, at a cost that outweighs all else. Added items widen the content and so change its
    proportions: what does not hold up to that is not returned.
    """
    topics = sorted({group.topic for group in stock.groups})
    extra = tuple(Group(int(level), topic, 0) for level in Level for topic in topics)
    model = _model(stock, extra, wishes, topics_too=topics_too)
    counts, _ = model.solve()
    if counts is None:
        return []
    added = counts[len(stock.groups) :]
    if not _would_do(_with(stock, extra, added), wishes.count, mix, topics_too=topics_too):
        return []
    return [(group, number) for group, number in zip(extra, added, strict=True) if number]


def _model(stock: Stock, extra: tuple[Group, ...], wishes: Wishes, *, topics_too: bool) -> Model:
    wide = _with(stock, extra, (wishes.count,) * len(extra))
    first = len(stock.groups)
    topics = [_wider(span, extra, first, [kind.topic for kind in extra]) for span in wishes.topics]
    model = Model(wide, wishes.count)
    model.keep([_wider(s, extra, first, [kind.level for kind in extra]) for s in wishes.levels])
    if topics_too:
        model.keep(topics)
    else:
        model.minimise_strays(topics, _STRAY)
    # weights that do not depend on the deck's seed, so that the advice stays the same
    rng = random.Random("advice")
    model.weigh([0] * first + [_ADDED + rng.randrange(_WEIGHTS) for _ in extra])
    return model


def _with(stock: Stock, extra: tuple[Group, ...], added: tuple[int, ...]) -> Stock:
    return Stock(stock.groups + extra, stock.have + added, stock.must + (0,) * len(extra))


def _wider(span: Range, extra: Sequence[Group], first: int, values: Sequence[object]) -> Range:
    more = tuple(first + n for n in range(len(extra)) if values[n] == span.value)
    return replace(span, members=span.members + more)


def _would_do(stock: Stock, count: int, mix: Sequence[int] | None, *, topics_too: bool) -> bool:
    model = Model(stock, count)
    model.keep(level_ranges(stock, count, mix))
    if topics_too:
        model.keep(topic_ranges(stock, count))
    return model.solve()[0] is not None
