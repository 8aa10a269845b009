"""Everything that one file of the teacher's holds."""

from pathlib import Path

from msgspec import Struct

from cards.finding import Finding
from cards.item import Item
from cards.place import Place
from cards.style import Spans

LONGEST_CELL = 32_767
"""So many characters a cell of Excel holds (its specifications and limits), and no card."""


class Cell(Struct, frozen=True):
    """A cell that is not blank: the text that the spreadsheet shows, and where it stands."""

    text: str
    place: Place
    spans: Spans = ()


class TeamRow(Struct, frozen=True):
    """A row of the Teams sheet; the colour may be blank."""

    name: Cell
    colour: Cell | None


class SettingRow(Struct, frozen=True):
    """A row of the Deck sheet that has a value; what it means is for the recipe to say.

    `is_date` says that the spreadsheet holds a date as the value.
    """

    name: Cell
    value: Cell
    is_date: bool = False


class ExerciseRow(Struct, frozen=True):
    """A row of the Exercises sheet; all but the name may be blank."""

    name: Cell
    how_many: Cell | None = None
    gentler: Cell | None = None
    effort: Cell | None = None


class Content(Struct, frozen=True):
    """What a file holds: its items in the teacher's order, teams, settings, and what was found.

    Every row that says anything is an item, also one without a prompt or an answer; whoever makes
    a deck leaves out the rows that an error stands in. `findings` are those of reading (cells that
    could not be understood, each replaced by what is likeliest). `folder` is where the file
    stands, if it is a file.
    """

    name: str
    items: tuple[Item, ...]
    teams: tuple[TeamRow, ...]
    settings: tuple[SettingRow, ...]
    findings: tuple[Finding, ...]
    folder: Path | None = None
    exercises: tuple[ExerciseRow, ...] = ()
