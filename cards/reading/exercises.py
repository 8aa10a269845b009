"""The Exercises sheet."""

from collections.abc import Iterator, Mapping

from cards.content import ExerciseRow
from cards.reading.headings import key, keys_of
from cards.reading.table import Row, Table

_COLUMNS: Mapping[str, str] = {
    "name": "exercise, activity, movement, move, name",
    "how_many": "how many, how often, count, times, number, how long, reps, repetitions",
    "gentler": "gentler option, gentler, option, easier option, easier, gentle option, instead",
    "effort": "effort, how hard, level, intensity",
}
_FORMS = {form: column for column, words in _COLUMNS.items() for form in keys_of(words)}
_IN_ORDER = {name: number for number, name in enumerate(_COLUMNS, start=1)}
# How far down, in rows that are not blank, headings with more than the name go before it alone.
_DEPTH = 10
_SEVERAL = 2


def exercise_rows(table: Table) -> Iterator[ExerciseRow]:
    """Yield the exercises of a sheet: by its headings, or from A to D in the usual order."""
    columns, start = _columns(table)
    for row in table.rows[start:]:
        cells = {name: row.cells.get(column) for name, column in columns.items()}
        name = cells["name"]
        if name:
            yield ExerciseRow(
                name, cells.get("how_many"), cells.get("gentler"), cells.get("effort")
            )


def _columns(table: Table) -> tuple[Mapping[str, int], int]:
    """Return the columns and how many rows stand above the exercises.

    A title may say what the heading of the names says, and what they are called may be unknown.
    """
    headed = [(_found(row), index) for index, row in enumerate(table.rows)]
    several = next((one for one in headed[:_DEPTH] if len(one[0]) >= _SEVERAL), None)
    columns, index = several or next((one for one in headed if "name" in one[0]), ({}, -1))
    if columns and "name" not in columns:
        others = table.rows[index].cells.keys() - columns.values()
        columns = {"name": min(others)} | columns if others else {}
    if not columns:
        return _IN_ORDER, 0
    if len(table.rows[index].cells) == 1:
        return {name: at + columns["name"] - 1 for name, at in _IN_ORDER.items()}, index + 1
    return columns, index + 1


def _found(row: Row) -> dict[str, int]:
    columns: dict[str, int] = {}
    for number, cell in sorted(row.cells.items(), reverse=True):
        bare = key(cell.text)
        name = _FORMS.get(bare) or _FORMS.get(bare.removesuffix("s"))
        if name:
            columns[name] = number
    return columns
