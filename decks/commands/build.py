"""`fairdeal build`: from a workbook to a deck's folder."""

from pathlib import Path
from typing import Annotated

import typer

from decks.settings import SETTINGS

_SETTINGS = {setting.key: setting for setting in SETTINGS}


def option_for(key: str) -> typer.models.OptionInfo:
    """Return the option for a setting, helped by the words of its row on the Deck sheet."""
    setting = _SETTINGS[key]
    option: typer.models.OptionInfo = typer.Option(
        setting.option, help=f"{setting.what} ({setting.expects})."
    )
    return option


def build(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    file: Annotated[Path, typer.Argument(help="The workbook (.xlsx or .ods) or CSV file.")],
    *,
    title: Annotated[str | None, option_for("title")] = None,
    activity: Annotated[str | None, option_for("activity")] = None,
    teams: Annotated[str | None, option_for("teams")] = None,
    deal: Annotated[str | None, option_for("deal")] = None,
    cards: Annotated[str | None, option_for("cards")] = None,
    mix: Annotated[str | None, option_for("mix")] = None,
    paper: Annotated[str | None, option_for("paper")] = None,
    margins: Annotated[str | None, option_for("margins")] = None,
    size: Annotated[str | None, option_for("card_size")] = None,
    bleed: Annotated[str | None, option_for("bleed")] = None,
    sides: Annotated[str | None, option_for("sides")] = None,
    flip: Annotated[str | None, option_for("flip")] = None,
    comes_out: Annotated[str | None, option_for("comes_out")] = None,
    printer: Annotated[str | None, option_for("printer")] = None,
    ink: Annotated[str | None, option_for("ink")] = None,
    read_from: Annotated[str | None, option_for("read_from")] = None,
    fractions: Annotated[str | None, option_for("fractions")] = None,
    guide: Annotated[str | None, option_for("guide")] = None,
    support: Annotated[str | None, option_for("support")] = None,
    extra_words: Annotated[str | None, option_for("extra_words")] = None,
    early_finishers: Annotated[str | None, option_for("early_finishers")] = None,
    large_print: Annotated[str | None, option_for("large_print")] = None,
    rounds: Annotated[str | None, option_for("rounds")] = None,
    sets: Annotated[str | None, option_for("sets")] = None,
    points: Annotated[str | None, option_for("points")] = None,
    students: Annotated[str | None, option_for("students")] = None,
    minutes: Annotated[str | None, option_for("minutes")] = None,
    walk: Annotated[str | None, option_for("walk")] = None,
    reading_grade: Annotated[str | None, option_for("reading_grade")] = None,
    seed: Annotated[str | None, option_for("seed")] = None,
    out: Annotated[
        Path | None, typer.Option(help="The folder to make the decks' folder in.")
    ] = None,
    skip_errors: Annotated[
        bool, typer.Option("--skip-errors", help="Leave out the rows with errors, and list them.")
    ] = False,
) -> None:
    """Make a deck: cards to cut, study guide, teacher's pages and record.

    The options have the same names as the settings on the workbook's Deck sheet and go before
    them.
    """
    from decks.commands.production import make  # noqa: PLC0415 (help is not to load the press)

    options = {
        "title": title,
        "activity": activity,
        "teams": teams,
        "deal": deal,
        "cards": cards,
        "mix": mix,
        "paper": paper,
        "margins": margins,
        "card_size": size,
        "bleed": bleed,
        "sides": sides,
        "flip": flip,
        "comes_out": comes_out,
        "printer": printer,
        "ink": ink,
        "read_from": read_from,
        "fractions": fractions,
        "guide": guide,
        "support": support,
        "extra_words": extra_words,
        "early_finishers": early_finishers,
        "large_print": large_print,
        "rounds": rounds,
        "sets": sets,
        "points": points,
        "students": students,
        "minutes": minutes,
        "walk": walk,
        "reading_grade": reading_grade,
        "seed": seed,
    }
    given = {key: value for key, value in options.items() if value is not None}
    for line in make(file, given, out=out, skip_errors=skip_errors):
        typer.echo(line)
