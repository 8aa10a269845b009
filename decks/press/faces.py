"""One side of a card: the ribbon, what is to be read, and the small labels round it."""

from dataclasses import dataclass
from functools import cache

from cards.item import Item
from decks.deck import Card
from decks.layout.fitting import CAPITAL, LEADING, Setting, fit, shorten
from decks.layout.frame import Box, Frame, Ribbon, Text
from decks.layout.runs import Styled
from decks.layout.units import mm
from decks.press.fonts import measure
from decks.press.type import texts_of
from decks.recipe import Recipe

INSET = mm(5)
"""Nothing is printed nearer to the trim: a millimetre of shift and of cut never shows."""

RIBBON = mm(4.5)
GAP = mm(4)
HALF_STROKE = 0.4
"""Half the line of the label's frame, so that its outer edge keeps the inset."""


@dataclass(frozen=True, slots=True)
class Shape:
    """A side of a card: its trimmed size in points, and whether it is the back.

    The ribbon stands on the same physical edge of the card: left in front, right behind.
    """

    width: float
    height: float
    back: bool

    @property
    def label_size(self) -> float:
        """The size of the small labels, in points."""
        return 9 if self.height < mm(80) else 11

    @property
    def ribbon_x(self) -> float:
        """The left edge of the ribbon."""
        return self.width - INSET - RIBBON if self.back else INSET

    @property
    def left(self) -> float:
        """The left edge of what is to be read."""
        return INSET if self.back else INSET + RIBBON + GAP

    @property
    def text_width(self) -> float:
        """The width for what is to be read."""
        return self.width - 2 * INSET - RIBBON - GAP

    @property
    def bottom(self) -> float:
        """The lower edge of what is to be read: above the team's name and the label."""
        return INSET + 1.4 * self.label_size + self.air

    @property
    def text_height(self) -> float:
        """The height for what is to be read: below the topic."""
        return self.height - INSET - self.label_size - self.air - self.bottom

    @property
    def air(self) -> float:
        """The white between what is to be read and the small labels."""
        return mm(2.6) if self.height < mm(80) else mm(4.4)


def styled_of(item: Item, *, back: bool) -> Styled:
    """Return what a side of a card asks or answers."""
    if back:
        return Styled(item.answer, strong=True, spans=item.answer_spans)
    return Styled(item.prompt, spans=item.prompt_spans)


def fit_face(item: Item, shape: Shape) -> Setting | None:
    """Return what a side asks or answers at the largest size that fits, or None."""
    return fit_styled(styled_of(item, back=shape.back), shape)


@cache
def fit_styled(styled: Styled, shape: Shape) -> Setting | None:
    """Return a text at the largest size that fits a side, or None."""
    return fit(styled, width=shape.text_width, height_=shape.text_height, measure=measure)


def face(card: Card, shape: Shape, recipe: Recipe) -> Frame:
    """Return one side of a card. Raises `ValueError` for a text that does not fit."""
    setting = fit_face(card.item, shape)
    if setting is None:
        raise ValueError(card.item)
    ribbon = Ribbon(shape.ribbon_x, INSET, RIBBON, shape.height - 2 * INSET, card.team)
    return Frame(
        shape.width,
        shape.height,
        (
            ribbon,
            _topic(card, shape),
            *_lines(setting, shape),
            _team(recipe.teams[card.team].name, shape),
            *_label(card.label, shape),
        ),
    )


def _topic(card: Card, shape: Shape) -> Text:
    size = shape.label_size
    topic = shorten(card.item.topic, shape.text_width / size, measure=measure)
    return Text(shape.left, shape.height - INSET - 0.95 * size, topic, size, tone="quiet")


def _lines(setting: Setting, shape: Shape) -> list[Text]:
    """Set up to three lines centred, more than three flush left with the block centred."""
    size, count = setting.size, len(setting.lines)
    block = (count - 1) * LEADING * size + CAPITAL * size
    top = shape.bottom + (shape.text_height + block) / 2 - CAPITAL * size
    column = max(setting.widths)
    lines: list[Text] = []
    for n, (line, width) in enumerate(zip(setting.lines, setting.widths, strict=True)):
        slack = shape.text_width - (width if count <= 3 else column)  # noqa: PLR2004
        x = shape.left + slack / 2
        lines += texts_of(line, size, x=x, y=top - n * LEADING * size)
    return lines


def _team(name: str, shape: Shape) -> Text:
    size = shape.label_size
    room = (shape.text_width - 5 * size) / size
    return Text(
        shape.left,
        INSET + 0.3 * size,
        shorten(name, room, measure=measure, strong=True),
        size,
        strong=True,
    )


def _label(label: str, shape: Shape) -> tuple[Box, Text]:
    size = shape.label_size
    wide = measure(label, True) * size  # noqa: FBT003 (a Measure takes the weight)
    width = max(wide + 1.2 * size, 2 * size)
    right = shape.left + shape.text_width - HALF_STROKE
    box = Box(right - width, INSET + HALF_STROKE, width, 1.35 * size, radius=2.5, stroke="rule")
    return box, Text(
        right - (width + wide) / 2, INSET + HALF_STROKE + 0.33 * size, label, size, strong=True
    )
