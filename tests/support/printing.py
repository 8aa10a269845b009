"""Decks of a few cards, for looking at pages: each set of options is built once."""

import csv
from functools import cache
from pathlib import Path
from tempfile import mkdtemp

from decks.commands.production import make
from support.shore import ITEMS

FEW = ITEMS[:4]
TEAMS = "Heron, Otter"


@cache
def _content() -> Path:
    path = Path(mkdtemp()) / "Shore.csv"
    with path.open("w", newline="", encoding="utf-8") as file:
        csv.writer(file).writerows([("Prompt", "Answer", "Topic", "Level"), *FEW])
    return path


@cache
def printed(**options: str) -> Path:
    """Return the folder of the deck with these settings, by their keys.

    Raises `ContentError` where it cannot be built.
    """
    folder = Path(mkdtemp(dir=_content().parent))
    make(_content(), {"teams": TEAMS, **options}, out=folder, skip_errors=False)
    return folder / "Shore decks" / "01"
