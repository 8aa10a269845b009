"""A lesson at bases for the teacher: what lies where, and how the room is set up and run."""

from collections.abc import Sequence
from statistics import fmean

from cards.item import Item, Level
from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.lesson import Bases
from decks.lesson.crowd import crowd
from decks.press.also import also_told
from decks.press.cards.arranging import as_printed, styled_of
from decks.press.teacher.base_words import how_hard, most_get, steps
from decks.press.teacher.how.counts import span
from decks.press.teacher.how.sets import bases_laid
from decks.press.teacher.keys import FIGURE, title_block
from decks.press.teacher.table import Column, cell, table
from decks.press.type.setting import (
    BODY,
    HEADING,
    NOTE,
    STRONG,
    Style,
    continued,
    panel,
    paragraph,
    side_by_side,
    swatch,
    under_one_another,
)
from decks.words import counted

INDENT = 24.0
FIGURES = Style(11)
FEWER_OR_MORE = (-8, -4, 0, 4, 8)

WHERE = (
    "Along the walls, on tables, sills or pinned up, where a question can be read standing and "
    "sitting, and reached on wheels. Two arm’s lengths apart. Never in a doorway, on a way out, on "
    "the floor, or where somebody would step back into furniture. The school’s rules come first."
)


def set_list(deck: Deck, bases: Bases, width: float) -> list[Block]:
    """Return every set, base by base, with its answers and how hard it is."""
    by_set, sets = (", set by set", "sets") if len(bases.sets) > 1 else ("", "set")
    subtitle = f"What lies at which base{by_set}; {_numbered(deck, bases)}"
    blocks = [title_block(f"Answer key: the {sets}", subtitle, width)]
    for number, items in enumerate(bases.sets):
        blocks.append(_set_head(deck, bases, number, width))
        named = continued(deck.owners[number].name, number, width)
        blocks += _set(items, named, deck, width)
    return blocks


def _numbered(deck: Deck, bases: Bases) -> str:
    """Say what the numbers on the cards are: those that wait have no base of their own."""
    if (laid := bases_laid(deck, bases)) < len(bases.sets[0]):
        return f"cards {span(1, laid)} have the number of their base, the others wait"
    return "the number on a card is that of its base"


def _set_head(deck: Deck, bases: Bases, number: int, width: float) -> Block:
    items = bases.sets[number]
    about = " ".join(
        [
            f"{counted(len(items), 'card')}: {how_hard(items)}. {most_get(_expected(deck, items))}",
            _what_follows(deck, number),
        ]
    )
    words = under_one_another(
        [
            paragraph(deck.owners[number].name, width - 18, HEADING),
            paragraph(about, width - 18, NOTE),
        ],
        gap=2,
    )
    ribbon = swatch(number, height=words.height)
    return Block(side_by_side([(0, ribbon), (18, words)], width), space=20, with_next=True)


def _what_follows(deck: Deck, number: int) -> str:
    """Return what takes the place of a set, or nothing where there is one set alone."""
    if len(deck.owners) == 1:
        return ""
    following = deck.owners[number + 1 : number + 2]
    return f"{following[0].name} takes its place." if following else "It is the last."


def _expected(deck: Deck, items: Sequence[Item]) -> float:
    return fmean(map(deck.expected, items))


def _set(items: Sequence[Item], named: Frame, deck: Deck, width: float) -> list[Block]:
    columns = [
        Column("Card", 42),
        Column("Question", 0.5 * width - 42),
        Column("Answer", 0.31 * width),
        Column("Topic and level", 0.19 * width),
    ]
    fractions = deck.recipe.fractions
    rows = [
        [
            cell(columns[0], (str(number), FIGURE)),
            cell(columns[1], (styled_of(item, back=False, fractions=fractions), BODY)),
            cell(
                columns[2],
                (as_printed(item, deck.recipe, back=True), STRONG),
                (also_told(item), NOTE),
            ),
            cell(columns[3], (item.topic or "no topic", NOTE), (_level(item.level), NOTE)),
        ]
        for number, item in enumerate(items, start=1)
    ]
    return table(columns, rows, named=named)


def _level(level: Level) -> str:
    return level.name.lower()


def base_plan(deck: Deck, bases: Bases, width: float) -> list[Block]:
    """Return the page that says how many bases there are, where they stand, and how they change."""
    recipe = deck.recipe
    subtitle = (
        f"{counted(recipe.students, 'student')} · {counted(len(bases.sets), 'set')} of cards · "
        f"{counted(recipe.minutes, 'minute')}"
    )
    blocks = [title_block("Base plan", subtitle, width)]
    below = [[_where(width)], _numbers(deck, bases, width)]
    for number, (title, text) in enumerate(steps(deck, bases), start=1):
        more = below[number - 1] if number <= len(below) else []
        blocks.append(Block(_step(number, title, text, width), space=14, with_next=bool(more)))
        blocks += more
    return blocks


def _where(width: float) -> Block:
    return Block(panel("Where bases may stand", WHERE, width), space=9)


def _step(number: int, title: str, text: str, width: float) -> Frame:
    room = width - INDENT
    words = under_one_another([paragraph(title, room, STRONG), paragraph(text, room)], gap=1)
    return side_by_side([(0, paragraph(str(number), INDENT, FIGURE)), (INDENT, words)], width)


def _numbers(deck: Deck, bases: Bases, width: float) -> list[Block]:
    """Return the table of how many bases for how many students."""
    cards = len(bases.sets[0])
    own = deck.recipe.students
    columns = [
        Column("Students", 0.28 * width),
        Column("Catchers", 0.2 * width),
        Column("Bases to start with", 0.28 * width),
        Column("Take away down to", 0.24 * width),
    ]
    rows = []
    for students in (own + more for more in FEWER_OR_MORE if own + more > 2):  # noqa: PLR2004
        told = crowd(students, cards)
        style = STRONG if students == own else FIGURES
        figures = (told.catchers, told.first, told.last)
        first = f"{students}, your class" if students == own else str(students)
        rows.append(
            [cell(c, (str(t), style)) for c, t in zip(columns, (first, *figures), strict=True)]
        )
    note = "Our own judgement, not a rule: what you see in the room goes before it."
    return table(columns, rows, space=6, notes=[note])
