"""Delimited text: CSV and TSV, in the encodings and with the delimiters that schools have."""

import csv
import re
from codecs import BOM_UTF8, BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Iterator, Sequence
from pathlib import PurePath

from cards.content import Cell
from cards.finding import UnreadableFileError
from cards.place import Place
from cards.reading.delimiter import delimiter_named, delimiter_of, records_of
from cards.reading.limits import MOST_CELLS, MOST_ROWS, too_many_cells, too_many_rows
from cards.reading.table import Doubt, Row, Table, clean, rows_of

_Record = tuple[list[str], bool]

_BLANKS = " \t,;"
_KEPT_AS_TEXT = re.compile(r'="((?:[^"]|"")*)"')
_GUESS = "cp1252"
_LONGEST_LINE = 1_000_000
_END = "\0"
"""A record that no text holds: what has this character is refused."""


def read_delimited(data: bytes, name: str) -> Table:
    """Read delimited text into one table; `name` is the file's name.

    Records are numbered as a spreadsheet numbers its rows: blank lines count, line breaks between
    quotes do not. Raises `UnreadableFileError` if the bytes are no text or a quote is not closed.
    """
    decoded, is_guessed = _decoded(data, name)
    text = _bounded(decoded, name)
    if not text:
        return Table(name, PurePath(name).stem, (), delimited=True)
    delimiter, start = delimiter_named(text)
    if not delimiter:
        delimiter = "\t" if name.lower().endswith(".tsv") and "\t" in text else delimiter_of(text)
    doubts: dict[Place, Doubt] = {}
    records = _records(text, delimiter, name, start)
    rows = rows_of(_cells(records, name, doubts))
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
            return text, encoding == _GUESS
    raise UnreadableFileError(
        f"{name} does not hold readable text. "
        "Open it in your spreadsheet program and save it as “CSV UTF-8” or .xlsx."
    )


def _beyond_ascii(rows: Sequence[Row]) -> Place | None:
    """Return the place of the first cell below the first row that has more than ASCII."""
    cells = (cell for row in rows[1:] for cell in row.cells.values())
    return next((cell.place for cell in cells if not cell.text.isascii()), None)


def _bounded(text: str, name: str) -> str:
    """Return a text with plain line breaks and without the blank records at its end.

    Raises `UnreadableFileError` if one of its lines is too long.
    """
    lines = text.replace("\r\n", "\n").replace("\r", "\n").split("\n")
    while lines and not lines[-1].strip(_BLANKS):
        lines.pop()
    if max(map(len, lines), default=0) > _LONGEST_LINE:
        raise UnreadableFileError(
            f"{name} has a line of more than {_LONGEST_LINE:,} characters, so it is no table. "
            "Open it in your spreadsheet program and save it as .xlsx."
        )
    return "\n".join(lines)


def _cells(records: Iterator[_Record], name: str, doubts: dict[Place, Doubt]) -> Iterator[Cell]:
    rows = cells = 0
    for row, (record, is_torn) in enumerate(records, start=1):
        filled = [(column, field) for column, field in enumerate(record, start=1) if field]
        rows += bool(filled)
        cells += len(filled)
        if rows > MOST_ROWS:
            raise too_many_rows(name)
        if cells > MOST_CELLS:
            raise too_many_cells(name)
        if is_torn and filled:
            doubts[Place(name, row, filled[0][0])] = Doubt.TORN
        for column, field in filled:
            yield Cell(clean(_shown(field)), Place(name, row, column))


def _shown(field: str) -> str:
    """Return what a spreadsheet shows of a field: of the formula `="007"`, which keeps noughts."""
    kept = _KEPT_AS_TEXT.fullmatch(field)
    return kept[1].replace('""', '"') if kept else field


def _records(text: str, delimiter: str, name: str, begin: int) -> Iterator[_Record]:
    """Yield the fields of each record, and whether its quotes are astray on its one line.

    The first begins at the character `begin`. Raises `UnreadableFileError` if a quotation mark is
    not closed, or only lines below.
    """
    lines, start = text.split("\n"), text.count("\n", 0, begin)
    try:
        for record in records_of(f"{text[begin:]}\n{_END}", delimiter):
            if record == [_END]:
                return
            end = start + 1 + sum(field.count("\n") for field in record)
            if end > len(lines):
                break
            is_torn = _is_torn(lines[start:end], delimiter)
            if is_torn and end - start > 1:
                raise UnreadableFileError(_astray(name, start + 1))
            yield record, is_torn
            start = end
    except csv.Error as error:
        raise UnreadableFileError(_unclosed(text, name, start + 1)) from error
    # A quotation mark that is never closed takes in all that follows.
    raise UnreadableFileError(_unclosed(text, name, start + 1))


def _is_torn(lines: Sequence[str], delimiter: str) -> bool:
    """Say whether something else than a delimiter follows the quote at the end of a field."""
    record = "\n".join(lines)
    if '"' not in record:
        return False
    try:
        return not list(records_of(record, delimiter, strict=True))
    except csv.Error:
        return True


def _astray(name: str, line: int) -> str:
    return (
        f'{name} has a quotation mark (") in line {line} that opens a field and does not close it: '
        "what follows on the next lines would be taken in. "
        'Close it, write two ("") for each mark within a field, or save the file as .xlsx.'
    )


def _unclosed(text: str, name: str, line: int) -> str:
    if '"' in text:
        return (
            f'{name} has a quotation mark (") in line {line} that is opened and never closed. '
            "Find the field that begins with it and close it, or save the file as .xlsx."
        )
    return (
        f"{name} has a field that is far too long for a card. "
        "Open it in your spreadsheet program, shorten the text, and save it."
    )
