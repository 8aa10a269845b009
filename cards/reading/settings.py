"""The Deck sheet."""

from collections.abc import Iterable, Iterator

from cards.content import SettingRow
from cards.finding import Finding, Severity
from cards.place import Place
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
    """Yield the sheets without a pair, and the values that have no setting beside them."""
    tables = tuple(tables)
    yield from map(_nothing_set, filter(_sets_nothing, tables))
    for first, second in pairs_of_all(tables, Role.SETTING, Role.VALUE):
        if second and not first:
            yield alone(second, "value has no setting", "Write the setting's name before it")


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
