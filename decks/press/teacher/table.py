"""Tables without boxes: a grey head, hairlines between rows, the thing to say largest."""

from collections.abc import Sequence

from msgspec import Struct

from decks.layout.flow import Block, height_of, kept_at_the_ends
from decks.layout.frame import Frame
from decks.layout.runs import Styled
from decks.press.type.setting import (
    HEAD,
    NOTE,
    TEXT_ASCENT,
    Style,
    gap,
    paragraph,
    ruled,
    side_by_side,
    under_one_another,
)

ROW_AIR = 5.0
BETWEEN = 12.0
SMALL = 160.0
"""A table that is not higher, in points, is not parted: about a quarter of a page."""

FIRST = TEXT_ASCENT * 11
"""Where the first baseline of every cell lies, so that a row's first lines stand level."""


class Column(Struct, frozen=True):
    """A column of a table: its head, a text or a frame; its width and the gap in it, in points."""

    head: str | Frame
    width: float
    gap: float = BETWEEN

    @property
    def room(self) -> float:
        """The width for what stands in the column."""
        return self.width - self.gap


def table(
    columns: Sequence[Column],
    rows: Sequence[Sequence[Frame]],
    *,
    space: float = 8,
    named: Frame | None = None,
    notes: Sequence[str] = (),
) -> list[Block]:
    """Return a table as blocks, with its notes under it; no row and no note stands alone on a page.

    Its head is set again on every page that it goes on to, under `named`: whose table it is.
    """
    cells = [
        paragraph(column.head, column.room, HEAD) if isinstance(column.head, str) else column.head
        for column in columns
    ]
    head = _across(columns, cells, tone="frame")
    again = under_one_another([named, gap(8), head]) if named else head
    width = head.width
    blocks = [
        Block(head, space=space),
        *(Block(_across(columns, row, tone="hairline"), head=again) for row in rows),
        *(Block(paragraph(note, width, NOTE), space=5) for note in notes),
    ]
    small = height_of(blocks) <= SMALL
    first = len(blocks) if small else 3
    return kept_at_the_ends(blocks, first=first, last=2 + len(notes))


def cell(column: Column, *texts: tuple[str | Styled, Style]) -> Frame:
    """Return texts under one another, each in a style of its own; empty ones are left out."""
    frames = [
        paragraph(text, column.room, style, first=0 if n else FIRST)
        for n, (text, style) in enumerate(texts)
        if text or not n
    ]
    return under_one_another(frames, gap=1)


def _across(columns: Sequence[Column], cells: Sequence[Frame], *, tone: str) -> Frame:
    places = []
    x = 0.0
    for column, frame in zip(columns, cells, strict=True):
        places.append((x, frame))
        x += column.width
    return ruled(side_by_side(places, x, above=ROW_AIR, below=ROW_AIR), tone=tone)
