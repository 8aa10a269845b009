"""`fairdeal start`: a blank workbook to fill in."""

from pathlib import Path
from typing import Annotated

import typer

from cards.spreadsheets import load_openpyxl
from cards.workbook.offers import Offers, SettingOffer
from cards.writing.saving import save_new
from decks.commands.places import refuse_other_ending
from decks.commands.saying import say
from decks.commands.stopping import finishing
from decks.settings import SETTINGS
from decks.team import COLOURS, MOST_TEAMS


def start(
    file: Annotated[Path, typer.Argument(help="The workbook to make: its name ends in .xlsx.")],
    *,
    with_example: Annotated[
        bool, typer.Option("--with-example", help="Put a few rows into every sheet.")
    ] = False,
) -> None:
    """Make a workbook to fill in, with headings, notes and lists. No file is ever overwritten."""
    refuse_other_ending(file, ".xlsx", "workbook")
    load_openpyxl()
    from cards.workbook.blank import blank_workbook  # noqa: PLC0415 (loaded by now)

    workbook = blank_workbook(file.name, _offers(), example=with_example)
    with finishing():
        save_new(file, workbook)
    say(
        f"Made    {file}",
        "Next    Open it in your spreadsheet program; the first sheet says how to go on.",
    )


def _offers() -> Offers:
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
