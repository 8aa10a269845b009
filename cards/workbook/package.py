"""The file around a workbook: what the library cannot leave out of it, or cannot put in."""

import io
import re
import zipfile
from collections.abc import Callable

from openpyxl import Workbook

from cards.finding import UnusableFileError

_EARLIEST = (1980, 1, 1, 0, 0, 0)
"""The earliest time that a zip file can tell."""
_CORE = "docProps/core.xml"
_TIMES = re.compile(rb"<dcterms:(created|modified)\b[^>]*>[^<]*</dcterms:\1>")

Edit = Callable[[str, bytes], bytes]


def packed(book: Workbook, edit: Edit) -> bytes:
    """Return a workbook as the bytes of an .xlsx file, without the time at which it was written.

    `edit` takes the name and the bytes of each part of the file and returns the bytes to put there.
    Raises `UnusableFileError` where there is no room for temporary files.
    """
    written, finished = io.BytesIO(), io.BytesIO()
    _save(book, written)
    with zipfile.ZipFile(written) as source, zipfile.ZipFile(finished, "w") as target:
        for name in source.namelist():
            part = edit(name, source.read(name))
            if name == _CORE:
                part = _TIMES.sub(b"", part)
            target.writestr(zipfile.ZipInfo(name, _EARLIEST), part, zipfile.ZIP_DEFLATED)
    return finished.getvalue()


def _save(book: Workbook, written: io.BytesIO) -> None:
    """Save a workbook in memory; the library puts its sheets into temporary files on the way."""
    try:
        book.save(written)
    except OSError as error:
        raise UnusableFileError(
            "There is no room for temporary files, which a workbook needs while it is written. "
            "Make room on the disk and try again."
        ) from error
