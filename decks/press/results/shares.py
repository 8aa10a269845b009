"""Shares as pictures: items before and after a lesson, and topics as bars."""

from collections.abc import Sequence

from cards.entries import entry_of
from decks.layout.fitting import shorten
from decks.layout.flow import Block
from decks.layout.frame import Box, Curve, Frame, Line, Thing, Wedge
from decks.marks.forms import in_short
from decks.marks.results import ItemResult, TopicResult
from decks.marks.summary import GOOD, span
from decks.press.type.fonts import measure
from decks.press.type.setting import NOTE, Style, line_of, width_of
from decks.words import percent

LABEL, NAME, FIGURE = 34.0, 128.0, 62.0
"""From the left: the card's label, its answer; and at the right, the figures."""

LABELS = Style(9, strong=True, tone="quiet")
NAMES = Style(9.5)
ROW, TOPIC_ROW, HEAD = 12.6, 17.0, 17.0
TICKS = (0.0, 0.2, 0.4, 0.6, 0.8, 1.0)
RING, DOT = 2.3, 2.9
BAR = 8.0
ARC = 0.5522847498
"""How far the controls of a quarter of a circle lie from its ends, in radii."""

NEAR = 7.0
"""A ring and a dot that are nearer than this need no arrow between them."""


def item_rows(items: Sequence[ItemResult], width: float) -> list[Block]:
    """Return a row for each item that was tried, hardest first; the scale is set on every page."""
    tried = [one for one in items if one.tries]
    ordered = sorted(tried, key=lambda one: (one.after.mean, one.name))
    wide = LABEL if all(one.name.isdecimal() for one in items) else 2 * LABEL
    left = wide + NAME
    return _on_scale([_item(one, wide, left, width) for one in ordered], left, width)


def topic_rows(topics: Sequence[TopicResult], width: float) -> list[Block]:
    """Return a bar for each topic that was tried, weakest first; nothing for one topic alone."""
    tried = sorted(
        (one for one in topics if one.tries), key=lambda one: (one.share or 0, one.topic)
    )
    left = LABEL + NAME
    if len(topics) < 2:  # noqa: PLR2004 (one topic is the whole, which is told already)
        return []
    return _on_scale([_topic(one, left, width) for one in tried], left, width)


def _on_scale(rows: Sequence[Frame], left: float, width: float) -> list[Block]:
    if not rows:
        return []
    scale = _scale(left, width)
    last = len(rows) - 1
    first = Block(scale, space=6, with_next=True)
    return [first, *(Block(row, head=scale, with_next=n == last - 1) for n, row in enumerate(rows))]


def _scale(left: float, width: float) -> Frame:
    things: list[Thing] = []
    for share in TICKS:
        text, x = f"{100 * share:.0f} %", _x(share, left, width)
        things.append(line_of(text, NOTE, x=x - width_of(text, NOTE) / 2, y=6))
        things.append(Line(x, 0, x, 2.5, 0.6, "frame"))
    return Frame(width, HEAD, tuple(things))


def _x(share: float, left: float, width: float) -> float:
    """Return how far from the left of the row a share stands."""
    room = width - left - FIGURE
    return left + 8 + share * (room - 16)


def _ground(left: float, width: float, height: float) -> list[Thing]:
    """Return the upright lines that the scale stands on; that of good lessons is stronger."""
    return [
        Line(
            x, 0, x, height, 1.1 if share == GOOD else 0.4, "frame" if share == GOOD else "hairline"
        )
        for share in TICKS
        for x in [_x(share, left, width)]
    ]


def _item(one: ItemResult, wide: float, left: float, width: float) -> Frame:
    middle = ROW / 2
    before, after = _x(one.before.mean, left, width), _x(one.after.mean, left, width)
    answer = shorten(in_short(entry_of(one.item)), (NAME - 8) / NAMES.size, measure=measure)
    things: list[Thing] = [
        *_ground(left, width, ROW),
        line_of(one.name, LABELS, y=middle - 3.2),
        line_of(answer, NAMES, x=wide, y=middle - 3.3),
    ]
    if one.likely:
        low, high = (_x(share, left, width) for share in one.likely)
        things += _whisker(low, high, middle)
    things += [*_arrow(before, after, middle), _round(before, middle, RING, fill="white")]
    things.append(_round(after, middle, DOT, fill="ink"))
    figures = f"{percent(one.before.mean)} → {percent(one.after.mean)}"
    things.append(line_of(figures, NOTE, x=width - width_of(figures, NOTE), y=middle - 3.2))
    return Frame(width, ROW, tuple(things))


def _arrow(start: float, end: float, y: float) -> list[Thing]:
    """Return the way from the ring to the dot; a short one is only a line."""
    stroke = Line(start, y, end, y, 1.4, "quiet")
    if abs(end - start) < NEAR + RING + DOT:
        return [stroke]
    way = 1 if end > start else -1
    tip = end - way * (DOT + 0.6)
    back = tip - way * 4.2
    return [
        Line(start, y, back, y, 1.4, "quiet"),
        Wedge(((tip, y), (back, y + 2.4), (back, y - 2.4))),
    ]


def _whisker(low: float, high: float, y: float, *, tone: str = "quiet") -> list[Thing]:
    ends = [Line(x, y - 2, x, y + 2, 0.7, tone) for x in (low, high)]
    return [Line(low, y, high, y, 0.7, tone), *ends]


def _round(x: float, y: float, radius: float, *, fill: str) -> Curve:
    """Return a circle: four curves, each a quarter of it."""
    reach = ARC * radius
    right, top, left, foot = (x + radius, y), (x, y + radius), (x - radius, y), (x, y - radius)
    points = (
        right,
        *((x + radius, y + reach), (x + reach, y + radius), top),
        *((x - reach, y + radius), (x - radius, y + reach), left),
        *((x - radius, y - reach), (x - reach, y - radius), foot),
        *((x + reach, y - radius), (x + radius, y - reach), right),
    )
    return Curve(points, width=1, stroke="ink", fill=fill)


def _topic(one: TopicResult, left: float, width: float) -> Frame:
    middle = TOPIC_ROW / 2
    name = shorten(one.topic or "no topic", (left - 10) / NAMES.size, measure=measure)
    start, end = _x(0, left, width), _x(one.share or 0, left, width)
    things: list[Thing] = [
        *_ground(left, width, TOPIC_ROW),
        line_of(name, NAMES, y=middle - 3.3),
        Box(start, middle - BAR / 2, end - start, BAR, fill="frame"),
    ]
    if one.interval:
        low, high = (_x(share, left, width) for share in one.interval)
        # on the bar, only ink stands out
        things += _whisker(low, high, middle, tone="ink")
    figures = f"{percent(one.share)}  ({span(one.interval).removesuffix(' %')})"
    things.append(line_of(figures, NOTE, x=width - width_of(figures, NOTE), y=middle - 3.2))
    return Frame(width, TOPIC_ROW, tuple(things))
