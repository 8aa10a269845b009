"""The way from a file to a deck's folder, step by step."""

import hashlib
from collections.abc import Mapping
from dataclasses import replace
from pathlib import Path

from cards.finding import FairdealError
from decks.activities import make_deck
from decks.commands import telling
from decks.commands.inspection import Inspection, inspect
from decks.commands.planned import Planner
from decks.deck import Deck
from decks.history import earlier_decks
from decks.layout.stacking import Stack, plan
from decks.lesson.exercises import exercises_of
from decks.marks.sheet import MARKS_FILE, marks_workbook
from decks.press.papers import print_papers
from decks.recipe import Activity, Ink
from decks.record import Colophon, picture_files, write
from decks.shelf import NumberTakenError, next_number, put, shelf_of


class ContentError(FairdealError):
    """The content has errors, so that nothing was built."""


def make(
    file: Path,
    options: Mapping[str, str],
    *,
    out: Path | None,
    skip_errors: bool,
    planner: Planner | None = None,
) -> list[str]:
    """Make the next deck of a file and return what to tell about it.

    `planner` plans it from the earlier ones; without it, it is made as a first deck is.
    Raises `ContentError` where the content has errors that were not to be skipped, `UsageError`
    and `UnreadableFileError`; nothing is written then.
    """
    seen = inspect(file, options)
    if seen.deck_errors or (seen.errors and not skip_errors):
        raise ContentError(telling.stopped(file.name, seen))
    if not seen.asked:
        raise ContentError(telling.nothing_left(file.name, seen))
    shelf = shelf_of(file, out)
    try:
        return _make_next(file.name, seen, shelf, planner)
    except NumberTakenError:
        # another build was a moment quicker; the number after its own is free
        return _make_next(file.name, seen, shelf, planner)


def _make_next(name: str, seen: Inspection, shelf: Path, planner: Planner | None) -> list[str]:
    number = next_number(shelf)
    seed = seen.recipe.seed or f"{seen.content.digest}/{number}"
    planned = planner(seen, shelf, seed) if planner else None
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
    earlier = None if planned else earlier_decks(shelf)
    folder = put(shelf, number, _files(name, seen, deck, stacks))
    about_earlier = planned.findings if planned else earlier.findings if earlier else ()
    seen = replace(seen, about_deck=(*seen.about_deck, *about_earlier))
    return telling.made(folder, deck, stacks, seen, earlier)


def _files(name: str, seen: Inspection, deck: Deck, stacks: tuple[Stack, ...]) -> dict[str, bytes]:
    papers = print_papers(deck, seen.grid, stacks)
    colophon = Colophon(
        made_from=name,
        digest=seen.content.digest,
        left_out=tuple((str(error.place), error.wrong) for error in seen.errors),
        papers={paper: hashlib.sha256(data).hexdigest() for paper, data in papers.items()},
        leaves=sum(stack.leaves for stack in stacks),
    )
    record = {"deck.json": write(deck, colophon).encode()}
    return papers | {MARKS_FILE: marks_workbook(deck)} | record | picture_files(deck)
