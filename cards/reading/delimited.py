"""Delimited text: CSV and TSV, in the encodings and with the delimiters that schools have."""

import re
from codecs import BOM_UTF8, BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Iterator, Sequence
from pathlib import PurePath

from cards.content import Cell
from cards.finding import UnusableFileError
from cards.place import Place
from cards.reading.delimiter import delimiter_named, delimiter_of
from cards.reading.error_values import is_error_value
from cards.reading.limits import MOST_CELLS, MOST_ROWS, too_many_cells, too_many_rows
from cards.reading.records import Record, read_records
from cards.reading.table import Doubt, Row, Table, clean, rows_of

_BLANKS = " \t,;"
_KEPT_AS_TEXT = re.compile(r'="((?:[^"]|"")*)"')
_GUESS = "cp1252"
_END_OF_FILE = "\x1a"  # as DOS programs put it
_LONGEST_LINE = 1_000_000
# So many records tell how fields usually begin.
_FEW = 4
# what spreadsheet programs leave of a column that is too narrow
_TOO_NARROW = re.compile(r"#{6,}")

# what they make of 1/2, of mar5 and of a number of twelve digits or more (common practice)
_MONTHS = "Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec"
_CHANGED = re.compile(rf"\d{{1,2}}-(?:{_MONTHS})|(?:{_MONTHS})-\d\d|\d(?:[.,]\d+)?E\+1[1-5]")
# those that no long number becomes: a column with such has powers of ten
_POWER = re.compile(r"\d(?:[.,]\d+)?E(?:-\d+|\+?(?:0?\d|1[06-9]|[2-9]\d))")


def read_delimited(data: bytes, name: str) -> Table:
    """Read delimited text into one table; `name` is the file's name.

    Records are numbered as a spreadsheet numbers its rows: blank lines count, line breaks between
    quotes do not. Raises `UnusableFileError` if the bytes are no text or a quote is not closed.
    """
    decoded, is_guessed = _decoded(data, name)
    text = _bounded(decoded, name)
    if not text:
        return Table(name, PurePath(name).stem, (), delimited=True)
    delimiter, start = delimiter_named(text)
    if not delimiter:
        delimiter = "\t" if name.lower().endswith(".tsv") and "\t" in text else delimiter_of(text)
    doubts: dict[Place, Doubt] = {}
    records = read_records(text, delimiter, name, start)
    rows = rows_of(_cells(records, name, doubts))
    doubts = dict.fromkeys(_changed(rows), Doubt.CHANGED) | doubts
    guessed = _beyond_ascii(rows) if is_guessed else None
    if guessed:
        doubts[guessed] = Doubt.GUESSED
    return Table(name, PurePath(name).stem, rows, doubts, delimited=True)


def _decoded(data: bytes, name: str) -> tuple[str, bool]:
    """Decode by the byte order mark, else as UTF-8, else as Windows Western (code page 1252).

    The last is a guess, which is told: to judge by the letters goes wrong on files as short as
    these.
    """
    if data.startswith((BOM_UTF16_LE, BOM_UTF16_BE)):
        encodings = ["utf-16"]
    elif data.startswith(BOM_UTF8):
        encodings = ["utf-8-sig"]
    else:
        encodings = ["utf-8", _GUESS]
    for encoding in encodings:
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        if "\0" not in text:
            return text.removesuffix(_END_OF_FILE), encoding == _GUESS
    raise UnusableFileError(
        f"{name} does not hold readable text. "
        "Open it in your spreadsheet program and save it as “CSV UTF-8” or .xlsx."
    )


def _beyond_ascii(rows: Sequence[Row]) -> Place | None:
    """Return the place of the first cell below the first row that has more than ASCII."""
    cells = (cell for row in rows[1:] for cell in row.cells.values())
    return next((cell.place for cell in cells if not cell.text.isascii()), None)


def _bounded(text: str, name: str) -> str:
    """Return a text with plain line breaks and without the blank records at its end.

    Raises `UnusableFileError` if one of its lines is too long.
    """
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    while lines and not lines[-1].strip(_BLANKS):
        lines.pop()
    if max(map(len, lines), default=0) > _LONGEST_LINE:
        raise UnusableFileError(
            f"{name} has a line of more than {_LONGEST_LINE:,} characters, so it is no table. "
            "Open it in your spreadsheet program and save it as .xlsx."
        )
    return "\n".join(lines)


def _cells(records: Iterator[Record], name: str, doubts: dict[Place, Doubt]) -> Iterator[Cell]:
    rows = cells = 0
    shifted: list[Place] = []
    for row, record in enumerate(records, start=1):
        filled = [(column, field) for column, field in enumerate(record.fields, start=1) if field]
        rows += bool(filled)
        cells += len(filled)
        if rows > MOST_ROWS:
            raise too_many_rows(name)
        if cells > MOST_CELLS:
            raise too_many_cells(name)
        if record.is_torn and filled:
            doubts[Place(name, row, filled[0][0])] = Doubt.TORN
        if record.shifted:
            shifted.append(Place(name, row, record.shifted + 1))
        for column, field in filled:
            if is_error_value(field):
                doubts[Place(name, row, column)] = Doubt.ERROR_VALUE
            if _TOO_NARROW.fullmatch(field):
                doubts[Place(name, row, column)] = Doubt.TOO_NARROW
            yield Cell(clean(_shown(field)), Place(name, row, column))
    if rows >= _FEW and 2 * len(shifted) < rows:
        doubts.update(dict.fromkeys(shifted, Doubt.SHIFTED))


def _changed(rows: Sequence[Row]) -> Iterator[Place]:
    """Yield the places of texts that were changed; a column of which they are half means dates."""
    columns: dict[int, list[Place]] = {}
    for row in rows:
        for column, cell in row.cells.items():
            if _CHANGED.fullmatch(cell.text):
                columns.setdefault(column, []).append(cell.place)
    for column, places in columns.items():
        powers = any(_POWER.fullmatch(row.text(column)) for row in rows)
        if 2 * len(places) < len(rows) and not powers:
            yield from places


def _shown(field: str) -> str:
    """Return what a spreadsheet shows of a field: of the formula `="007"`, which keeps noughts."""
    kept = _KEPT_AS_TEXT.fullmatch(field)
    return kept[1].replace('""', '"') if kept else field
