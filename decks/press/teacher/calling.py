"""The call sheet: what the teacher says, accepts and lets the class do, in calling order."""

from collections.abc import Sequence

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame, Image
from decks.layout.units import mm
from decks.lesson import Call, Called
from decks.lesson.exercises import Exercise, ways
from decks.lesson.timing import about_time, calls_told
from decks.press.also import also_told
from decks.press.cards.arranging import SHARP, as_printed, fitted
from decks.press.teacher.how.counts import earned
from decks.press.teacher.keys import title_block
from decks.press.teacher.table import Column, table
from decks.press.type.setting import (
    BODY,
    NOTE,
    TEXT_ASCENT,
    Style,
    continued,
    headed_with,
    panel,
    paragraph,
    under_one_another,
)
from decks.recipe import Points, Recipe
from decks.words import counted

SAID = Style(13.5)
ACCEPTED = Style(12, strong=True)
MOVE = Style(11.5)
LABEL = Style(13.5, strong=True, tone="quiet")
FIRST = TEXT_ASCENT * SAID.size
"""Where the first baseline of every cell lies: that of the largest, so that all stand level."""

TICK = mm(4)
SHORT_COUNT = 18
"""A count of so many letters, such as `10 seconds each`, stays on one line."""

PICTURE_WIDTH, PICTURE_HEIGHT = mm(45), mm(20)

BEFORE = (
    "Floor clear, bags away, an arm’s length apart; everybody moves beside their own place, and "
    "the stop signal is known. Anyone may take the gentler or the seated way, no reason asked: it "
    "counts in full. No exercise is a penalty. Individual plans, medical notes, the school’s rules "
    "and its licensed staff come first."
)
"""Common practice; see the facts in the tests."""

SECONDS = "The seconds run from the first word to the answers counted."


def call_sheet(deck: Deck, called: Called, width: float) -> list[Block]:
    """Return the call sheet, round by round; the head of a round stands on each of its pages."""
    title = title_block("Call sheet", about_time(called, deck.recipe.minutes), width)
    blocks = [
        title,
        Block(paragraph(_how(deck), width, BODY), space=10, with_next=True),
        Block(paragraph(points_told(deck.points), width, BODY), space=6, with_next=True),
        Block(panel("Before the first call", BEFORE, width), space=12),
    ]
    for number, calls in enumerate(called.rounds):
        blocks += _round(deck, number, calls, width)
    return blocks


def _how(deck: Deck) -> str:
    write, show = "teams agree and write", "all show"
    if deck.is_one_team:
        write, show = "the team agrees and writes", "it shows"
    return f"Read the question out; {write}; all do the exercise; on your signal {show}. {SECONDS}"


def points_told(points: Points) -> str:
    """Say what a team earns for a question."""
    ways = [
        (points.right, "{} for a right answer"),
        (points.first, "{} for being right and first"),
        (points.together, "{} for moving together, each in their own way"),
    ]
    said = " · ".join(earned(ways))
    return f"{said}." if said else "No points are counted."


def _round(deck: Deck, number: int, calls: Sequence[Call], width: float) -> list[Block]:
    columns = _columns(width)
    rows = [[_label(call), *_cells(call, columns, deck.recipe)] for call in calls]
    name = deck.owners[number].name
    about = f"{counted(len(calls), 'question')}, {calls_told(calls)}"
    return [
        Block(headed_with(name, about, number, width), space=22, with_next=True),
        *table(columns, rows, named=continued(name, number, width)),
    ]


def _columns(width: float) -> list[Column]:
    room = width - 34
    return [
        Column("Card", 34),
        Column("Say", 0.44 * room, gap=16),
        Column("Accept", 0.24 * room),
        Column("Then all together", 0.32 * room, gap=0),
    ]


def _label(call: Call) -> Frame:
    """Return a card's label, and a box under it to tick when it has been called."""
    box = Frame(TICK, TICK, (Box(0, 0, TICK, TICK, radius=2, stroke="rule"),))
    return under_one_another([paragraph(call.label, 26, LABEL, first=FIRST), box], gap=2)


def _cells(call: Call, columns: Sequence[Column], recipe: Recipe) -> list[Frame]:
    item = call.item
    _card, say, accept, move = (column.room for column in columns)
    said = paragraph(as_printed(item, recipe, back=False), say, SAID, first=FIRST)
    right = paragraph(as_printed(item, recipe, back=True), accept, ACCEPTED, first=FIRST)
    also = also_told(item, "also right")
    about = " · ".join(
        filter(None, [f"{call.seconds} seconds", item.level.name.lower(), item.topic])
    )
    return [
        under_one_another([said, *_picture(call), paragraph(about, say, NOTE)], gap=2),
        under_one_another([right, *([paragraph(also, accept, NOTE)] if also else [])], gap=1),
        _move(call.exercise, move),
    ]


def _picture(call: Call) -> list[Frame]:
    """Return the picture that is asked about, small: it is large on the card."""
    picture = call.item.image
    if picture is None:
        return []
    wide, high = fitted(picture, width=PICTURE_WIDTH, height=PICTURE_HEIGHT, coarsest=SHARP)
    return [Frame(wide, high, (Image(0, 0, wide, high, picture),))]


def _move(exercise: Exercise, width: float) -> Frame:
    count = exercise.how_many
    if len(count) <= SHORT_COUNT:
        count = count.replace(" ", "\N{NO-BREAK SPACE}")
    said = ", ".join(filter(None, [exercise.name, count]))
    first = paragraph(said, width, MOVE, first=FIRST)
    options = [paragraph(f"or {way}", width, NOTE) for way in ways(exercise)]
    return under_one_another([first, *options], gap=1)
