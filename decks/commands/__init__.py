"""The command line: one small module for each command, put together here."""

import sys
from io import TextIOWrapper
from typing import cast

import typer

from cards.finding import FairdealError, UnreadableFileError
from decks.commands.align import align
from decks.commands.build import build
from decks.commands.check import check
from decks.commands.marks import marks
from decks.commands.next import next_deck
from decks.commands.reprint import reprint
from decks.commands.start import start
from decks.settings import UsageError

app = typer.Typer(
    add_completion=False,
    no_args_is_help=True,
    pretty_exceptions_enable=False,
    rich_markup_mode=None,
)
app.command()(start)
app.command()(check)
app.command()(build)
app.command()(marks)
app.command("next")(next_deck)
app.command()(reprint)
app.command()(align)


@app.callback()
def fairdeal() -> None:
    """Turn a spreadsheet into decks of review cards, ready to print, cut and use."""


def main() -> None:
    """Run the command line; an expected failure ends in one line and a status.

    0 done, 1 the content has errors, 2 the call is wrong, 3 a file could not be read or written.
    """
    for stream in (sys.stdout, sys.stderr):
        # a terminal that lacks a letter must not stop a deck that is already made
        cast("TextIOWrapper", stream).reconfigure(errors="backslashreplace")
    try:
        app()
    except FairdealError as error:
        typer.echo(f"fairdeal: {error}", err=True)
        sys.exit(status_of(error))


def status_of(error: FairdealError) -> int:
    """Return the exit status for an expected failure."""
    if isinstance(error, UsageError):
        return 2
    return 3 if isinstance(error, UnreadableFileError) else 1
