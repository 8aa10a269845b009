"""Delimited text: CSV and TSV, in the encodings and with the delimiters that schools have."""

import csv
import io
from codecs import BOM_UTF8, BOM_UTF16_BE, BOM_UTF16_LE
from collections.abc import Iterator
from pathlib import PurePath

from cards.content import Cell
from cards.finding import UnreadableFileError
from cards.place import Place
from cards.reading.delimiter import delimiter_of, extent_of
from cards.reading.limits import MOST_ROWS, too_large, too_many_rows
from cards.reading.table import Table, clean, rows_of

_BLANKS = " \t,;"
_LONGEST_LINE = 1_000_000
# Blank fields count: each takes its place in memory.
_MOST_FIELDS = 4_000_000


def read_delimited(data: bytes, name: str) -> Table:
    """Read delimited text into one table; `name` is the file's name.

    Records are numbered as a spreadsheet numbers its rows: blank lines count, line breaks between
    quotes do not. Raises `UnreadableFileError` if the bytes are no text or a quote is not closed.
    """
    text = _bounded(_decoded(data, name), name)
    if not text:
        return Table(name, PurePath(name).stem, (), delimited=True)
    delimiter = "\t" if name.lower().endswith(".tsv") and "\t" in text else delimiter_of(text)
    cells = rows_of(_cells(text, delimiter, name))
    return Table(name, PurePath(name).stem, cells, delimited=True)


def _decoded(data: bytes, name: str) -> str:
    """Decode by the byte order mark, else as UTF-8, else as Windows Western (code page 1252).

    Guessing from the letters goes wrong on files as short as these.
    """
    if data.startswith((BOM_UTF16_LE, BOM_UTF16_BE)):
        encodings = ["utf-16"]
    elif data.startswith(BOM_UTF8):
        encodings = ["utf-8-sig"]
    else:
        encodings = ["utf-8", "cp1252"]
    for encoding in encodings:
        try:
            text = data.decode(encoding)
        except UnicodeDecodeError:
            continue
        if "\0" not in text:
            return text
    raise UnreadableFileError(
        f"{name} does not hold readable text. "
        "Open it in your spreadsheet program and save it as “CSV UTF-8” or .xlsx."
    )


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


def _cells(text: str, delimiter: str, name: str) -> Iterator[Cell]:
    for row, record in enumerate(_records(text, delimiter, name), start=1):
        for column, field in enumerate(record, start=1):
            if field:
                yield Cell(clean(field), Place(name, row, column))


def _records(text: str, delimiter: str, name: str) -> Iterator[tuple[str, ...]]:
    import pandas as pd  # noqa: PLC0415 - takes long to load

    try:
        width = _width(text, delimiter, name)
        frame = pd.read_csv(
            io.StringIO(text),
            sep=delimiter,
            header=None,
            names=range(width),
            dtype=str,
            keep_default_na=False,
            na_filter=False,
            skip_blank_lines=False,
            engine="c",
        )
    except (pd.errors.ParserError, csv.Error) as error:
        raise UnreadableFileError(_unclosed(text, name)) from error
    yield from frame.itertuples(index=False, name=None)


def _width(text: str, delimiter: str, name: str) -> int:
    """Return the number of fields in the longest record; raise if all records are too many."""
    extent = extent_of(text, delimiter, most=MOST_ROWS)
    if extent.filled > MOST_ROWS:
        raise too_many_rows(name)
    if extent.records * extent.widest > _MOST_FIELDS:
        raise too_large(name)
    return extent.widest


def _unclosed(text: str, name: str) -> str:
    if '"' in text:
        return (
            f'{name} has a quotation mark (") that is opened and never closed. '
            "Find the field that begins with it and close it, or save the file as .xlsx."
        )
    return (
        f"{name} has a field that is far too long for a card. "
        "Open it in your spreadsheet program, shorten the text, and save it."
    )
