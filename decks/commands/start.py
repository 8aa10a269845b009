"""`fairdeal start`: a blank workbook to fill in."""

from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from decks.settings import SETTINGS, UsageError
from decks.team import COLOURS, MOST_TEAMS

if TYPE_CHECKING:
    from cards.workbook import Offers


def start(
    file: Annotated[Path, typer.Argument(help="The workbook to make: its name ends in .xlsx.")],
    *,
    with_example: Annotated[
        bool, typer.Option("--with-example", help="Put a few rows into every sheet.")
    ] = False,
) -> None:
    """Make a workbook to fill in, with headings, notes and lists. No file is ever overwritten."""
    from cards.workbook import blank_workbook, save_new  # noqa: PLC0415 (help needs no openpyxl)

    if file.suffix.lower() != ".xlsx":
        raise UsageError(f"{file.name}: the name of a workbook ends in .xlsx. {_hint(file)}")
    save_new(file, blank_workbook(file.name, _offers(), example=with_example))
    typer.echo(f"Made    {file}")
    typer.echo("Next    Open it in your spreadsheet program; the first sheet says how to go on.")


def _hint(file: Path) -> str:
    return f"Name it {file.stem}.xlsx." if file.stem else "Name it as in Shore.xlsx."


def _offers() -> "Offers":
    from cards.workbook import Offers, SettingOffer  # noqa: PLC0415 (as above)

    settings = tuple(
        SettingOffer(
            name=setting.name,
            value=setting.default,
            what=setting.what,
            expects=setting.expects,
            choices=setting.choices,
        )
        for setting in SETTINGS
    )
    return Offers(settings=settings, colours=COLOURS, most_teams=MOST_TEAMS)
