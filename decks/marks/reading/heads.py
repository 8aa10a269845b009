"""Which tables hold marks, told by their headings: sheets may be renamed and columns moved."""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from enum import Enum, auto

from msgspec import Struct

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from cards.reading.headings import key
from cards.reading.near import near_miss
from cards.reading.table import Row, Table
from decks.marks.forms import TALLY_SHEET, Blank, blank_named
from decks.words import listed

_SEARCHED = 12
"""How many rows from the top may hold the headings."""


class Role(Enum):
    """What a column of a marks sheet holds."""

    CARD = auto()
    OWNER = auto()
    TEXT = auto()
    TRIES = auto()
    RIGHT = auto()
    PAPER = auto()


_WORDS = {
    Role.CARD: ("Card", "Card label", "Card number", "Label"),
    Role.OWNER: ("Team", "Round", "Set", "Group"),
    Role.TEXT: ("On the card", "Prompt", "Question", "Clue"),
    Role.TRIES: ("Tries", "Tried", "Attempts", "Try"),
    Role.RIGHT: ("Right", "Correct", "Number right", "Got right"),
    Role.PAPER: ("Paper", "Paper number", "Papers"),
}
_ROLES = {key(word): role for role, words in _WORDS.items() for word in words}
TALLY = (Role.CARD, Role.TRIES, Role.RIGHT)


class Head(Struct, frozen=True):
    """The row of headings: its number, the column of each role, and that of each blank."""

    row: int
    columns: Mapping[Role, int]
    blanks: Mapping[Blank, int]

    @property
    def is_tally(self) -> bool:
        """Whether it heads a tally of cards."""
        return all(role in self.columns for role in TALLY)

    @property
    def is_guides(self) -> bool:
        """Whether it heads the papers of study guides."""
        return Role.PAPER in self.columns and bool(self.blanks)

    def text(self, row: Row, role: Role) -> str:
        """Return the text that a row has in the column of a role; blank where there is none."""
        return row.text(self.columns.get(role))


def head_of(table: Table) -> Head | None:
    """Return the head of a table that holds marks, or None."""
    heads = (_head(row) for row in table.rows[:_SEARCHED])
    return next((head for head in heads if head.is_tally or head.is_guides), None)


def _head(row: Row) -> Head:
    columns: dict[Role, int] = {}
    blanks: dict[Blank, int] = {}
    for column, cell in row.cells.items():
        role, blank = _ROLES.get(key(cell.text)), blank_named(cell.text)
        if role:
            columns.setdefault(role, column)
        elif blank:
            blanks.setdefault(blank, column)
    return Head(row.number, columns, blanks)


def doubled_headings(table: Table, head: Head) -> Iterator[Finding]:
    """Yield the headings that stand over two columns: only the first of these is read."""
    row = next(row for row in table.rows if row.number == head.row)
    read = {*head.columns.values(), *head.blanks.values()}
    for column, cell in row.cells.items():
        role, blank = _ROLES.get(key(cell.text)), blank_named(cell.text)
        if column not in read and ((role and head.is_tally) or blank or role is Role.PAPER):
            yield Finding(
                "heading-twice",
                Severity.WARNING,
                cell.place,
                cell.text,
                f"There are two columns headed {quoted(cell.text)}; this one was not read.",
                "Give each column its own heading, as they came.",
            )


def missing_heading(table: Table) -> Finding | None:
    """Return what a table lacks that may once have held marks, or None where it never did."""
    rows = [(row, _head(row)) for row in table.rows[:_SEARCHED]]
    if not rows:
        return None
    row, head = max(rows, key=lambda pair: len(pair[1].columns) + bool(pair[1].blanks))
    wanted = _wanted(head) or (TALLY if key(table.title) == key(TALLY_SHEET) else ())
    if not wanted:
        return None
    missing = [_WORDS[role][0] for role in wanted if role not in head.columns]
    near = _misspelt(row.cells.values(), missing)
    wrong = f"There is no column headed {listed([quoted(word) for word in missing], 'and')}"
    mend = f"Was {quoted(near.text)} meant? " if near else ""
    return Finding(
        "heading-missing",
        Severity.ERROR,
        near.place if near else Place(table.name, row.number),
        near.text if near else "",
        f"{wrong}, so nothing on this sheet was read.",
        f"{mend}Put the headings back as they came.",
    )


def _wanted(head: Head) -> Sequence[Role]:
    """Return what a row that looks like headings ought to hold; nothing if it looks like none."""
    if Role.TRIES in head.columns or {Role.CARD, Role.RIGHT} <= head.columns.keys():
        return TALLY
    return (Role.PAPER,) if len(head.blanks) > 1 and head.columns else ()


def _misspelt(cells: Iterable[Cell], missing: Sequence[str]) -> Cell | None:
    """Return the cell that probably ought to be one of the missing headings."""
    unknown = [cell for cell in cells if key(cell.text) not in _ROLES]
    return next((cell for cell in unknown if near_miss(cell.text, missing, closeness=0.7)), None)
