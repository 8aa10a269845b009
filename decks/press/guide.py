"""The study guide: a word bank, clues, and lines to write on."""

from cards.item import Item
from decks.bank import Guide, GuidePart, directions
from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.flow import Block
from decks.layout.frame import Frame, Image, Line, Placed, Thing
from decks.layout.units import mm
from decks.press.arranging import SHARP, fitted
from decks.press.faces import styled_of
from decks.press.fonts import measure
from decks.press.pages import column, page_paper, pages
from decks.press.type import (
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
from decks.press.word_bank import Entries, entries_of, framed_bank, listed_bank
from decks.recipe import Fractions

CLUE = Style(12)
NUMBER = Style(12, strong=True, tone="quiet")
CLUE_X = 26
ROW = mm(12.5)
NEXT_LINE = mm(9)
LETTERS_A_LINE = 26
MOST_LINES = 2
LONG_CLUE = 6
PICTURE_WIDTH, PICTURE_HEIGHT = mm(55), mm(24)
TALL = mm(90)
"""A bank taller than this is not set again on the pages that its part goes on to."""


def guide_pages(deck: Deck) -> list[Frame]:
    """Return every guide's pages, guide after guide, each numbered by itself."""
    paper = page_paper(deck.recipe.paper)
    width = column(paper)
    entries = entries_of(deck.pool, deck.recipe.fractions)
    fractions = deck.recipe.fractions
    made = []
    for guide in deck.guides:
        parts = [
            block
            for n in range(len(guide.parts))
            for block in _part(guide, n, entries, fractions, width)
        ]
        foot = deck.name if guide.team is None else f"{deck.name} · {guide.team}"
        made += pages(parts, paper, foot=foot, header=_header(deck, guide, width))
    return made


def _part(
    guide: Guide, n: int, entries: Entries, fractions: Fractions, width: float
) -> list[Block]:
    """Return a part's blocks; they stay on one page as long as they are not taller than it."""
    part = guide.parts[n]
    lines = _lines_to_write(part)
    last = len(part.blanks)
    bank = framed_bank(part, entries, width)
    tall = bank.height > TALL
    rows = [
        Block(
            _row(number, item, lines, width, fractions),
            head=None if tall else bank,
            with_next=number < last and not tall,
        )
        for number, item in enumerate(part.blanks, start=1)
    ]
    start = [Block(paragraph(directions(part), width), space=4, with_next=True)]
    if tall:
        start += listed_bank(part, entries, width)
    else:
        start.append(Block(bank, space=12, with_next=True))
    if len(guide.parts) > 1:
        start.insert(0, Block(paragraph(f"Part {n + 1}", width, HEADING), space=6, with_next=True))
    return [*start, *rows]


def _header(deck: Deck, guide: Guide, width: float) -> Frame:
    blanks = _name_and_date()
    indent = 0 if guide.team is None else 22
    room = width - indent - blanks.width - 16
    words = under_one_another(
        [
            paragraph(_title(deck, room), room, TITLE),
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


def _title(deck: Deck, room: float) -> str:
    return shorten(deck.recipe.title, 2 * room / TITLE.size - 4, measure=measure, strong=True)


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


def _lines_to_write(part: GuidePart) -> int:
    """Return how many lines every answer gets: as many as the longest needs, told by none."""
    longest = max(len(item.answer) for item in part.blanks)
    return min(MOST_LINES, -(-longest // LETTERS_A_LINE))


def _with_picture(words: Frame, item: Item) -> Frame:
    """Return a clue with its picture below it, small: it is large on the card."""
    if item.image is None:
        return words
    wide, high = fitted(item.image, width=PICTURE_WIDTH, height=PICTURE_HEIGHT, coarsest=SHARP)
    picture = Frame(wide, high, (Image(0, 0, wide, high, item.image),))
    return under_one_another([words, gap(6), picture, gap(5)])


def _row(number: int, item: Item, lines: int, width: float, fractions: Fractions) -> Frame:
    """Return a clue with its lines to write on: beside it, or below where the clue is long."""
    clue = styled_of(item, back=False, fractions=fractions)
    line_x = 0.65 * width
    words = paragraph(clue, line_x - CLUE_X - 14, CLUE)
    beside = len(words.things) <= LONG_CLUE
    if not beside:
        words = paragraph(clue, width - CLUE_X, CLUE)
    words = _with_picture(words, item)
    writing = ROW + (lines - 1) * NEXT_LINE
    height = max(writing, words.height + 9) if beside else words.height + writing
    baseline = height - CLUE.size * 0.8
    first_line = baseline - 5 if beside else height - words.height - ROW + 14
    return Frame(
        width,
        height,
        (
            line_of(str(number), NUMBER, x=CLUE_X - 9 - width_of(str(number), NUMBER), y=baseline),
            Placed(CLUE_X, height - words.height, words),
            *(
                Line(line_x, first_line - n * NEXT_LINE, width, first_line - n * NEXT_LINE, 0.7)
                for n in range(lines)
            ),
        ),
    )
