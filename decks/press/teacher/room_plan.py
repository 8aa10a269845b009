"""The room from above, where words are gathered: homes, the way, and where the cards lie."""

from collections.abc import Sequence

from decks.layout.fitting import shorten
from decks.layout.frame import Box, Frame, Line, Ribbon, Text, Thing, Wedge
from decks.press.type.fonts import measure
from decks.press.type.setting import NOTE, Style, line_of, width_of

NAME = Style(9.5, strong=True)
HEIGHT, FOOT = 190.0, 24.0
"""How high the drawing is, and what of it is for the way below the room."""

INSET, RIBBON, NAMES = 14.0, 9.0, 84.0
HOMES = INSET + RIBBON + 6 + NAMES
TABLE = 84.0
ROWS, COLUMNS = 7, 4
CARD_WIDTH, CARD_HEIGHT = 13.0, 9.0
AWAY = 30.0
"""How far the catcher keeps from homes and cards."""


def room_plan(names: Sequence[str], way: str, width: float) -> Frame:
    """Return the drawing for these teams; `way` is how far it is, in words."""
    left, right = HOMES, width - TABLE
    things: list[Thing] = [
        Box(0, FOOT, width, HEIGHT - FOOT, radius=4, stroke="frame"),
        *_catcher(left + AWAY, right - AWAY),
        *_homes(names),
        *_cards(right),
        *_way(left, right, way),
    ]
    return Frame(width, HEIGHT, tuple(things))


def _homes(names: Sequence[str]) -> list[Thing]:
    step = (HEIGHT - FOOT - 2 * 6) / len(names)
    tall = min(22.0, step - 3)
    things: list[Thing] = []
    for team, name in enumerate(names):
        middle = HEIGHT - 6 - (team + 0.5) * step
        things.append(Ribbon(INSET, middle - tall / 2, RIBBON, tall, team))
        said = shorten(name, NAMES / NAME.size, measure=measure, strong=True)
        things.append(line_of(said, NAME, x=INSET + RIBBON + 6, y=middle - 3.2))
    return things


def _catcher(left: float, right: float) -> list[Thing]:
    foot = FOOT + 14
    words = "the catcher walks here"
    x = (left + right - width_of(words, NOTE)) / 2
    middle = (HEIGHT + FOOT) / 2
    return [
        Box(left, foot, right - left, HEIGHT - 14 - foot, radius=6, fill="panel"),
        line_of(words, NOTE, x=x, y=middle - 3),
    ]


def _cards(left: float) -> list[Box]:
    """Return the cards beside one another, as they lie on tables."""
    across = (TABLE - INSET - CARD_WIDTH) / (COLUMNS - 1)
    down = (HEIGHT - FOOT - 2 * INSET - CARD_HEIGHT) / (ROWS - 1)
    return [
        Box(
            left + column * across,
            FOOT + INSET + row * down,
            CARD_WIDTH,
            CARD_HEIGHT,
            radius=1,
            stroke="rule",
        )
        for row in range(ROWS)
        for column in range(COLUMNS)
    ]


def _way(left: float, right: float, way: str) -> list[Line | Text | Wedge]:
    """Return the way from the homes to the cards, with an arrow at each end."""
    y = FOOT - 10
    words = f"{way}, out and home"
    middle = (left + right) / 2
    half = width_of(words, NOTE) / 2 + 6
    return [
        Line(left, y, middle - half, y),
        Line(middle + half, y, right, y),
        Wedge(((left, y), (left + 6, y + 3), (left + 6, y - 3))),
        Wedge(((right, y), (right - 6, y + 3), (right - 6, y - 3))),
        line_of(words, NOTE, x=middle - half + 6, y=y - 3),
    ]
