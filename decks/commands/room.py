"""The grid for a recipe, or what to do where the paper has no room for its cards."""

from collections.abc import Mapping

from cards.content import Content
from cards.finding import Finding, Severity
from cards.place import Place
from decks.layout.grid import Grid, make_grid
from decks.layout.room import LEAST, NoRoomError
from decks.lengths import CardMeasure
from decks.recipe import CardSize, Flip, PaperName, Recipe, Sides
from decks.settings import setting_called
from decks.words import listed

KEYS = ("card_size", "margins", "paper", "sides")
"""The settings that can leave too little room, as likely as they are to be the cause."""


def grid_for(
    recipe: Recipe, content: Content, options: Mapping[str, str]
) -> tuple[Grid, tuple[Finding, ...]]:
    """Return the grid, or any grid and an error that says what would fit."""
    try:
        grid = make_grid(
            recipe.paper,
            recipe.card_size,
            recipe.sides,
            recipe.flip,
            margins=recipe.margins,
            bleed=recipe.bleed,
        )
    except NoRoomError as error:
        # nothing is printed past an error, so that any grid will do
        stand_in = make_grid(PaperName.LETTER, CardSize.FULL, Sides.FRONTS, Flip.LONG)
        return stand_in, (_too_large(error, recipe, *_asked(content, options)),)
    return grid, ()


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
    """Return where the size was asked for, or else what leaves it no room, and what stands there.

    The command line goes before the Deck sheet.
    """
    cells = {}
    for row in content.settings:
        setting = setting_called(row.name.text)
        if setting:
            cells[setting.key] = row.value
    for key in KEYS:
        if key in options:
            option = "--size" if key == "card_size" else f"--{key}"
            return Place(option), options[key]
        if key in cells:
            return cells[key].place, cells[key].text
    return Place("Card size"), ""
