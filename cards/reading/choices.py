"""Choices in columns of their own, and a column that says which of them is right."""

import re
from collections.abc import Mapping

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.item import folded
from cards.quoting import quoted
from cards.reading.columns import FRONTS, pair_of
from cards.reading.headings import key, keys_of, role_of, roles_in
from cards.reading.role import Role
from cards.reading.table import Row, Table
from cards.reading.wordings import CHOICES, RIGHT_CHOICE

_MARKS = ("abcdefgh", "12345678")
_MARKED = re.compile(r"(.*?)([a-h1-8])")
_CHOICES = frozenset(keys_of(CHOICES))
_RIGHT = frozenset(keys_of(RIGHT_CHOICE))
_LEAST = 2
_PLAINLY = 3
"""So many columns headed A, B, C are choices, even where none says which is right."""


class Choices(Struct, frozen=True):
    """The columns of the choices by their letters or numbers, and that of the right one's, if any.

    Where no column says which is right, the choices make no cards.
    """

    columns: Mapping[str, int]
    right: int | None

    @property
    def roles(self) -> dict[int, Role]:
        """What the columns hold: the right choice takes the place of its letter."""
        roles = dict.fromkeys(self.columns.values(), Role.WRONG)
        return roles | ({self.right: Role.ANSWER} if self.right else {})


def choices_of(headings: Row) -> Choices | None:
    """Return the choices that a row of headings names, or None if it names none.

    They are headed A, B, C or 1, 2, 3, or Choice A and the like, from the first on; another column
    says which is right, and another again what is asked.
    """
    columns = _marked(headings)
    others = {column: cell for column, cell in headings.cells.items() if column not in columns}
    known = roles_in(others)
    right = [
        column
        for column, cell in others.items()
        if known.get(column) is Role.ANSWER or key(cell.text) in _RIGHT
    ]
    if not columns or FRONTS.isdisjoint(known.values()):
        return None
    if not right and (len(columns) < _PLAINLY or pair_of(known) or _are_answers(headings, columns)):
        return None
    return Choices({mark: column for column, mark in columns.items()}, next(iter(right), None))


def _are_answers(headings: Row, columns: Mapping[int, str]) -> bool:
    """Say whether the headings are such as Answer 1 and Answer 2, which may all be right."""
    return any(role_of(key(headings.text(c))[:-1]) is Role.ANSWER for c in columns)


def _marked(headings: Row) -> dict[int, str]:
    """Return the most columns that are headed alike but for their marks, which leave none out."""
    found: dict[str, dict[int, str]] = {}
    for column, cell in headings.cells.items():
        parted = _parted(cell.text)
        if parted:
            word, mark = parted
            found.setdefault(word, {})[column] = mark
    whole = [columns for columns in found.values() if _leave_none_out(list(columns.values()))]
    return max(whole, key=len, default={})


def _parted(text: str) -> tuple[str, str] | None:
    """Return the word and the mark of `Choice A` or `a)`, or None for what names no choice."""
    match = _MARKED.fullmatch(key(text))
    if not match or (match[1] and match[1] not in _CHOICES):
        return None
    return match[1], match[2]


def _leave_none_out(marks: list[str]) -> bool:
    some = "".join(sorted(marks))
    return len(some) >= _LEAST and any(all_marks.startswith(some) for all_marks in _MARKS)


def with_the_right(
    table: Table, choices: Choices, *, start: int
) -> tuple[Table, tuple[Finding, ...]]:
    """Put the right choice in the place of its letter, in the rows from index `start` on.

    A cell that names no choice, or two, is left as it is, with a finding.
    """
    right = choices.right or 0
    rows, findings = list(table.rows[:start]), []
    for row in table.rows[start:]:
        letter = row.cells.get(right)
        named = _named(row, letter, choices) if letter else set()
        if letter and len(named) != 1:
            findings.append(_unclear(letter, choices, named))
        rows.append(_answered(row, named.pop(), right) if len(named) == 1 else row)
    return replace(table, rows=tuple(rows)), tuple(findings)


def _named(row: Row, letter: Cell, choices: Choices) -> set[int]:
    """Return the columns of the choices that a cell names, by letter or number or very words."""
    named = {
        column
        for column in choices.columns.values()
        if column in row.cells and folded(row.text(column)) == folded(letter.text)
    }
    parted = _parted(letter.text)
    if parted:
        named |= {choices.columns.get(parted[1], 0)} & set(row.cells)
    return named


def _answered(row: Row, column: int, right: int) -> Row:
    cells = {at: cell for at, cell in row.cells.items() if at != column}
    return Row(row.number, dict(sorted((cells | {right: row.cells[column]}).items())))


def _unclear(letter: Cell, choices: Choices, named: set[int]) -> Finding:
    first, *_, last = (mark.upper() for mark in choices.columns)
    many = "more than one" if named else "none"
    return Finding(
        "right-choice-unclear",
        Severity.ERROR,
        letter.place,
        letter.text,
        f"{quoted(letter.text)} names {many} of the choices in this row.",
        "Write the very words of the right choice."
        if named
        else f"Write which choice is right, {first} to {last}, or its very words.",
    )
