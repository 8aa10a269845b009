"""The grid for a recipe, or what to do where the paper has no room for its cards."""

from collections.abc import Mapping

from cards.content import Content
from cards.finding import Finding, Severity
from cards.place import Place
from decks.layout.grid import Grid, grid_of, make_grid
from decks.layout.room import LEAST, NoRoomError
from decks.lengths import CardMeasure
from decks.recipe import CardSize, Flip, PaperName, Recipe, Sides
from decks.settings import cell_of
from decks.words import listed

KEYS = ("card_size", "margins", "paper", "sides")
"""The settings that can leave too little room, as likely as they are to be the cause."""


def grid_for(
    recipe: Recipe, content: Content, options: Mapping[str, str]
) -> tuple[Grid, tuple[Finding, ...]]:
    """Return the grid, or any grid and an error that says what would fit."""
    try:
        return grid_of(recipe), ()
    except NoRoomError as error:
        # nothing is printed past an error, so that any grid will do
        stand_in = make_grid(PaperName.LETTER, CardSize.FULL, Sides.FRONTS, Flip.LONG)
        return stand_in, (_too_large(error, recipe, *_asked(content, options)),)


def _too_large(error: NoRoomError, recipe: Recipe, place: Place, found: str) -> Finding:
    return Finding(
        "card-too-large",
        Severity.ERROR,
        place,
        found,
        f"{_card(recipe)} does not fit on {error.paper.name}.",
        _mend(error, recipe),
    )


def _card(recipe: Recipe) -> str:
    size = recipe.card_size
    what = f"A card of {size}" if isinstance(size, CardMeasure) else f"A {size} card"
    if size in LEAST:
        what += f" of at least {LEAST[CardSize(size)]}"
    return f"{what}, folded," if recipe.sides in (Sides.FOLD, Sides.TENT) else what


def _mend(error: NoRoomError, recipe: Recipe) -> str:
    ways = []
    if error.fitting:
        ways.append(f"{listed(list(error.fitting)).capitalize()} would fit")
    if error.most:
        ways.append(f"a card of at most {error.most}")
    if not ways:
        return "Take smaller margins, or larger paper."
    bleed = ", or do without bleed" if recipe.bleed else ""
    return f"{', or '.join(ways)}; or take larger paper{bleed}."


def _asked(content: Content, options: Mapping[str, str]) -> tuple[Place, str]:
    """Return what was asked for that leaves too little room, likeliest first, and where."""
    given = (cell_of(key, content.settings, options) for key in KEYS)
    cell = next(filter(None, given), None)
    return (cell.place, cell.text) if cell else (Place("Card size"), "")
