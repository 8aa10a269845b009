"""Lengths, levels and topics that are strangely uneven, or strangely even."""

from collections import defaultdict
from collections.abc import Iterator
from statistics import median

from msgspec.structs import replace

from cards.checking.names import ANSWER_NAMES
from cards.checking.rule import Remark
from cards.checking.where import topic_place
from cards.content import Content
from cards.item import Item, Kind, Level, folded
from cards.place import Place
from cards.quoting import quoted

_TIMES_LONGER = 8
_LONG = 40
_FEW_ANSWERS = 6
_FEW_LEVELS = 12
_FEW_TOPICS = 8
_MOST_LONELY = 3
_FEW_BELOW = 3


def uneven_length(content: Content) -> Iterator[Remark]:
    """Find answers far longer than those usual on their sheet."""
    sheets: dict[str, list[Item]] = defaultdict(list)
    for item in content.items:
        if item.answer:
            sheets[item.answer_place.sheet].append(item)
    for items in sheets.values():
        usual = median(len(item.answer) for item in items)
        limit = max(_LONG, usual * _TIMES_LONGER)
        for item in items:
            if len(items) >= _FEW_ANSWERS and len(item.answer) > limit:
                yield Remark(
                    item.answer_place,
                    item.answer,
                    f"This {ANSWER_NAMES[item.kind]} has {len(item.answer)} characters, and most "
                    f"on this sheet have about {usual:.0f}.",
                    "Shorten it, or make two rows of it.",
                )


def same_level(content: Content) -> Iterator[Remark]:
    """Find a Level column that says the same in every row, which then decides nothing."""
    written = [item for item in content.items if item.level_place]
    leveled = written or [item for item in content.items if item.level is not Level.MEDIUM]
    if len(leveled) < max(_FEW_LEVELS, len(content.items)) or len({i.level for i in leveled}) > 1:
        return
    first = leveled[0]
    yield Remark(
        first.level_place or Place(first.prompt_place.sheet),
        first.level.name.lower(),
        f"All {len(leveled)} rows have the same level, so it cannot help to deal fairly.",
        "Mark what is easier and what is harder, or leave the column out.",
    )


def topic_once(content: Content) -> Iterator[Remark]:
    """Find sheets whose topics seem to stand for the rows below them as well.

    The first row has one, at least half have none, and none comes twice. What a detail without
    a topic means is told by a rule of its own.
    """
    sheets: dict[str, list[Item]] = defaultdict(list)
    for item in content.items:
        if item.kind is not Kind.DETAIL:
            sheets[item.prompt_place.sheet].append(item)
    for first, *others in sheets.values():
        blank = [item for item in others if not item.topic]
        topics = [folded(item.topic) for item in (first, *others) if item.topic]
        apart = len(set(topics)) == len(topics) <= len(blank)
        if first.topic_place and apart and len(others) >= _FEW_BELOW:
            yield Remark(
                replace(first.topic_place, row=blank[0].prompt_place.row),
                "",
                f"Of {len(others) + 1} rows only {len(topics)} "
                f"{'has' if len(topics) == 1 else 'have'} a topic.",
                "If a topic stands for the rows below it as well, write it in each row: fill down.",
            )


def lonely_topic(content: Content) -> Iterator[Remark]:
    """Find topics with one item only, at most three of them."""
    topics: dict[str, list[Item]] = defaultdict(list)
    for item in content.items:
        if item.topic:
            topics[folded(item.topic)].append(item)
    lonely = [items[0] for items in topics.values() if len(items) == 1]
    if len(topics) < 2 or sum(map(len, topics.values())) < _FEW_TOPICS:  # noqa: PLR2004
        return
    for item in lonely[:_MOST_LONELY]:
        yield Remark(
            topic_place(item),
            item.topic,
            f"{quoted(item.topic)} is the topic of one row only.",
            "Give it more rows, or one of the other topics (or is it spelt differently there?).",
        )
