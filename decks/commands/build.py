"""`fairdeal build`: from a workbook to a deck's folder."""

from pathlib import Path
from typing import Annotated

import typer

from decks.commands.options import ONLY_NEXT, chosen, with_settings
from decks.commands.progress import progress
from decks.commands.saying import say


@with_settings(but=ONLY_NEXT)
def build(
    file: Annotated[Path, typer.Argument(help="The workbook (.xlsx or .ods) or CSV file.")],
    *,
    out: Annotated[
        Path | None, typer.Option(help="The folder to make the decks' folder in.")
    ] = None,
    skip_errors: Annotated[
        bool, typer.Option("--skip-errors", help="Leave out the rows with errors, and list them.")
    ] = False,
    **given: str | None,
) -> None:
    """Make a deck: cards to cut, study guide, teacher's pages and record.

    The options have the same names as the settings on the workbook's Deck sheet and go before
    them.
    """
    from decks.commands.production import make  # noqa: PLC0415 (help is not to load the press)

    with progress() as tell:
        lines = make(file, chosen(given), out=out, skip_errors=skip_errors, tell=tell)
    say(*lines)
