"""The way from a file to a deck's folder, step by step."""

import hashlib
from collections.abc import Mapping
from contextlib import suppress
from pathlib import Path
from typing import TYPE_CHECKING

from msgspec.structs import replace

from cards.digest import digest_of
from cards.finding import FairdealError
from decks.activities import make_deck
from decks.commands import report, telling
from decks.commands.inspection import Inspection, inspect
from decks.commands.stopping import finishing
from decks.deck import Deck
from decks.history import earlier_decks
from decks.layout.stacking import Stack, plan
from decks.lesson.exercises import exercises_of
from decks.marks.sheet import MARKS_FILE, marks_workbook
from decks.press.papers import print_papers
from decks.recipe import Activity, Ink
from decks.record import Colophon, picture_files, write
from decks.shelf import NumberTakenError, next_number, put, shelf_of
from decks.steps import Tell, unheard
from decks.words import counted

if TYPE_CHECKING:
    from decks.commands.planned import Planner


class ContentError(FairdealError):
    """The content has errors, so that nothing was built."""


def make(  # noqa: PLR0913 (what is asked for, and who hears of it)
    file: Path,
    options: Mapping[str, str],
    *,
    out: Path | None,
    skip_errors: bool,
    planner: "Planner | None" = None,
    tell: Tell = unheard,
) -> list[str]:
    """Make the next deck of a file and return what to tell about it.

    `planner` plans it from the earlier ones; without it, it is made as a first deck is. `tell`
    is called with each step. Raises `ContentError` where the content has errors that were not to be
    skipped, `UsageError` and `UnusableFileError`; nothing is written then.
    """
    seen = inspect(file, options, tell)
    if seen.deck_errors or (seen.errors and not skip_errors):
        raise ContentError(telling.stopped(file.name, seen))
    if not seen.asked:
        raise ContentError(telling.nothing_left(file.name, seen))
    shelf = shelf_of(file, out)
    while True:
        # where another build was a moment quicker, the number after its own is free
        with suppress(NumberTakenError):
            lines = _make_next(file.name, seen, shelf, planner, tell)
            return [*report.about_opening(file), *lines]


def _make_next(
    name: str, seen: Inspection, shelf: Path, planner: "Planner | None", tell: Tell
) -> list[str]:
    tell("Looking at the earlier decks")
    earlier = earlier_decks(shelf)
    # a deck keeps its number where its folder was given another name
    number = next_number(shelf, after=max((one.number for one in earlier.decks), default=0))
    digest = digest_of(seen.content)
    seed = seen.recipe.seed or f"{digest}/{number}"
    planned = planner(seen, shelf, earlier, seed) if planner else None
    tell(f"Dealing {counted(len(seen.asked), 'item')}")
    deck = make_deck(
        planned.plan.recipe if planned else seen.recipe,
        seen.asked,
        number=number,
        seed=seed,
        exercises=exercises_of(seen.content.exercises),
        plan=planned.plan if planned else None,
    )
    apart = seen.recipe.ink is Ink.STOCK
    hands = [len(hand) for hand in deck.hands]
    spare = 1 if seen.recipe.activity is Activity.COLLECT else 0
    stacks = plan(hands, len(seen.grid.slots), apart=apart, spare=spare)
    papers = print_papers(deck, seen.grid, stacks, tell)
    tell("Writing the record and the sheet for marks")
    files = papers | _files(deck, _colophon(name, seen, digest, stacks, papers))
    tell("Putting the deck in its place")
    with finishing():
        folder = put(shelf, number, files)
    about_earlier = planned.findings if planned else earlier.findings
    seen = replace(seen, about_deck=(*seen.about_deck, *about_earlier))
    return telling.made(folder, deck, stacks, seen, None if planned else earlier)


def _colophon(
    name: str, seen: Inspection, digest: str, stacks: tuple[Stack, ...], papers: Mapping[str, bytes]
) -> Colophon:
    return Colophon(
        # a name of odd bytes is no text that can be written
        made_from=name.encode(errors="replace").decode(),
        digest=digest,
        left_out=tuple((str(error.place), error.wrong) for error in seen.errors),
        papers={paper: hashlib.sha256(data).hexdigest() for paper, data in papers.items()},
        leaves=sum(stack.leaves for stack in stacks),
    )


def _files(deck: Deck, colophon: Colophon) -> dict[str, bytes]:
    """Return what goes with the papers: the sheet for marks, the record and the pictures."""
    record = {"deck.json": write(deck, colophon).encode()}
    return {MARKS_FILE: marks_workbook(deck)} | record | picture_files(deck)
