"""What single cells of a marks sheet say: a count, a mark, or a finding."""

import re
from collections.abc import Iterator

from msgspec import Struct, field

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from cards.reading.headings import is_among, keys_of
from cards.reading.table import Doubt, Row, Table
from cards.reading.wordings import TOTALS

_NUMBER = re.compile(r"([-−–]?)(\d{1,9})(?:[.,](\d{1,9}))?")
_THOUSANDS = 3
_MARKS = {"0": 0, "1": 1}
_SUMS = frozenset((*keys_of(TOTALS), *keys_of("all, altogether, all together, every")))
_NO_NUMBER = {
    Doubt.NO_VALUE: (
        "formula-without-value",
        "This formula has not been worked out, so its value is not known.",
        "Open and save the file in your spreadsheet program, or write the number itself.",
    ),
    Doubt.ERROR_VALUE: (
        "formula-with-fault",
        "This formula comes to a fault, {}.",
        "Mend the formula, or write the number itself.",
    ),
    Doubt.NO_TEXT: (
        "not-a-count",
        "This cell holds no number and no formula.",
        "Write the number itself.",
    ),
    Doubt.MERGED: (
        "mark-merged",
        "This cell is merged with the one above it, so its row has no number of its own.",
        "Part the merged cells, and write the number of each row.",
    ),
}
"""What is found in a cell that holds no number of its own: code, what is wrong, and the mend."""


class Sheet(Struct):
    """A table that is being read, and what has been found in it so far."""

    table: Table
    findings: list[Finding] = field(default_factory=list)

    def place(self, row: Row, column: int) -> Place:
        """Return the place of a cell, which may be blank."""
        return Place(self.table.name, row.number, column)

    def find(  # noqa: PLR0913 (a finding has so many parts)
        self,
        code: str,
        place: Place,
        found: str,
        wrong: str,
        mend: str,
        *,
        severity: Severity = Severity.ERROR,
    ) -> None:
        """Keep a finding."""
        self.findings.append(Finding(code, severity, place, found, wrong, mend))

    def count(self, row: Row, column: int) -> int | None:
        """Return the whole number in a cell, or None where it is blank or something else."""
        text = row.text(column)
        if not text or self._doubted(row, column):
            return None
        number = _NUMBER.fullmatch(text)
        # 1,000 is a thousand or one, as the country is
        is_plain = number and not number[1] and len(number[3] or "") != _THOUSANDS
        if number and is_plain and not (number[3] or "").strip("0"):
            return int(number[2])
        place = self.place(row, column)
        negative = number and number[1] and (int(number[2]) or (number[3] or "").strip("0"))
        wrong = "A count cannot be less than 0." if negative else f"{quoted(text)} is no count."
        self.find("not-a-count", place, text, wrong, "Write a whole number, 0 or more.")
        return None

    def mark(self, row: Row, column: int) -> int | None:
        """Return the mark in a cell, 1 or 0, or None where it is blank or something else."""
        text = row.text(column)
        if not text or self._doubted(row, column):
            return None
        number = _NUMBER.fullmatch(text)
        if number and not number[1] and not (number[3] or "").strip("0"):
            text = str(int(number[2]))
        if text in _MARKS:
            return _MARKS[text]
        self.find(
            "not-a-mark",
            self.place(row, column),
            text,
            f"{quoted(text)} is no mark.",
            "Write 1 if it is right, 0 if not, and nothing where it was not marked.",
        )
        return None

    def _doubted(self, row: Row, column: int) -> bool:
        """Say whether a cell holds no number of its own, but what a formula or a merge left."""
        place, text = self.place(row, column), row.text(column)
        doubt = self.table.doubts.get(place)
        if doubt not in _NO_NUMBER:
            return False
        code, wrong, mend = _NO_NUMBER[doubt]
        self.find(code, place, text, wrong.format(quoted(text)), mend)
        return True


def sums_up(name: str) -> bool:
    """Say whether a row of this name sums up the rows above it."""
    return is_among(name, _SUMS)


def plain_label(text: str) -> str:
    """Return a label as it is compared: `Card 7` and `7.0` are 7."""
    bare = re.sub(r"(?i)^(?:(?:card|paper)(?![a-z])\s*|no\.?\s*(?=\d))", "", " ".join(text.split()))
    return re.sub(r"^(\d+)[.,]0+$", r"\1", bare)


def rows_below(table: Table, row: int) -> Iterator[Row]:
    """Yield the rows below one of a number."""
    return (each for each in table.rows if each.number > row)


def titled_otherwise(table: Table, title: str, number: int) -> tuple[Cell, str] | None:
    """Return the title of a sheet that was made for another deck, with that deck's number.

    `number` is the number that it ought to have; a sheet without its title has lost it.
    """
    cell = next((cell for row in table.rows for cell in row.cells.values()), None)
    found = re.fullmatch(rf"{title}: .* · deck (\d{{1,5}})", cell.text, re.DOTALL) if cell else None
    return (cell, found[1]) if cell and found and int(found[1]) != number else None
