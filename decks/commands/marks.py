"""`fairdeal marks`: what a class got right, and what it means."""

from math import isfinite
from pathlib import Path
from typing import Annotated

import typer

from decks.commands.progress import progress
from decks.commands.saying import say
from decks.marks.estimate import STRENGTH
from decks.settings import UsageError


def marks(
    deck: Annotated[Path, typer.Argument(help="The deck's folder, or a file in it.")],
    *,
    file: Annotated[
        Path | None,
        typer.Option(
            "--marks", help="The file with the marks, .xlsx, .ods or .csv, if it is elsewhere."
        ),
    ] = None,
    strength: Annotated[
        float,
        typer.Option(min=0.5, max=1000, help="How many tries the level of an item counts for."),
    ] = STRENGTH,
    as_json: Annotated[
        bool, typer.Option("--json", help="Print one JSON document, for programs.")
    ] = False,
) -> None:
    """Say what the marks show: what everyone has, what was missed, which keys to look at.

    It reads marks.xlsx in the deck's folder, as far as it is filled in, and puts
    what-it-shows.pdf beside it.
    """
    from decks.commands import marking  # noqa: PLC0415 (help is not to load the press)
    from decks.commands.report import about_opening  # noqa: PLC0415 (as above)

    if not isfinite(strength):
        raise UsageError("Strength (--strength) is to be a number from 0.5 to 1000.")
    with progress() as tell:
        tell("Reading the deck and its marks")
        seen = marking.look_at(deck, file, strength)
    if not as_json:
        say(*marking.marks_told(seen), *about_opening(seen.book))
    with progress() as tell:
        tell("Drawing what they show")
        pages = marking.write_pages(seen)
    say(marking.as_json(seen, pages) if as_json else marking.closing(seen, pages))
    if marking.is_unusable(seen):
        raise typer.Exit(1)
