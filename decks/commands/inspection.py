"""Reading a file, resolving its recipe, and everything that is found in it."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from pathlib import Path

from cards.checking import check, sound_items
from cards.content import Content
from cards.finding import Finding, Severity
from cards.item import Item
from cards.reading import read
from decks.deck import REVIEW_KINDS
from decks.layout.grid import Grid, make_grid
from decks.press.proof import proofread, proofread_names
from decks.recipe import Recipe, resolve


@dataclass(frozen=True, slots=True)
class Inspection:
    """A file's content with the recipe for its deck, the grid of its cards, and all findings."""

    content: Content
    recipe: Recipe
    grid: Grid
    findings: tuple[Finding, ...]

    @property
    def errors(self) -> tuple[Finding, ...]:
        """The findings that keep their row out of a deck."""
        return tuple(finding for finding in self.findings if finding.severity is Severity.ERROR)

    @property
    def items(self) -> tuple[Item, ...]:
        """The items that a deck can be made of, in the teacher's order."""
        sound = sound_items(self.content, self.findings)
        return tuple(item for item in sound if item.kind in REVIEW_KINDS)


def inspect(file: Path, options: Mapping[str, str]) -> Inspection:
    """Read and check a file; `options` are settings that go before those of its Deck sheet.

    Raises `UnreadableFileError` for the file and `UsageError` for an option.
    """
    content = read(file)
    recipe, about_recipe = resolve(content, options)
    grid = make_grid(recipe.paper, recipe.card_size, recipe.sides, recipe.flip)
    checked = check(content, [team.name for team in recipe.teams])
    # what is wrong already need not be proofread as well
    sound: Sequence[Item] = sound_items(content, checked)
    proof = proofread(sound, recipe, grid) + proofread_names(recipe, content)
    return Inspection(content, recipe, grid, (*about_recipe, *checked, *proof))
