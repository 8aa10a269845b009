"""The way from a file to a deck's folder, step by step."""

import hashlib
from collections.abc import Mapping, Sequence
from pathlib import Path

from cards.checking import check, sound_items
from cards.content import Content
from cards.finding import FairdealError, Finding, Severity
from cards.item import Item
from cards.reading import read
from decks.commands import telling
from decks.deck import REVIEW_KINDS, Deck, make_deck
from decks.layout.grid import Grid, make_grid
from decks.layout.stacking import Stack, plan
from decks.press.papers import print_papers
from decks.press.proof import proofread, proofread_names
from decks.recipe import Recipe, resolve
from decks.record import Colophon, write
from decks.shelf import next_number, put, shelf_of


class ContentError(FairdealError):
    """The content has errors, so that nothing was built."""


def make(
    file: Path, options: Mapping[str, str], *, out: Path | None, skip_errors: bool
) -> list[str]:
    """Make the next deck of a file and return what to tell about it.

    Raises `ContentError` where the content has errors that were not to be skipped, `UsageError`
    and `UnreadableFileError`; nothing is written then.
    """
    content = read(file)
    recipe, about_recipe = resolve(content, options)
    grid = make_grid(recipe.paper, recipe.card_size, recipe.sides, recipe.flip)
    findings = _all_findings(content, recipe, grid, about_recipe)
    errors = [finding for finding in findings if finding.severity is Severity.ERROR]
    if errors and not skip_errors:
        raise ContentError(telling.stopped(file.name, findings))
    items = [item for item in sound_items(content, findings) if item.kind in REVIEW_KINDS]
    if not items:
        raise ContentError(telling.nothing_left(file.name, findings))
    shelf = shelf_of(file, out)
    number = next_number(shelf)
    deck = make_deck(recipe, items, number=number, seed=recipe.seed or f"{content.digest}/{number}")
    stacks = plan([len(hand) for hand in deck.hands], len(grid.slots))
    files = _files(file, content, deck, grid, stacks, errors)
    folder = put(shelf, number, files)
    return telling.made(folder, deck, grid, stacks, findings)


def _all_findings(
    content: Content, recipe: Recipe, grid: Grid, about_recipe: Sequence[Finding]
) -> tuple[Finding, ...]:
    """Check the content, then proofread what is sound of it."""
    checked = check(content, [team.name for team in recipe.teams])
    sound: Sequence[Item] = sound_items(content, checked)
    proof = proofread(sound, recipe, grid) + proofread_names(recipe, content)
    return (*about_recipe, *checked, *proof)


def _files(  # noqa: PLR0913, PLR0917 (everything that goes into the folder)
    file: Path,
    content: Content,
    deck: Deck,
    grid: Grid,
    stacks: tuple[Stack, ...],
    errors: Sequence[Finding],
) -> dict[str, bytes]:
    papers = print_papers(deck, grid, stacks)
    colophon = Colophon(
        made_from=file.name,
        digest=content.digest,
        left_out=tuple((str(error.place), error.wrong) for error in errors),
        papers={name: hashlib.sha256(paper).hexdigest() for name, paper in papers.items()},
        leaves=sum(stack.leaves for stack in stacks),
    )
    return papers | {"deck.json": write(deck, colophon).encode()}
