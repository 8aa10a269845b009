"""Whether what is to be read fits its card, and from how far it can be read."""

from collections.abc import Iterator, Sequence
from math import floor

from msgspec import Struct
from msgspec.structs import replace

from cards.finding import Finding, Severity
from cards.item import Item
from cards.place import Place
from cards.quoting import quoted
from decks.layout.fitting import LADDER, LEADING, height_at, words_that_fit
from decks.layout.grid import Grid
from decks.layout.prose import prose_of
from decks.layout.runs import Styled
from decks.lengths import CardMeasure
from decks.press.cards.arranging import fit_face, shown_on, text_room
from decks.press.cards.faces import shapes_to_read
from decks.press.cards.legible import distance_of, least_size
from decks.press.cards.shape import Shape, Shows
from decks.press.type.fonts import measure
from decks.recipe import CardSize, Choices, Recipe, Sides

LARGER = {
    CardSize.SMALL: " or choose a larger card",
    CardSize.MEDIUM: " or take large cards",
    CardSize.LARGE: " or take full pages",
    CardSize.FULL: " or choose a larger paper",
}

NARROWEST = 0.15
"""Ems of a narrow letter, which marks that take no room go with: few texts are narrower."""

MOST_CARDS = 5
"""Of a text that fills fewer cards in such letters it is told how much of it would fit."""

MOST_BREAKS = 20
"""Who breaks a text into so many times the lines of its card has not done so by mistake."""


class _Side(Struct, frozen=True):
    """What one side of a card says, where it stands in the file, and its room in points.

    `has_choices` says that choices stand below the question.
    """

    styled: Styled
    place: Place
    back: bool
    width: float
    height: float
    has_choices: bool

    @property
    def is_far_too_long(self) -> bool:
        """Whether the text is so long that nobody need wait until it is worked out."""
        lines = self.height / (LEADING * LADDER[-1]) + 1
        most = MOST_CARDS * lines * self.width / (NARROWEST * LADDER[-1])
        # a run of spaces takes no more room than one
        letters = len(" ".join(self.styled.text.split()))
        return letters > most or self.styled.text.count("\n") > MOST_BREAKS * lines


def proofread_size(item: Item, shape: Shape, recipe: Recipe) -> Iterator[Finding]:
    """Find a text that does not fit its side, or that is too small to be read from afar."""
    if shape.shows is Shows.OWNER or (shape.back and recipe.sides is Sides.FRONTS):
        return
    place = item.prompt_place if shape.shows is Shows.PROMPT else item.answer_place
    styled = shown_on(item, shape)
    has_choices = shape.choices is Choices.SHOWN and not shape.back and bool(item.wrong)
    side = _Side(styled, place, shape.back, *text_room(item, shape), has_choices)
    setting = None if side.is_far_too_long else fit_face(item, shape)
    if setting is None:
        yield _does_not_fit(side, recipe)
    elif setting.size < least_size(styled, recipe.read_from):
        yield _too_small(side, setting.size, recipe)


def readable_from(items: Sequence[Item], grid: Grid, recipe: Recipe) -> str:
    """Return the sentence that says from how far the cards of these items can be read."""
    shapes = shapes_to_read(grid, recipe)
    reaches = [_reach(item, shapes) for item in items]
    least = min(reaches, default=0)
    asked = recipe.read_from
    if least >= asked:
        return f"Every card can be read from {_reached(max(least, asked), asked)}."
    enough = sum(reach >= asked for reach in reaches)
    if not enough:
        return f"No card can be read from {_metres(asked)}; all can from {_reached(least)}."
    return (
        f"{enough} of {len(reaches)} cards can be read from {_metres(asked)}, "
        f"all from {_reached(least)}."
    )


def _reach(item: Item, shapes: Sequence[Shape]) -> float:
    """Return from how many millimetres all sides can be read; nought where one does not fit."""
    reaches = []
    for shape in shapes:
        setting = fit_face(item, shape)
        styled = shown_on(item, shape)
        reaches.append(distance_of(styled, setting.size) if setting else 0)
    return min(reaches)


def _does_not_fit(side: _Side, recipe: Recipe) -> Finding:
    where = f"on the {_name(side)} of {_card(recipe)}"
    return Finding(
        "does-not-fit",
        Severity.ERROR,
        side.place,
        side.styled.text,
        f"This does not fit {where} at {LADDER[-1]} points.",
        f"{_what_would_do(side, LADDER[-1], 'fit')}{_larger(recipe)}.",
    )


def _too_small(side: _Side, size: float, recipe: Recipe) -> Finding:
    reached = _reached(distance_of(side.styled, size))
    least = least_size(side.styled, recipe.read_from)
    return Finding(
        "too-small-to-read-from",
        Severity.WARNING,
        side.place,
        side.styled.text,
        f"On the {_name(side)} of {_card(recipe)} this can be read from {reached}, "
        f"not from {_metres(recipe.read_from)}.",
        f"{_what_would_do(side, least, 'do')}{_larger(recipe)}.",
    )


def _what_would_do(side: _Side, size: float, do: str) -> str:
    """Say what would fit a side at a size; `do` is the verb for that."""
    if side.is_far_too_long:
        return "It is far too long: write it much shorter"
    styled = side.styled
    prose = prose_of(styled, measure)
    words = [word for line in prose for word in zip(line.texts, line.widths, strict=True)]
    wide = next((text for text, width in words if width * size > side.width), "")
    if wide:
        return f"{quoted(wide)} is wider than the card{_at(size)}: part it, write it shorter"
    if side.has_choices:
        return "Write the question and its choices shorter"
    if len(prose) > 1 and _fits_unbroken(side, size):
        return f"It would {do} with fewer line breaks: take some out"
    fitting = words_that_fit(
        styled, width=side.width, height=side.height, measure=measure, size=size
    )
    if not fitting:
        return f"The card is too low for letters of {size:.3g} points: choose a shorter distance"
    first = f"first {fitting} of its {len(words)} words" if fitting > 1 else "first word alone"
    return f"The {first} would {do}: shorten it"


def _fits_unbroken(side: _Side, size: float) -> bool:
    unbroken = replace(side.styled, text=side.styled.text.replace("\n", " "), spans=())
    needed = height_at(unbroken, size, width=side.width, measure=measure)
    return needed is not None and needed <= side.height


def _at(size: float) -> str:
    return "" if size == LADDER[-1] else " in letters so large"


def _larger(recipe: Recipe) -> str:
    if isinstance(recipe.card_size, CardMeasure):
        return " or choose a larger card"
    return LARGER[recipe.card_size]


def _name(side: _Side) -> str:
    return "back" if side.back else "front"


def _card(recipe: Recipe) -> str:
    return "a full-page card" if recipe.card_size is CardSize.FULL else f"a {recipe.card_size} card"


def _metres(distance: float) -> str:
    return f"{round(distance / 1000, 2):g} m"


def _reached(distance: float, asked: float = 0) -> str:
    """Return a distance in millimetres as metres, rounded down to a tenth but not below `asked`."""
    rounded = floor(distance / 100) * 100
    return _metres(max(rounded, asked))
