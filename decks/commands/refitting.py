"""The page for cards of the size that they were first printed in, printed in another way."""

from collections.abc import Mapping
from typing import Any

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Content
from cards.finding import errors_in
from decks.commands.shift import with_shift
from decks.layout.grid import Grid, grid_of
from decks.layout.paper import PAPERS
from decks.layout.room import NoRoomError
from decks.layout.units import in_mm
from decks.lengths import NO_SHIFT, CardMeasure
from decks.recipe import PaperName, Recipe
from decks.settings import UsageError, read_option
from decks.words import listed

ROUNDING = 1e-6
_NOTHING = Content("", (), (), (), ())


class Refitted(Struct, frozen=True):
    """A recipe to print by, its grid, and what is to be said of its printer."""

    recipe: Recipe
    grid: Grid
    notes: tuple[str, ...] = ()


def refitted(first: Recipe, options: Mapping[str, str]) -> Refitted:
    """Return how to print the cards of a recipe again, with other settings.

    Those can be paper, sides, flip, comes out and printer: the card stays the same.

    Raises `UsageError` for a setting that cannot be, a card that its paper cannot hold, and a
    printer that is not kept; `NoRoomError` for a recipe that no card was ever printed by.
    """
    first_grid = grid_of(first)
    given: dict[str, Any] = {key: read_option(key, text) for key, text in options.items()}
    recipe = replace(first, **given)
    grid = _same_cards(recipe, first_grid)
    return _shifted(Refitted(recipe, grid), first, first_grid, options)


def _same_cards(recipe: Recipe, first: Grid) -> Grid:
    """Return a grid with cards of the first size, however many a page then holds."""
    fitting = _fitting(recipe, first)
    if fitting:
        return fitting
    papers = [paper for paper in PaperName if _fitting(replace(recipe, paper=paper), first)]
    size = CardMeasure(round(in_mm(first.card_width), 1), round(in_mm(first.card_height), 1))
    there = (
        f"It fits on {listed(papers)}: choose it with --paper" if papers else "Choose other sides"
    )
    raise UsageError(
        f"A card of {size}, the size that these were printed in, does not fit on "
        f"{PAPERS[recipe.paper].name} with sides {recipe.sides}. {there}."
    )


def _fitting(recipe: Recipe, first: Grid) -> Grid | None:
    size = CardMeasure(in_mm(first.card_width), in_mm(first.card_height))
    sizes = [recipe.card_size] if first.whole else [recipe.card_size, size]
    for each in sizes:
        try:
            grid = grid_of(replace(recipe, card_size=each))
        except NoRoomError:
            continue
        if _is_same_size(grid, first):
            return grid
    return None


def _is_same_size(grid: Grid, first: Grid) -> bool:
    wider = abs(grid.card_width - first.card_width)
    higher = abs(grid.card_height - first.card_height)
    return max(wider, higher) < ROUNDING


def _shifted(
    asked: Refitted, first: Recipe, first_grid: Grid, options: Mapping[str, str]
) -> Refitted:
    """Return what backs are moved by: as the first time where nothing of it has changed."""
    grid = asked.grid
    if "printer" not in options and _way(grid) == _way(first_grid):
        return replace(asked, recipe=replace(asked.recipe, shift=first.shift))
    bare = replace(asked.recipe, shift=NO_SHIFT)
    recipe, findings = with_shift(bare, grid, _NOTHING, options)
    errors = errors_in(findings)
    if errors and "printer" in options:
        raise UsageError(str(errors[0]))
    if errors:
        left = f"{errors[0].wrong} The backs are left where they are."
        return Refitted(replace(recipe, printer=None), grid, (left,))
    return Refitted(recipe, grid, tuple(f"{one.wrong} {one.mend}" for one in findings))


def _way(grid: Grid) -> tuple[object, ...]:
    return grid.sides, grid.flip, grid.page.turned, grid.whole
