"""One side of a card: the ribbon, what is to be read, and the small labels round it."""

from msgspec.structs import replace

from decks.card import Card
from decks.choices import letter_of
from decks.layout.fitting import CAPITAL, LEADING, shorten
from decks.layout.frame import Box, Frame, Ribbon, Text, Thing
from decks.layout.grid import Grid
from decks.layout.runs import Line, Styled, begins_indented
from decks.press.cards.arranging import (
    Arrangement,
    arrange,
    fit_styled,
    in_room,
)
from decks.press.cards.shape import Shape, Shows
from decks.press.script.direction import right_to_left
from decks.press.type.fonts import measure
from decks.press.type.setting import texts_of
from decks.recipe import Activity, Ink, Recipe, Sides
from decks.team import Team

HALF_STROKE = 0.4
"""Half the line of the label's frame, so that its outer edge keeps the inset."""

FIRST_LETTER = letter_of(0)
MOST_CENTRED = 3
"""Up to so many lines are centred; more are set flush, where a paragraph begins."""


def shapes_of(grid: Grid, recipe: Recipe) -> tuple[Shape, Shape]:
    """Return the shapes of a card's front and back."""
    collect = recipe.activity is Activity.COLLECT
    front = Shape(
        grid.card_width,
        grid.card_height,
        back=False,
        says=Shows.ANSWER if collect else None,
        topic=not collect,
        bleed=grid.bleed,
        ribbon=recipe.ink is not Ink.STOCK,
        fractions=recipe.fractions,
        choices=recipe.choices,
        read_from=recipe.read_from,
    )
    return front, replace(front, back=True, says=Shows.OWNER if collect else None)


def shapes_to_read(grid: Grid, recipe: Recipe) -> list[Shape]:
    """Return the shapes of the sides that are printed and say more than whose the card is."""
    printed = shapes_of(grid, recipe)[: 1 if grid.sides is Sides.FRONTS else 2]
    return [shape for shape in printed if shape.shows is not Shows.OWNER]


def face(card: Card, owner: Team, shape: Shape) -> Frame:
    """Return one side of a card. Raises `ValueError` for a text that does not fit."""
    if shape.shows is Shows.OWNER:
        return owners_mark(card.owner, owner, shape)
    arrangement = arrange(card.item, shape)
    if arrangement is None:
        raise ValueError(card.item)
    things: list[Thing] = [
        *([_topic(card, shape)] if shape.topic else []),
        *([arrangement.image] if arrangement.image else []),
        *_lines(arrangement),
        name_of(owner, shape),
        *framed_label(card.label, shape),
    ]
    if shape.ribbon:
        things.insert(0, Ribbon(*shape.ribbon_box, card.owner))
    return Frame(shape.width, shape.height, tuple(things))


def owners_mark(team: int, owner: Team, shape: Shape) -> Frame:
    """Return a side that tells whose card it is, and nothing else."""
    name = Styled(owner.name, strong=True)
    setting = fit_styled(name, shape) or fit_styled(replace(name, text=""), shape)
    things: list[Thing] = [Ribbon(*shape.ribbon_box, team)] if shape.ribbon else []
    if setting:
        things += _lines(in_room(name, setting, shape))
    return Frame(shape.width, shape.height, tuple(things))


def quiet_on(shape: Shape) -> str:
    """Return the tone of what is said quietly; the usual one is too pale for coloured paper."""
    return "quiet" if shape.ribbon else "ink"


def _topic(card: Card, shape: Shape) -> Text:
    size = shape.label_size
    topic = shorten(card.item.topic, shape.text_width / size, measure=measure, between=True)
    x = shape.left
    if right_to_left(topic):
        x += shape.text_width - measure(topic) * size
    return Text(x, shape.height - shape.inset - 0.95 * size, topic, size, tone=quiet_on(shape))


def _lines(arranged: Arrangement) -> list[Text]:
    """Set up to three lines centred; more, a program's, and choices, flush in a centred block."""
    setting, to_left = arranged.setting, arranged.to_left
    size, count = setting.size, len(setting.lines)
    block = (count - 1) * LEADING * size + CAPITAL * size
    top = arranged.y + (arranged.height + block) / 2 - CAPITAL * size
    column = max(setting.widths)
    flush = count > MOST_CENTRED or any(map(begins_indented, setting.lines))
    flush = flush or any(map(_is_first_choice, setting.lines[1:]))
    lines: list[Text] = []
    for n, (line, width) in enumerate(zip(setting.lines, setting.widths, strict=True)):
        slack = arranged.width - (column if flush else width)
        indent = column - width if to_left and flush else 0
        x = arranged.x + slack / 2 + indent
        lines += texts_of(line, size, x=x, y=top - n * LEADING * size, to_left=to_left)
    return lines


def _is_first_choice(line: Line) -> bool:
    """Say whether choices begin with a line: their letters stand under one another."""
    return bool(line) and line[0].text.startswith(FIRST_LETTER)


def name_of(owner: Team, shape: Shape) -> Text:
    """Return the owner's name at the foot of a side."""
    size = shape.label_size
    room = (shape.text_width - 5 * size) / size
    return Text(
        shape.left,
        shape.inset + 0.3 * size,
        shorten(owner.name, room, measure=measure, strong=True),
        size,
        strong=True,
    )


def framed_label(label: str, shape: Shape) -> tuple[Box, Text]:
    """Return a label in its frame at the foot of a side."""
    size = shape.label_size
    wide = measure(label, True) * size  # noqa: FBT003 (a Measure takes the weight)
    width = max(wide + 1.2 * size, 2 * size)
    right = shape.left + shape.text_width - HALF_STROKE
    foot = shape.inset + HALF_STROKE
    box = Box(right - width, foot, width, 1.35 * size, radius=2.5, stroke="rule")
    return box, Text(right - (width + wide) / 2, foot + 0.33 * size, label, size, strong=True)
