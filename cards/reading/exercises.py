"""The Exercises sheet."""

from collections.abc import Iterator, Mapping

from cards.content import ExerciseRow
from cards.reading.headings import key, keys_of
from cards.reading.table import Row, Table

_COLUMNS: Mapping[str, str] = {
    "name": "exercise, activity, movement, name",
    "how_many": "how many, how often, count, times, number, how long",
    "gentler": "gentler option, gentler, option, easier option, easier, gentle option, instead",
    "effort": "effort, how hard, level, intensity",
}
_FORMS = {form: column for column, words in _COLUMNS.items() for form in keys_of(words)}
_IN_ORDER = {name: number for number, name in enumerate(_COLUMNS, start=1)}


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
    for index, row in enumerate(table.rows):
        found = _found(row)
        if "name" in found:
            return found, index + 1
    return _IN_ORDER, 0


def _found(row: Row) -> dict[str, int]:
    columns: dict[str, int] = {}
    for number, cell in sorted(row.cells.items(), reverse=True):
        bare = key(cell.text)
        name = _FORMS.get(bare) or _FORMS.get(bare.removesuffix("s"))
        if name:
            columns[name] = number
    return columns
