"""The records of delimited text, and what is odd about the way they are written."""

import csv
import re
from collections.abc import Iterator

from msgspec import Struct

from cards.finding import UnusableFileError
from cards.reading.delimiter import records_of

# A record of fewer fields has none into which a comma could have shifted anything unseen.
_SEVERAL = 3
_QUOTED = re.compile(r'"[^"]*"')
_END = "\0"
"""A record that no text holds: what has this character is refused."""


class Record(Struct, frozen=True):
    """The fields of a record, and whether its quotes are astray.

    `shifted` is the index of the first field that begins as the rest of a text would after a comma,
    or 0.
    """

    fields: list[str]
    is_torn: bool
    shifted: int


def read_records(text: str, delimiter: str, name: str, begin: int) -> Iterator[Record]:
    """Yield each record; quotes astray are told of where they are so on one line.

    The first begins at the character `begin`. Raises `UnusableFileError` if a quotation mark is
    not closed, or only lines below.
    """
    lines, start = text.split("\n"), text.count("\n", 0, begin)
    try:
        for fields in records_of(f"{text[begin:]}\n{_END}", delimiter):
            if fields == [_END]:
                return
            end = start + 1 + sum(field.count("\n") for field in fields)
            if end > len(lines):
                break
            record = "\n".join(lines[start:end])
            is_torn = _is_torn(record, delimiter)
            if is_torn and end - start > 1:
                raise UnusableFileError(_astray(name, start + 1))
            shifted = _shifted(record) if delimiter == "," else 0
            yield Record(fields, is_torn, shifted)
            start = end
    except csv.Error as error:
        raise UnusableFileError(_unclosed(text, name, start + 1)) from error
    # A quotation mark that is never closed takes in all that follows.
    raise UnusableFileError(_unclosed(text, name, start + 1))


def _is_torn(record: str, delimiter: str) -> bool:
    """Say whether something else than a delimiter follows the quote at the end of a field."""
    if '"' not in record:
        return False
    try:
        return not list(records_of(record, delimiter, strict=True))
    except csv.Error:
        return True


def _shifted(record: str) -> int:
    """Return the index of the first field behind a comma, a blank and a small letter, or 0."""
    if ", " not in record:
        return 0
    fields = _QUOTED.sub('""', record).split(",")
    late = (
        i for i, one in enumerate(fields) if i and one[:1] == " " and one.lstrip()[:1].islower()
    )
    return next(late, 0) if len(fields) >= _SEVERAL else 0


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
