"""`fairdeal next`: the next deck of a workbook, from its earlier decks and what was marked."""

from pathlib import Path
from typing import Annotated

import typer

from decks.commands.options import chosen, with_settings
from decks.commands.progress import progress
from decks.commands.saying import say

LONGEST = 60


@with_settings()
def next_deck(
    file: Annotated[Path, typer.Argument(help="The workbook (.xlsx or .ods) or CSV file.")],
    *,
    test_in: Annotated[
        int | None,
        typer.Option(
            min=1, max=LONGEST, help="In how many days there is a test, for advice on the gap."
        ),
    ] = None,
    out: Annotated[
        Path | None, typer.Option(help="The folder that the decks' folder is in.")
    ] = None,
    skip_errors: Annotated[
        bool, typer.Option("--skip-errors", help="Leave out the rows with errors, and list them.")
    ] = False,
    **given: str | None,
) -> None:
    """Make the next deck: harder, to reteach, or mixed, from the earlier decks and their marks.

    The marks are read from marks.xlsx in the decks' folders. The other options are those of build.
    """
    from decks.commands.planned import planner  # noqa: PLC0415 (help is not to load the press)
    from decks.commands.production import make  # noqa: PLC0415 (as above)

    options = chosen(given)
    plans = planner(options, test_in=test_in)
    with progress() as tell:
        lines = make(file, options, out=out, skip_errors=skip_errors, planner=plans, tell=tell)
    say(*lines)
