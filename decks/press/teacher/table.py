"""Tables without boxes: a grey head, hairlines between rows, the thing to say largest."""

from collections.abc import Sequence

from msgspec import Struct

from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.runs import Styled
from decks.press.type.setting import (
    HEAD,
    TEXT_ASCENT,
    Style,
    paragraph,
    ruled,
    side_by_side,
    under_one_another,
)

ROW_AIR = 5.0
BETWEEN = 12.0
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
    columns: Sequence[Column], rows: Sequence[Sequence[Frame]], *, space: float = 8
) -> list[Block]:
    """Return a table as blocks; its head is set again on every page that it goes on to."""
    cells = [
        paragraph(column.head, column.room, HEAD) if isinstance(column.head, str) else column.head
        for column in columns
    ]
    head = _across(columns, cells, tone="frame")
    first = Block(head, space=space, with_next=True)
    return [
        first,
        *(Block(_across(columns, row, tone="hairline"), head=head) for row in rows),
    ]


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
