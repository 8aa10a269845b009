"""What each sheet of a workbook is for."""

import re
from collections.abc import Mapping, Sequence
from enum import StrEnum
from typing import TypeVar

from msgspec import Struct
from msgspec.structs import replace

from cards.item import Kind
from cards.reading.columns import pair_of
from cards.reading.heading_row import Headings, headings_of
from cards.reading.headings import key, keys_of, role_of
from cards.reading.role import Role
from cards.reading.table import Table
from cards.reading.wordings import DECK_SHEETS, EXERCISE_SHEETS, KINDS, TEAM_SHEETS

_T = TypeVar("_T")


class Purpose(StrEnum):
    """What a sheet is for."""

    CONTENT = "content"
    TEAMS = "teams"
    DECK = "deck"
    EXERCISES = "exercises"
    UNKNOWN = "unknown"


_PURPOSE_NAMES = {
    form: purpose
    for purpose, words in (
        (Purpose.TEAMS, TEAM_SHEETS),
        (Purpose.DECK, DECK_SHEETS),
        (Purpose.EXERCISES, EXERCISE_SHEETS),
    )
    for form in keys_of(words)
}
_KIND_NAMES = {
    form: kind
    for kinds in KINDS.values()
    for kind, words in kinds.items()
    for form in keys_of(words)
}
# The sheets that we write to be read by people bear these names and begin with our own.
_OUR_NAMES = re.compile(r"(start here|findings)( \d+)?", re.IGNORECASE)
_OUR_FIRST_WORD = "Fairdeal"
_PURPOSE_HEADINGS = (
    ({Role.SETTING, Role.VALUE}, Purpose.DECK),
    ({Role.TEAM, Role.COLOUR}, Purpose.TEAMS),
)


# What no list of exercises has; a name and a description one may have.
_PLAINLY_CARDS = frozenset(
    {(Role.QUESTION, Role.ANSWER), (Role.PROMPT, Role.ANSWER), (Role.MEANING, Role.WORD)}
)


class Sheet(Struct, frozen=True):
    """A table, what it is for, its headings if it has any, and the kind that its name tells."""

    table: Table
    purpose: Purpose
    headings: Headings | None = None
    kind: Kind | None = None


def sheets_of(tables: Sequence[Table]) -> tuple[Sheet, ...]:
    """Tell what each table is for.

    Where no sheet has headings or a name that make it content, those of an unknown name are: all
    that hold pairs, or else all. A table that is alone is content whatever its name. The sheets
    that we write ourselves, to explain or to tell what was found, do not count.
    """
    theirs = [table for table in tables if not _is_ours(table)]
    if len(theirs) == 1:
        return (_alone(theirs[0]),)
    return _weighed(tuple(_sheet(table) for table in theirs))


def _is_ours(table: Table) -> bool:
    first = next((cell.text for row in table.rows for cell in row.cells.values()), "")
    return is_ours(table.title, first)


def is_ours(title: str, first: str) -> bool:
    """Say whether we wrote a sheet of this title, whose first text is `first`, for people only."""
    return bool(_OUR_NAMES.fullmatch(title.strip())) and first.startswith(_OUR_FIRST_WORD)


def _weighed(sheets: tuple[Sheet, ...]) -> tuple[Sheet, ...]:
    """Make sheets of an unknown name content where there is no other content."""
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
    special = _named(_PURPOSE_NAMES, table.title) or _purpose_by_headings(table)
    if headings and headings.complete and _are_of_cards(headings, special):
        return Sheet(table, Purpose.CONTENT, headings, kind)
    if special:
        return Sheet(table, special)
    return Sheet(table, Purpose.CONTENT if kind else Purpose.UNKNOWN, headings, kind)


def _are_of_cards(headings: Headings, special: Purpose | None) -> bool:
    """Say whether headings that make cards mean to, on a sheet that may be for something else."""
    return special is not Purpose.EXERCISES or pair_of(headings.roles) in _PLAINLY_CARDS


def kind_named(title: str) -> Kind | None:
    """Return the kind that one of the words of a sheet's name tells, as in "Week 3 facts"."""
    kinds = {_named(_KIND_NAMES, word) for word in title.split()} - {None}
    return kinds.pop() if len(kinds) == 1 else None


def _purpose_by_headings(table: Table) -> Purpose | None:
    if not table.rows:
        return None
    roles = {role_of(cell.text) for cell in table.rows[0].heading_cells().values()}
    return next((purpose for needed, purpose in _PURPOSE_HEADINGS if needed <= roles), None)


def _named(names: Mapping[str, _T], name: str) -> _T | None:
    bare = key(name)
    return names.get(bare) or names.get(bare.removesuffix("s"))
