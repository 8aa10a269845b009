"""Where the text of a side stands, and its picture above it or beside it."""

from collections.abc import Iterator
from functools import cache

from msgspec import Struct
from msgspec.structs import replace

from cards.answers import answered, as_meant
from cards.item import Item
from cards.picture import Picture, PictureKind
from decks.choices import choices_of, letter_of, lettered
from decks.layout.fitting import LADDER, Setting, fit
from decks.layout.fractions import with_fractions
from decks.layout.frame import Image
from decks.layout.runs import Styled
from decks.layout.units import POINTS_PER_INCH
from decks.press.cards.legible import least_size
from decks.press.cards.shape import Shape, Shows
from decks.press.script.direction import right_to_left
from decks.press.type.fonts import measure
from decks.recipe import Choices, Fractions, Recipe, choices_are_printed

SHARP = 150
"""Dots an inch from which a picture looks sharp in the hand; common practice in printing."""

COARSEST = SHARP / 2
"""A picture is never printed with fewer dots an inch: at twice the size that looks sharp."""

ABOVE = (0.35, 0.40, 0.45, 0.50, 0.55, 0.60)
"""Shares of the height that a picture above the text may have."""

BESIDE = (0.40, 0.45, 0.50, 0.55, 0.60)
"""Shares of the width that a picture beside the text may have."""

_COMFORT = 2.3
"""A text is large enough with a picture at up to so many times the size of the small labels."""


class Arrangement(Struct, frozen=True):
    """A text set in its room, and the picture that stands with it, if there is one.

    `x`, `y`, `width`, `height` are the room that the text is centred in; `to_left` says whether
    it runs from right to left.
    """

    setting: Setting
    x: float
    y: float
    width: float
    height: float
    to_left: bool
    image: Image | None = None


class _Room(Struct, frozen=True):
    """A size for a picture, and what it leaves for the text."""

    picture: tuple[float, float]
    width: float
    height: float
    above: bool


def styled_of(item: Item, *, back: bool, fractions: Fractions = Fractions.PLAIN) -> Styled:
    """Return what a side of a card asks or answers."""
    return with_fractions(_as_typed(item, back=back), fractions)


def _as_typed(item: Item, *, back: bool) -> Styled:
    if back:
        return Styled(item.answer, strong=True, spans=item.answer_spans)
    return Styled(item.prompt, spans=item.prompt_spans)


def with_choices(item: Item, *, back: bool, fractions: Fractions = Fractions.PLAIN) -> Styled:
    """Return the same with the choices below what is asked, and the letter of what is right."""
    styled, choices = _as_typed(item, back=back), choices_of(item)
    if choices and back:
        letter = letter_of([as_meant(choice) for choice in choices].index(answered(item)))
        styled = _behind(letter, styled)
    elif choices:
        styled = replace(styled, text=f"{styled.text}\n{lettered(choices)}")
    return with_fractions(styled, fractions)


def _behind(letter: str, styled: Styled) -> Styled:
    spans = tuple(
        replace(span, start=span.start + len(letter), end=span.end + len(letter))
        for span in styled.spans
    )
    return replace(styled, text=f"{letter}{styled.text}", spans=spans)


def as_printed(item: Item, recipe: Recipe, *, back: bool) -> Styled:
    """Return what an item asks or answers, with its choices if the recipe prints them."""
    of_item = with_choices if choices_are_printed(recipe) else styled_of
    return of_item(item, back=back, fractions=recipe.fractions)


def shown_on(item: Item, shape: Shape) -> Styled:
    """Return what a side of this shape says of an item; nothing where it tells only the owner."""
    if shape.shows is Shows.OWNER:
        return Styled("")
    if shape.choices is Choices.SHOWN and (shape.back or shape.shows is Shows.PROMPT):
        return with_choices(item, back=shape.back, fractions=shape.fractions)
    return styled_of(item, back=shape.shows is Shows.ANSWER, fractions=shape.fractions)


def fitted(
    picture: Picture, *, width: float, height: float, coarsest: float = COARSEST
) -> tuple[float, float]:
    """Return the largest size in points at which a picture fits a box, in its own proportions.

    A picture of pixels gets at least `coarsest` of them an inch; a drawing can be of any size.
    """
    scale = min(width / picture.width, height / picture.height)
    if picture.kind is not PictureKind.SVG:
        scale = min(scale, POINTS_PER_INCH / coarsest)
    return scale * picture.width, scale * picture.height


def fit_styled(styled: Styled, shape: Shape) -> Setting | None:
    """Return a text at the largest size that fits a side without a picture, or None."""
    return _fit(styled, shape, shape.text_width, shape.text_height)


def _fit(styled: Styled, shape: Shape, width: float, height: float) -> Setting | None:
    return _fit_room(styled, width, height, shape.largest, shape.read_from)


@cache
def _fit_room(
    styled: Styled, width: float, height: float, largest: float, read_from: float
) -> Setting | None:
    most = max(largest, least_size(styled, read_from))
    return fit(styled, width=width, height=height, measure=measure, most=most)


def fit_face(item: Item, shape: Shape) -> Setting | None:
    """Return what a side asks or answers at the largest size that fits, or None.

    A picture that stands with it has its room.
    """
    arrangement = arrange(item, shape)
    return arrangement.setting if arrangement else None


def text_room(item: Item, shape: Shape) -> tuple[float, float]:
    """Return the width and height that a side has for its text: with a picture, at the most."""
    if shape.shows is not Shows.PROMPT or item.image is None:
        return shape.text_width, shape.text_height
    most = max(_rooms(item.image, shape), key=lambda room: room.width * room.height)
    return most.width, most.height


def arrange(item: Item, shape: Shape) -> Arrangement | None:
    """Return where the text of a side and its picture stand, or None where they do not fit."""
    styled = shown_on(item, shape)
    if shape.shows is not Shows.PROMPT or item.image is None:
        setting = fit_styled(styled, shape)
        return in_room(styled, setting, shape) if setting else None
    best = _best(styled, item.image, shape)
    return _placed(styled, *best, item.image, shape) if best else None


def in_room(styled: Styled, setting: Setting, shape: Shape) -> Arrangement:
    """Return a text that has the whole room of a side."""
    room = (shape.left, shape.bottom, shape.text_width, shape.text_height)
    return Arrangement(setting, *room, right_to_left(styled.text))


@cache
def _best(styled: Styled, picture: Picture, shape: Shape) -> tuple[Setting, _Room] | None:
    """Return the room in which text and picture are largest.

    First the text is to be as large as it can be up to what is comfortable, then the picture, then
    the text again.
    """
    comfort = max(_comfort(shape), least_size(styled, shape.read_from))
    best = None
    rank = (0.0, 0.0, 0.0)
    for room in _rooms(picture, shape):
        setting = _fit(styled, shape, room.width, room.height)
        if setting and setting.size > comfort and _is_ladder(setting, styled):
            setting = fit(
                styled, width=room.width, height=room.height, measure=measure, most=comfort
            )
        if setting:
            area = room.picture[0] * room.picture[1]
            here = (min(setting.size, comfort), area, setting.size)
            if here > rank:
                best, rank = (setting, room), here
    return best


def _comfort(shape: Shape) -> float:
    return next(size for size in LADDER if size <= _COMFORT * shape.label_size)


def _is_ladder(setting: Setting, styled: Styled) -> bool:
    """Say whether every word of a text has got a line to itself."""
    return 2 < len(setting.lines) == len(styled.text.split())  # noqa: PLR2004 (two are a heading)


def _rooms(picture: Picture, shape: Shape) -> Iterator[_Room]:
    width, height, gap = shape.text_width, shape.text_height, 1.4 * shape.air
    for share in ABOVE:
        size = fitted(picture, width=width, height=share * height)
        yield _Room(size, width, height - gap - size[1], above=True)
    for share in BESIDE:
        size = fitted(picture, width=share * width, height=height)
        yield _Room(size, width - gap - size[0], height, above=False)


def _placed(
    styled: Styled, setting: Setting, room: _Room, picture: Picture, shape: Shape
) -> Arrangement:
    """Centre a picture and its text, as one, in the room of a side."""
    wide, high = room.picture
    to_left = right_to_left(styled.text)
    if not room.above:
        x = shape.left + shape.text_width - wide
        image = Image(x, shape.bottom + (shape.text_height - high) / 2, wide, high, picture)
        beside = (shape.left, shape.bottom, room.width, room.height)
        return Arrangement(setting, *beside, to_left, image)
    spare = room.height - setting.height
    top = shape.bottom + shape.text_height - spare / 2
    image = Image(shape.left + (shape.text_width - wide) / 2, top - high, wide, high, picture)
    y = shape.bottom + spare / 2
    return Arrangement(setting, shape.left, y, room.width, setting.height, to_left, image)
