"""Reading a file, resolving its recipe, and everything that is found in it."""

from collections.abc import Iterator, Mapping
from pathlib import Path

from msgspec import Struct

from cards.checking import check, sound_items
from cards.content import Content
from cards.finding import Finding, Severity, errors_in
from cards.item import Item
from cards.place import Place
from cards.reading import read
from decks.choices import about_hidden, outside_banks
from decks.commands.room import grid_for
from decks.layout.grid import Grid
from decks.press.cards.proof import proofread, proofread_exercises, proofread_names
from decks.recipe import Activity, Dealing, Recipe, choices_are_printed
from decks.settings import cell_of, resolve
from decks.steps import Tell, unheard
from decks.words import counted


class Inspection(Struct, frozen=True):
    """A file's content with the recipe for its deck, the grid of its cards, and all findings."""

    content: Content
    recipe: Recipe
    grid: Grid
    about_deck: tuple[Finding, ...]
    about_rows: tuple[Finding, ...]

    @property
    def findings(self) -> tuple[Finding, ...]:
        """All findings."""
        return self.about_deck + self.about_rows

    @property
    def errors(self) -> tuple[Finding, ...]:
        """The findings that keep their row out of a deck, or stop any deck."""
        return errors_in(self.findings)

    @property
    def deck_errors(self) -> tuple[Finding, ...]:
        """The errors in settings, teams and title: no deck can be made past them."""
        return errors_in(self.about_deck)

    @property
    def asked(self) -> tuple[Item, ...]:
        """The items without an error that the activity is made of."""
        kinds = self.recipe.activity.asks
        return tuple(item for item in self.items if item.kind in kinds)

    @property
    def items(self) -> tuple[Item, ...]:
        """The items without an error, in the teacher's order."""
        return sound_items(self.content, self.findings)


def inspect(file: Path, options: Mapping[str, str], tell: Tell = unheard) -> Inspection:
    """Read and check a file; `options` are settings that go before those of its Deck sheet.

    `tell` is called with each step. Raises `UnusableFileError` for the file and `UsageError` for an
    option.
    """
    tell("Reading the file")
    content = read(file)
    tell(f"Checking {counted(len(content.items), 'item')}")
    recipe, about_recipe = resolve(content, options)
    grid, about_room = grid_for(recipe, content, options)
    recipe, about_printer = _with_shift(recipe, grid, content, options)
    checked = check(content, [team.name for team in recipe.teams], recipe.reading_grade)
    if choices_are_printed(recipe):
        checked = outside_banks(checked, content.items)
    # what is wrong already need not be proofread as well
    sound = sound_items(content, checked)
    about_deck = (
        *about_recipe,
        *about_room,
        *about_printer,
        *proofread_names(recipe, content),
        *proofread_exercises(recipe, content),
        *_too_few_items(content, recipe),
    )
    if cell_of("choices", content.settings, options) is None:
        asked = [item for item in sound if item.kind in recipe.activity.asks]
        checked = (*checked, *about_hidden(asked))
    about_rows = checked if about_room else (*checked, *proofread(sound, recipe, grid))
    return Inspection(content, recipe, grid, about_deck, about_rows)


def _with_shift(
    recipe: Recipe, grid: Grid, content: Content, options: Mapping[str, str]
) -> tuple[Recipe, tuple[Finding, ...]]:
    if recipe.printer is None:
        return recipe, ()
    from decks.commands.shift import with_shift  # noqa: PLC0415 (few decks name a printer)

    return with_shift(recipe, grid, content, options)


def _too_few_items(content: Content, recipe: Recipe) -> Iterator[Finding]:
    items = [item for item in content.items if item.kind in recipe.activity.asks]
    teams = len(recipe.teams)
    if not 0 < len(items) < teams or not is_shared_out(recipe):
        return
    yield Finding(
        "fewer-items-than-teams",
        Severity.WARNING,
        Place("Teams" if content.teams else content.items[0].prompt_place.sheet),
        "",
        f"There are fewer items than teams, {len(items)} for {teams}.",
        "Add rows, or take fewer teams, or let every team have copies of all.",
    )


def is_shared_out(recipe: Recipe) -> bool:
    """Say whether the items are divided among the teams."""
    dealt = recipe.activity in {Activity.REVIEW, Activity.COLLECT}
    return dealt and recipe.deal is Dealing.SHARES
