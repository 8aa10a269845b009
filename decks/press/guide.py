"""The study guide: a word bank, clues, and lines to write on."""

from collections.abc import Mapping, Sequence
from typing import TypeAlias

from cards.item import Item
from decks.bank import Guide, GuidePart, directions, one_line
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame, Line, Placed, Thing
from decks.layout.paper import PAPERS
from decks.layout.runs import Styled
from decks.layout.units import mm
from decks.press.faces import styled_of
from decks.press.pages import column, pages
from decks.press.type import (
    HEAD,
    HEADING,
    SUBTITLE,
    TITLE,
    Style,
    framed,
    gap,
    line_of,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
    width_of,
)

Words: TypeAlias = Mapping[str, Styled]
"""Every entry that a bank of the deck may have, with its bold, raised and lowered letters."""

CLUE = Style(12)
NUMBER = Style(12, strong=True, tone="quiet")
WORD = Style(12, strong=True)
CLUE_X = 26
BETWEEN = 12
ROW = mm(14)
NEXT_LINE = mm(9)
LETTERS_A_LINE = 26
MOST_LINES = 2
MOST_COLUMNS = 4


def guide_pages(deck: Deck) -> list[Frame]:
    """Return every guide's pages, guide after guide, each numbered by itself."""
    paper = PAPERS[deck.recipe.paper]
    width = column(paper)
    words = {one_line(c.item.answer): styled_of(c.item, back=True) for c in deck.cards}
    made = []
    for guide in deck.guides:
        parts = [block for n in range(len(guide.parts)) for block in _part(guide, n, words, width)]
        foot = deck.name if guide.team is None else f"{deck.name} · {guide.team}"
        made += pages(parts, paper, foot=foot, header=_header(deck, guide, width))
    return made


def _part(guide: Guide, n: int, words: Words, width: float) -> list[Block]:
    """Return a part's blocks; they stay on one page as long as they are not taller than it."""
    part = guide.parts[n]
    bank = _bank(part, words, width)
    lines = _lines_to_write(part)
    last = len(part.blanks)
    rows = [
        Block(_row(number, item, lines, width), head=bank, with_next=number < last)
        for number, item in enumerate(part.blanks, start=1)
    ]
    start = [
        Block(paragraph(directions(part), width), space=4, with_next=True),
        Block(bank, space=12, with_next=True),
    ]
    if len(guide.parts) > 1:
        start.insert(0, Block(paragraph(f"Part {n + 1}", width, HEADING), space=6, with_next=True))
    return [*start, *rows]


def _header(deck: Deck, guide: Guide, width: float) -> Frame:
    blanks = _name_and_date()
    indent = 0 if guide.team is None else 22
    room = width - indent - blanks.width - 16
    words = under_one_another(
        [
            paragraph(deck.recipe.title, room, TITLE),
            paragraph(f"Study guide · {guide.team or 'everyone'}", room, SUBTITLE),
        ],
        gap=3,
    )
    header = side_by_side([(indent, words), (width - blanks.width, blanks)], width)
    if guide.team is not None:
        team = [team.name for team in deck.recipe.teams].index(guide.team)
        ribbon = Placed(0, 0, swatch(team, width=12, height=header.height))
        header = framed(header, [ribbon])
    return under_one_another([header, gap(18)])


def _name_and_date() -> Frame:
    style = Style(11, tone="quiet")
    things: list[Thing] = []
    x = 0.0
    for word, line in (("Name", mm(40)), ("Date", mm(20))):
        things.append(line_of(word, style, x=x, y=4))
        x += width_of(word, style) + 4
        things.append(Line(x, 2, x + line, 2, 0.6))
        x += line + 8
    return Frame(x - 8, 20, tuple(things))


def _bank(part: GuidePart, words: Words, width: float) -> Frame:
    """Set the words in a thin frame, alphabetical down each column."""
    pad = 12.0
    inner = width - 2 * pad
    entries = [words[entry] for entry in part.bank]
    columns = min(
        (_in_columns(entries, count, inner) for count in _counts(part.bank, inner)),
        key=lambda frame: frame.height,
    )
    title = "Bank of answers" if "answer" in directions(part) else "Word bank"
    inside = under_one_another([paragraph(title, inner, HEAD), columns], gap=4)
    height = inside.height + 2 * pad - 4
    box = Box(0, 0, width, height, radius=7, stroke="frame")
    bank = Frame(width, height, (box, Placed(pad, pad - 2, inside)))
    return under_one_another([bank, gap(16)])


def _counts(bank: tuple[str, ...], width: float) -> range:
    """Return how many columns there may be: no single word is wider than a column."""
    widest = max(width_of(word, WORD) for entry in bank for word in entry.split())
    most = int(width // (widest + BETWEEN))
    return range(1, max(1, min(MOST_COLUMNS, most, len(bank))) + 1)


def _in_columns(bank: Sequence[Styled], count: int, width: float) -> Frame:
    each = width / count
    deep = -(-len(bank) // count)
    columns = [
        under_one_another(
            [paragraph(entry, each - BETWEEN, WORD) for entry in bank[start : start + deep]], gap=5
        )
        for start in range(0, len(bank), deep)
    ]
    return side_by_side([(n * each, column) for n, column in enumerate(columns)], width)


def _lines_to_write(part: GuidePart) -> int:
    """Return how many lines every answer gets: as many as the longest needs, told by none."""
    longest = max(len(item.answer) for item in part.blanks)
    return min(MOST_LINES, -(-longest // LETTERS_A_LINE))


def _row(number: int, item: Item, lines: int, width: float) -> Frame:
    line_x = 0.65 * width
    words = paragraph(styled_of(item, back=False), line_x - CLUE_X - 14, CLUE)
    height = max(ROW + (lines - 1) * NEXT_LINE, words.height + 14)
    baseline = height - CLUE.size * 0.8
    figure = str(number)
    things: list[Thing] = [
        line_of(figure, NUMBER, x=CLUE_X - 9 - width_of(figure, NUMBER), y=baseline),
        Placed(CLUE_X, height - words.height, words),
    ]
    for n in range(lines):
        y = baseline - 5 - n * NEXT_LINE
        things.append(Line(line_x, y, width, y, 0.7))
    return Frame(width, height, tuple(things))
