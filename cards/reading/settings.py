"""The Deck sheet."""

from collections.abc import Iterable, Iterator

from cards.content import Cell, SettingRow
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from cards.reading.headings import key
from cards.reading.pairs import alone, columns_in, headings_with, pairs, pairs_of_all
from cards.reading.role import Role
from cards.reading.table import Doubt, Table


def setting_rows(table: Table) -> Iterator[SettingRow]:
    """Yield the settings of a Deck sheet that have a value: by its headings, or from A and B."""
    for first, second in pairs(table, Role.SETTING, Role.VALUE):
        if first and second:
            is_date = table.doubts.get(second.place) is Doubt.DATE
            yield SettingRow(first, second, is_date=is_date)


def setting_doubts(tables: Iterable[Table]) -> Iterator[Finding]:
    """Yield sheets without a pair, values without a setting, and settings that stand twice."""
    seen: dict[str, Cell] = {}
    tables = tuple(tables)
    yield from map(_nothing_set, filter(_sets_nothing, tables))
    for first, second in pairs_of_all(tables, Role.SETTING, Role.VALUE):
        if second and not first:
            yield alone(second, "value has no setting", "Write the setting's name before it")
        if first and second:
            earlier = seen.get(key(first.text))
            if earlier:
                yield _twice(first, earlier)
            seen[key(first.text)] = first


def _sets_nothing(table: Table) -> bool:
    """Say whether a sheet has several cells and no value; below both headings that may be meant."""
    headings = headings_with(table, Role.SETTING, Role.VALUE)
    is_form = headings is not None and Role.VALUE in columns_in(headings)
    several = sum(len(row.cells) for row in table.rows) > 1
    values = any(second for _, second in pairs(table, Role.SETTING, Role.VALUE))
    return several and not is_form and not values


def _nothing_set(table: Table) -> Finding:
    return Finding(
        "nothing-set",
        Severity.WARNING,
        Place(table.name),
        "",
        "This sheet is for settings, and none on it has a value in the next column, so nothing "
        "of it is read.",
        "Put the headings Setting and Value above two columns, each setting in the first and its "
        "value beside it.",
    )


def _twice(cell: Cell, earlier: Cell) -> Finding:
    return Finding(
        "setting-twice",
        Severity.WARNING,
        cell.place,
        cell.text,
        f"{quoted(cell.text)} stands in {_seen_from(cell.place, earlier.place)} too; this one "
        "counts.",
        "Delete one of the two rows.",
    )


def _seen_from(place: Place, other: Place) -> str:
    """Return where another place is: its cell, with its sheet if that is another too."""
    return other.cell if other.sheet == place.sheet else str(other)
