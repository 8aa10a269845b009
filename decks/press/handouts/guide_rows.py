"""A clue of a study guide, with its hint, its picture, and lines to write on."""

from msgspec import Struct

from cards.item import Item
from decks.bank import GuidePart, hint_of
from decks.layout.frame import Frame, Image, Line, Placed
from decks.press.cards.arranging import SHARP, as_printed, fitted
from decks.press.handouts.guide_lines import BESIDE, Ruling, lines_that_fit, rulings
from decks.press.handouts.guide_type import GuideType
from decks.press.type.setting import gap, line_of, paragraph, under_one_another, width_of
from decks.recipe import Recipe

LONG_CLUE = 6
"""A clue of more lines than this has its own lines below it."""

AIR = 9.0


class _Asked(Struct, frozen=True):
    """A blank as it is asked: its number, its item, its lines to write on, and its hint if any."""

    number: str
    item: Item
    ruling: Ruling
    hint: str


class RowLook(Struct, frozen=True):
    """What all rows of a guide have in common."""

    sizes: GuideType
    width: float
    recipe: Recipe
    hints: bool


def guide_rows(part: GuidePart, look: RowLook) -> list[Frame]:
    """Return a part's clues, numbered from 1, each with its lines to write on."""
    ruled = rulings(part, look.sizes, look.width)
    hints = [""] * len(part.blanks)
    if look.hints:
        for place in part.worded_places:
            hints[place] = hint_of(part.blanks[place].answer)
    return [
        _row(_Asked(str(number), item, ruling, hint), look)
        for number, (item, ruling, hint) in enumerate(
            zip(part.blanks, ruled, hints, strict=True), start=1
        )
    ]


def _row(asked: _Asked, look: RowLook) -> Frame:
    """Return a clue with its lines to write on: beside it, or below where one of them is long."""
    sizes, number, item = look.sizes, asked.number, asked.item
    line_x, lines = BESIDE * look.width, asked.ruling.beside
    words = _clue(item, line_x - sizes.indent - 14, look)
    beside = sizes.beside and lines > 0 and len(words.things) <= LONG_CLUE
    if not beside:
        line_x = sizes.indent
        words = _clue(item, look.width - sizes.indent, look)
    words = _with_help(words, asked, line_x - 14 if beside else look.width, look)
    if not beside:
        lines = lines_that_fit(asked.ruling.below, words.height, sizes)
    writing = sizes.row + (lines - 1) * sizes.next_line
    below = words.height + writing + AIR * sizes.words.size / 12
    height = max(writing, words.height + AIR) if beside else below
    baseline = height - sizes.words.size * 0.8
    first = baseline - 5 if beside else height - words.height - sizes.row
    place = sizes.indent - AIR - width_of(number, sizes.number)
    ruling = [
        Line(line_x, first - n * sizes.next_line, look.width, first - n * sizes.next_line, 0.7)
        for n in range(lines)
    ]
    return Frame(
        look.width,
        height,
        (
            line_of(number, sizes.number, x=place, y=baseline),
            Placed(sizes.indent, height - words.height, words),
            *ruling,
        ),
    )


def _clue(item: Item, room: float, look: RowLook) -> Frame:
    return paragraph(as_printed(item, look.recipe, back=False), room, look.sizes.words)


def _with_help(words: Frame, asked: _Asked, end: float, look: RowLook) -> Frame:
    """Return a clue with its hint and picture below it; `end` is how far they may reach."""
    frames = [words]
    if asked.hint:
        room = end - look.sizes.indent
        frames += [gap(3), paragraph(asked.hint, room, look.sizes.label), gap(2)]
    if asked.item.image is not None:
        frames += [gap(6), _picture(asked.item, look), gap(5)]
    return under_one_another(frames)


def _picture(item: Item, look: RowLook) -> Frame:
    """Return a clue's picture, small: it is large on the card."""
    assert item.image is not None  # noqa: S101 (the caller has looked)
    width, height = look.sizes.picture
    wide, high = fitted(item.image, width=width, height=height, coarsest=SHARP)
    return Frame(wide, high, (Image(0, 0, wide, high, item.image),))
