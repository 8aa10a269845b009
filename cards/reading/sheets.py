"""What each sheet of a workbook is for."""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import StrEnum

from cards.item import Kind
from cards.reading.heading_row import Headings, headings_of
from cards.reading.headings import Role, key, role_of
from cards.reading.table import Table

_KIND_NAMES = {
    "vocabulary": Kind.VOCABULARY,
    "vocab": Kind.VOCABULARY,
    "fact": Kind.FACT,
    "question": Kind.QUESTION,
    "detail": Kind.DETAIL,
}


class Purpose(StrEnum):
    """What a sheet is for."""

    CONTENT = "content"
    TEAMS = "teams"
    DECK = "deck"
    EXERCISES = "exercises"
    UNKNOWN = "unknown"


_PURPOSE_NAMES = {
    "team": Purpose.TEAMS,
    "group": Purpose.TEAMS,
    "deck": Purpose.DECK,
    "setting": Purpose.DECK,
    "decksetting": Purpose.DECK,
    "exercise": Purpose.EXERCISES,
}
_PURPOSE_HEADINGS = (
    ({Role.SETTING, Role.VALUE}, Purpose.DECK),
    ({Role.TEAM, Role.COLOUR}, Purpose.TEAMS),
)


@dataclass(frozen=True, slots=True)
class Sheet:
    """A table, what it is for, its headings if it has any, and the kind that its name tells."""

    table: Table
    purpose: Purpose
    headings: Headings | None = None
    kind: Kind | None = None


def sheets_of(tables: Sequence[Table]) -> tuple[Sheet, ...]:
    """Tell what each table is for.

    Where no sheet has headings or a name that make it content, those of an unknown name are: all
    that hold pairs, or else all. A table that is alone is content whatever its name.
    """
    if len(tables) == 1:
        return (_alone(tables[0]),)
    sheets = tuple(_sheet(table) for table in tables)
    if any(sheet.purpose is Purpose.CONTENT for sheet in sheets):
        return sheets
    unknown = [sheet for sheet in sheets if sheet.purpose is Purpose.UNKNOWN]
    content = [sheet for sheet in unknown if _holds_pairs(sheet.table)] or unknown
    return tuple(
        replace(sheet, purpose=Purpose.CONTENT) if sheet in content else sheet for sheet in sheets
    )


def _holds_pairs(table: Table) -> bool:
    """Say whether at least half of the rows have two cells or more."""
    return 2 * sum(len(row.cells) > 1 for row in table.rows) >= len(table.rows)


def _alone(table: Table) -> Sheet:
    purpose = _purpose_by_headings(table)
    kind = kind_named(table.title)
    return Sheet(table, purpose or Purpose.CONTENT, headings_of(table), kind)


def _sheet(table: Table) -> Sheet:
    headings = headings_of(table)
    kind = kind_named(table.title)
    special = _PURPOSE_NAMES.get(_singular(table.title)) or _purpose_by_headings(table)
    if headings and headings.complete and special is not Purpose.EXERCISES:
        return Sheet(table, Purpose.CONTENT, headings, kind)
    if special:
        return Sheet(table, special)
    return Sheet(table, Purpose.CONTENT if kind else Purpose.UNKNOWN, headings, kind)


def kind_named(title: str) -> Kind | None:
    """Return the kind that one of the words of a sheet's name tells, as in "Week 3 facts"."""
    kinds = {_KIND_NAMES.get(_singular(word)) for word in title.split()} - {None}
    return kinds.pop() if len(kinds) == 1 else None


def _purpose_by_headings(table: Table) -> Purpose | None:
    if not table.rows:
        return None
    roles = {role_of(cell.text) for cell in table.rows[0].cells.values()}
    return next((purpose for needed, purpose in _PURPOSE_HEADINGS if needed <= roles), None)


def _singular(name: str) -> str:
    return key(name).removesuffix("s")
