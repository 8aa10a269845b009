"""`fairdeal marks`: what a class got right, and what it means."""

from pathlib import Path
from typing import Annotated

import typer

from decks.marks.estimate import STRENGTH


def marks(
    deck: Annotated[Path, typer.Argument(help="The deck's folder, or the deck.json in it.")],
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

    seen = marking.look_at(deck, file, strength)
    if as_json:
        typer.echo(marking.as_json(seen, marking.write_pages(seen)))
    else:
        for line in marking.told(seen):
            typer.echo(line)
        typer.echo(marking.closing(seen, marking.write_pages(seen)))
    if marking.is_unusable(seen):
        raise typer.Exit(1)
