"""The word bank on a study guide's page."""

from collections.abc import Mapping, Sequence
from typing import TypeAlias

from cards.entries import entry_of, one_line
from cards.item import Item
from decks.bank import GuidePart, noun_of
from decks.layout.flow import Block
from decks.layout.fractions import with_fractions
from decks.layout.frame import Box, Frame, Placed
from decks.layout.runs import Styled
from decks.press.handouts.guide_type import GuideType
from decks.press.type.setting import (
    Style,
    gap,
    paragraph,
    ruled,
    side_by_side,
    under_one_another,
    width_of,
)
from decks.recipe import Fractions

Entries: TypeAlias = Mapping[str, Styled]
"""Every entry that a bank of the deck may have, with its bold, raised and lowered letters."""

PAD = 12.0
BETWEEN = 12.0
MOST_COLUMNS = 4


def entries_of(items: Sequence[Item], fractions: Fractions) -> Entries:
    """Return the items' answers as a bank shows them."""
    return {entry_of(item): with_fractions(_entry(item), fractions) for item in items}


def _entry(item: Item) -> Styled:
    if item.answer == one_line(item.answer):
        return Styled(item.answer, spans=item.answer_spans)
    return Styled(entry_of(item))


def framed_bank(part: GuidePart, entries: Entries, width: float, sizes: GuideType) -> Frame:
    """Return the bank in a thin frame, alphabetical down each of its columns."""
    inner = width - 2 * PAD
    words = [entries[entry] for entry in part.bank]
    columns = min(
        (
            _in_columns(words, count, inner, sizes.strong)
            for count in _counts(part.bank, inner, sizes.strong)
        ),
        key=lambda frame: frame.height,
    )
    inside = under_one_another([paragraph(_title(part), inner, sizes.label), columns], gap=4)
    height = inside.height + 2 * PAD - 4
    box = Box(0, 0, width, height, radius=7, stroke="frame")
    bank = Frame(width, height, (box, Placed(PAD, PAD - 2, inside)))
    return under_one_another([bank, gap(14)])


def listed_bank(part: GuidePart, entries: Entries, width: float, sizes: GuideType) -> list[Block]:
    """Return a bank that is too tall for a frame as blocks, an entry each."""
    title = Block(paragraph(_title(part), width, sizes.label), space=10, with_next=True)
    rows = [
        Block(
            ruled(
                under_one_another([gap(4), paragraph(entries[word], width, sizes.strong), gap(5)])
            )
        )
        for word in part.bank
    ]
    return [title, *rows, Block(gap(14))]


def _title(part: GuidePart) -> str:
    return "Bank of answers" if noun_of(part) == "answer" else "Word bank"


def _counts(bank: tuple[str, ...], width: float, style: Style) -> range:
    """Return how many columns there may be: no single word is wider than a column."""
    widest = max(width_of(word, style) for entry in bank for word in entry.split())
    most = int(width // (widest + BETWEEN))
    return range(1, max(1, min(MOST_COLUMNS, most, len(bank))) + 1)


def _in_columns(words: Sequence[Styled], count: int, width: float, style: Style) -> Frame:
    each = width / count
    deep = -(-len(words) // count)
    frames = [paragraph(word, each - BETWEEN, style) for word in words]
    # entries of several lines stand apart, or it would not show where one ends
    between = 10 if any(len(frame.things) > 1 for frame in frames) else 5
    columns = [
        under_one_another(frames[start : start + deep], gap=between)
        for start in range(0, len(frames), deep)
    ]
    return side_by_side([(n * each, column) for n, column in enumerate(columns)], width)
