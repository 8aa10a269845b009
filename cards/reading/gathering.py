"""The tables of a file become its content."""

from collections.abc import Sequence
from pathlib import Path, PurePath

from msgspec.structs import replace

from cards.content import LONGEST_CELL, Content
from cards.finding import Finding, Severity, UnusableFileError, errors_in
from cards.item import Item
from cards.place import Place
from cards.reading.beside import beside_content
from cards.reading.choices import with_the_right
from cards.reading.columns import BACKS, columns_of
from cards.reading.heading_row import Headings
from cards.reading.items import items_of
from cards.reading.limits import (
    LAST_COLUMN,
    LAST_ROW,
    MOST_CHARACTERS,
    too_large,
    too_long,
)
from cards.reading.pictures import illustrated
from cards.reading.pictures.pasted import Pasted
from cards.reading.plain import (
    cells_beyond,
    extra_field,
    heading_rows,
    plain_columns,
    plain_findings,
)
from cards.reading.running import without_running
from cards.reading.sheets import Purpose, Sheet, sheets_of
from cards.reading.table import Table
from cards.reading.turned import lies_on_its_side, on_its_side

Found = tuple[tuple[Item, ...], tuple[Finding, ...]]


def gathered(
    name: str, tables: Sequence[Table], findings: Sequence[Finding], folder: Path | None = None
) -> Content:
    """Gather the content of the tables of the file `name`; `findings` are those of reading it.

    Pictures named in cells are looked for in the `folder`, if there is one.
    Raises `UnusableFileError` if no table holds an item, or they hold far too much text.
    """
    if any(map(_is_beyond, tables)) or sum(map(_characters, tables)) > MOST_CHARACTERS:
        raise too_large(name)
    for table in tables:
        _refuse_long_cells(table)
    sheets = sheets_of(tables)
    found = [_read_sheet(sheet) for sheet in sheets]
    items = tuple(item for some, _ in found for item in some)
    items, about_pictures = illustrated(items, _pasted(tables), folder)
    findings = (*findings, *(finding for _, some in found for finding in some), *about_pictures)
    if not items:
        raise UnusableFileError(_nothing(name, findings))
    beside = beside_content(sheets)
    return Content(
        PurePath(name).stem,
        items,
        beside.teams,
        beside.settings,
        (*findings, *beside.findings),
        folder,
        beside.exercises,
    )


def _refuse_long_cells(table: Table) -> None:
    for row in table.rows:
        for cell in row.cells.values():
            if len(cell.text) > LONGEST_CELL:
                raise too_long(cell)


def _is_beyond(table: Table) -> bool:
    return any(row.number > LAST_ROW or max(row.cells) > LAST_COLUMN for row in table.rows)


def _characters(table: Table) -> int:
    return sum(len(cell.text) for row in table.rows for cell in row.cells.values())


def _pasted(tables: Sequence[Table]) -> dict[tuple[str, int], list[Pasted]]:
    rows: dict[tuple[str, int], list[Pasted]] = {}
    for table in tables:
        for one in table.pictures:
            rows.setdefault((table.name, one.place.row), []).append(one)
    return rows


def _read_sheet(sheet: Sheet) -> Found:
    if sheet.purpose is Purpose.UNKNOWN:
        return (), (_left_out(sheet.table),)
    if sheet.purpose is not Purpose.CONTENT or not sheet.table.rows:
        return (), ()
    if lies_on_its_side(sheet.table, sheet.headings):
        return (), (on_its_side(sheet.table),)
    if sheet.headings is None:
        return _read_plain(sheet)
    return _read_headed(sheet, sheet.headings)


def _read_plain(sheet: Sheet) -> Found:
    columns, start = plain_columns(sheet.table, sheet.kind), heading_rows(sheet.table)
    table, unnumbered = without_running(sheet.table, columns, start=start)
    items, findings = items_of(table, columns, start=start)
    return items, (*unnumbered, *findings, *plain_findings(table, columns))


def _read_headed(sheet: Sheet, headings: Headings) -> Found:
    last = max(sheet.table.rows[headings.index].cells)
    columns = columns_of(headings.roles, last=last, kind=sheet.kind)
    if columns is None:
        return (), (_half_a_card(sheet.table, headings),)
    table, start = sheet.table, headings.index + 1
    unclear: tuple[Finding, ...] = ()
    if headings.choices:
        table, unclear = with_the_right(table, headings.choices, start=start)
        columns = replace(columns, whole=frozenset(headings.choices.columns.values()))
    table, unnumbered = without_running(table, columns, start=start)
    items, findings = items_of(table, columns, start=start)
    extra = cells_beyond(table, last, start=start) if table.delimited else ()
    return items, (*headings.findings, *unclear, *unnumbered, *findings, *map(extra_field, extra))


def _left_out(table: Table) -> Finding:
    return Finding(
        "sheet-left-out",
        Severity.NOTE,
        Place(table.name),
        "",
        "This sheet has no headings that make cards and was left out.",
        "To use it, put two headings above its columns, such as Prompt and Answer.",
    )


def _half_a_card(table: Table, headings: Headings) -> Finding:
    has_back = bool(BACKS & set(headings.roles.values()))
    wanted = "Prompt, Question or Meaning" if has_back else "Answer or Word"
    return Finding(
        "missing-heading",
        Severity.ERROR,
        Place(table.name, table.rows[headings.index].number),
        "",
        f"No column is headed {wanted}, so the rows below make no cards.",
        "Put the heading above the column that it belongs to, or add such a column.",
    )


def _nothing(name: str, findings: Sequence[Finding]) -> str:
    errors = errors_in(findings)
    if errors:
        return str(errors[0])
    hidden = [finding for finding in findings if finding.code.startswith("hidden")]
    if hidden:
        return f"{name} holds nothing that makes a card. {hidden[0]}"
    return (
        f"{name} holds nothing that makes a card. "
        "Put prompts and answers below the headings Prompt and Answer, and save it."
    )
