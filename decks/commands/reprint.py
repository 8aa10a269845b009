"""`fairdeal reprint`: lost cards once more, from a deck's record alone."""

from pathlib import Path
from typing import Annotated

import typer

from decks.commands.options import chosen, option_for
from decks.commands.progress import progress
from decks.commands.saying import say


def reprint(  # noqa: PLR0913 (one parameter an option is how typer reads them)
    deck: Annotated[Path, typer.Argument(help="The deck's folder, or a file in it.")],
    *,
    cards: Annotated[
        str | None, typer.Option(help="The cards by the numbers in their corners: 7,12 or 7-12.")
    ] = None,
    team: Annotated[
        list[str] | None,
        typer.Option(help="Whose cards: a team, or Round 1, or Set 1; may be given several times."),
    ] = None,
    everything: Annotated[bool, typer.Option("--all", help="All cards of the deck.")] = False,
    paper: Annotated[str | None, option_for("paper")] = None,
    sides: Annotated[str | None, option_for("sides")] = None,
    flip: Annotated[str | None, option_for("flip")] = None,
    comes_out: Annotated[str | None, option_for("comes_out")] = None,
    printer: Annotated[str | None, option_for("printer")] = None,
    out: Annotated[
        Path | None,
        typer.Option(
            help="The file to make, or a folder; without it, reprint-1.pdf with the deck."
        ),
    ] = None,
) -> None:
    """Print lost or chewed cards again, the same as they were.

    It takes the deck's own record, so that the workbook may have changed since, or be gone.
    """
    from decks.commands.reprinting import Wanted, print_again  # noqa: PLC0415 (nor the press)

    options = {
        "paper": paper,
        "sides": sides,
        "flip": flip,
        "comes_out": comes_out,
        "printer": printer,
    }
    wanted = Wanted(cards, tuple(team or ()), everything)
    with progress() as tell:
        tell("Drawing the cards again")
        lines = print_again(deck, wanted, chosen(options), out=out)
    say(*lines)
