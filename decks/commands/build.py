"""`fairdeal build`: from a workbook to a deck's folder."""

from pathlib import Path
from typing import Annotated

import typer

from decks.recipe import SETTINGS

EXPECTS = {setting.key: setting.expects for setting in SETTINGS}


def _option(key: str, name: str, what: str) -> typer.models.OptionInfo:
    option: typer.models.OptionInfo = typer.Option(name, help=f"{what}: {EXPECTS[key]}.")
    return option


def build(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    file: Annotated[Path, typer.Argument(help="The workbook (.xlsx) or CSV file.")],
    *,
    title: Annotated[str | None, _option("title", "--title", "The deck's name")] = None,
    activity: Annotated[
        str | None, _option("activity", "--activity", "What the deck is for")
    ] = None,
    teams: Annotated[str | None, _option("teams", "--teams", "Who plays")] = None,
    deal: Annotated[
        str | None,
        _option("deal", "--deal", "Whether the items are divided or every team gets all of them"),
    ] = None,
    paper: Annotated[str | None, _option("paper", "--paper", "The paper in the printer")] = None,
    size: Annotated[str | None, _option("card_size", "--size", "How large a card is")] = None,
    sides: Annotated[
        str | None, _option("sides", "--sides", "Print both sides, or fold front on back")
    ] = None,
    flip: Annotated[
        str | None, _option("flip", "--flip", "The edge that the printer flips on")
    ] = None,
    ink: Annotated[str | None, _option("ink", "--ink", "What the ribbons are printed in")] = None,
    guide: Annotated[
        str | None, _option("guide", "--guide", "Who gets a study guide of their own")
    ] = None,
    extra_words: Annotated[
        str | None,
        _option("extra_words", "--extra-words", "Words in a bank that are right for no blank"),
    ] = None,
    seed: Annotated[
        str | None, _option("seed", "--seed", "The same seed gives the same deck again")
    ] = None,
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
        "paper": paper,
        "card_size": size,
        "sides": sides,
        "flip": flip,
        "ink": ink,
        "guide": guide,
        "extra_words": extra_words,
        "seed": seed,
    }
    given = {key: value for key, value in options.items() if value is not None}
    for line in make(file, given, out=out, skip_errors=skip_errors):
        typer.echo(line)
