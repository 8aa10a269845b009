"""What the formulas of a workbook come to.

The library writes a formula without its result, so that the copy would have to be opened and saved
in a spreadsheet program before it could be read.
"""

import re
from collections.abc import Iterator, Mapping
from datetime import date, time, timedelta
from typing import Any
from xml.sax.saxutils import escape

from openpyxl import Workbook
from openpyxl.utils.datetime import to_excel

from cards.reading.sheet import cells_of
from cards.workbook.package import Edit

Results = Mapping[str, Mapping[str, tuple[str, str]]]
"""By the name of a sheet and a cell: the type of its result, and the result as the file says it."""

_FORMULA, _EMPTY_TEXT = "f", "str"
_WRITTEN = re.compile(
    rb'<c r="([A-Z]+[0-9]+)"([^>]*)>(<f\b(?:[^>]*/>|[^>]*>[^<]*</f>))(?:<v ?/>|<v></v>)'
)
_PART = re.compile(r"xl/worksheets/sheet([0-9]+)\.xml")


def results_of(book: Workbook, stored: Workbook) -> Results:
    """Return the results of a workbook's formulas; `stored` is the same with results for them."""
    return {
        sheet.title: {
            cell.coordinate: _said(stored[sheet.title][cell.coordinate], stored.epoch)
            for cell in _formulas(sheet)
        }
        for sheet in book.worksheets
    }


def _formulas(sheet: Any) -> Iterator[Any]:  # noqa: ANN401 (openpyxl's cells have no common type)
    return (cell for cell in cells_of(sheet).values() if cell.data_type == _FORMULA)


def _said(cell: Any, epoch: Any) -> tuple[str, str]:  # noqa: ANN401 (as in _formulas)
    value = cell.value
    if value is None:
        return ("str", "") if cell.data_type == _EMPTY_TEXT else ("", "")
    if isinstance(value, bool):
        return "b", str(int(value))
    if isinstance(value, str):
        return ("e" if cell.data_type == "e" else "str"), value
    if isinstance(value, date | time | timedelta):
        return "n", repr(to_excel(value, epoch))  # type: ignore[no-untyped-call]
    return "n", repr(value)


def putting(results: Results, names: list[str]) -> Edit:
    """Return the edit that puts the results in; `names` are those of the sheets, left to right."""

    def edit(part_name: str, part: bytes) -> bytes:
        number = _PART.fullmatch(part_name)
        known = results.get(names[int(number[1]) - 1], {}) if number else {}
        return _WRITTEN.sub(lambda found: _with_result(found, known), part) if known else part

    return edit


def _with_result(found: re.Match[bytes], known: Mapping[str, tuple[str, str]]) -> bytes:
    kind, text = known.get(found[1].decode(), ("", ""))
    if not kind:
        return found[0]
    value = escape(text).encode()
    return b'<c r="%s"%s t="%s">%s<v>%s</v>' % (found[1], found[2], kind.encode(), found[3], value)
