"""The sheets beside the content: teams, settings, exercises."""

from collections.abc import Callable, Collection, Iterable, Iterator, Sequence
from typing import TypeVar

from msgspec import Struct
from msgspec.structs import astuple, replace

from cards.content import Cell, ExerciseRow, SettingRow, TeamRow
from cards.finding import Finding
from cards.reading.doubts import cell_doubt
from cards.reading.exercises import exercise_rows
from cards.reading.settings import setting_doubts, setting_rows
from cards.reading.sheets import Purpose, Sheet
from cards.reading.table import UNREADABLE, Doubt, Row, Table
from cards.reading.teams import team_doubts, team_rows

_RowT = TypeVar("_RowT", TeamRow, SettingRow, ExerciseRow)
_Reader = Callable[[Table], Iterable[_RowT]]


class Beside(Struct, frozen=True):
    """What the sheets beside the content say, and what was found on them."""

    teams: tuple[TeamRow, ...]
    settings: tuple[SettingRow, ...]
    exercises: tuple[ExerciseRow, ...]
    findings: tuple[Finding, ...]


def beside_content(sheets: Sequence[Sheet]) -> Beside:
    """Read the sheets beside the content; formulas that come to nothing are not read."""
    teams, decks, exercises = (
        [sheet.table for sheet in sheets if sheet.purpose is purpose]
        for purpose in (Purpose.TEAMS, Purpose.DECK, Purpose.EXERCISES)
    )
    # of dates as settings whoever reads the settings knows more
    doubts = (
        *_doubts(teams, team_rows),
        *_doubts(decks, setting_rows, UNREADABLE | {Doubt.STRUCK}),
        *_doubts(exercises, exercise_rows),
    )
    return Beside(
        _rows(teams, team_rows),
        _rows(decks, setting_rows),
        _rows(exercises, exercise_rows),
        (*team_doubts(teams), *setting_doubts(decks), *doubts),
    )


def _rows(tables: Iterable[Table], read: _Reader[_RowT]) -> tuple[_RowT, ...]:
    return tuple(row for table in tables for row in read(_readable(table)))


def _readable(table: Table) -> Table:
    """Return a table without the cells whose formulas come to nothing."""
    bad = {place for place, doubt in table.doubts.items() if doubt in UNREADABLE}
    if not bad:
        return table
    kept = (
        Row(row.number, {at: cell for at, cell in row.cells.items() if cell.place not in bad})
        for row in table.rows
    )
    return replace(table, rows=tuple(row for row in kept if row.cells))


def _doubts(
    tables: Iterable[Table], read: _Reader[_RowT], about: Collection[Doubt] = tuple(Doubt)
) -> Iterator[Finding]:
    """Yield what may be amiss with the cells that are read."""
    for table in tables:
        for cell in (one for row in read(table) for one in astuple(row) if isinstance(one, Cell)):
            doubt = table.doubts.get(cell.place)
            if doubt and doubt in about:
                yield from cell_doubt(cell, doubt)
