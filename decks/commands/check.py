"""`fairdeal check`: everything that is found in a file, and nothing made of it."""

from collections.abc import Sequence
from pathlib import Path
from typing import Annotated

import typer

from cards.finding import Finding, UnusableFileError, ranked
from cards.spreadsheets import load_openpyxl
from cards.writing.saving import marked_paths, save_first
from decks.commands.options import chosen, option_for
from decks.commands.progress import progress
from decks.commands.saying import say
from decks.commands.stopping import finishing


def check(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    file: Annotated[Path, typer.Argument(help="The workbook (.xlsx or .ods) or CSV file.")],
    *,
    mark: Annotated[
        bool, typer.Option("--mark", help="Write a copy with the cells coloured, and notes.")
    ] = False,
    as_json: Annotated[
        bool, typer.Option("--json", help="Print one JSON document, for programs.")
    ] = False,
    teams: Annotated[str | None, option_for("teams")] = None,
    paper: Annotated[str | None, option_for("paper")] = None,
    size: Annotated[str | None, option_for("card_size")] = None,
    sides: Annotated[str | None, option_for("sides")] = None,
    reading_grade: Annotated[str | None, option_for("reading_grade")] = None,
) -> None:
    """Say what is wrong in a file, cell by cell, and how to mend it. The file is not changed."""
    from decks.commands import report  # noqa: PLC0415 (help is not to load the press)
    from decks.commands.inspection import inspect  # noqa: PLC0415 (as above)

    options = {
        "teams": teams,
        "paper": paper,
        "card_size": size,
        "sides": sides,
        "reading_grade": reading_grade,
    }
    with progress() as tell:
        seen = inspect(file, chosen(options), tell)
    if as_json:
        try:
            marked = _marked(file, ranked(seen.findings)) if mark else None
        except UnusableFileError:
            # what was found is told all the same, as it is without --json
            say(report.as_json(file.name, seen, None))
            raise
        say(report.as_json(file.name, seen, marked))
    else:
        say(*report.findings_told(seen.findings), *report.about_opening(file))
        say(report.verdict(file.name, seen))
        if mark:
            say(report.marking(file, _marked(file, ranked(seen.findings))))
    if seen.errors or not seen.asked:
        raise typer.Exit(1)


def _marked(file: Path, findings: Sequence[Finding]) -> Path | None:
    """Write the marked copy, if there is anything to mark, and return its path."""
    if not findings:
        return None
    load_openpyxl()
    from cards.workbook.marked import marked_copy  # noqa: PLC0415 (loaded by now)

    data = marked_copy(file, findings)
    with finishing():
        return save_first(marked_paths(file), data)
