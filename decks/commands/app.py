"""The commands, one small module each, put together here."""

import typer

from decks.commands.align import align
from decks.commands.build import build
from decks.commands.check import check
from decks.commands.marks import marks
from decks.commands.next import next_deck
from decks.commands.reprint import reprint
from decks.commands.start import start

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
