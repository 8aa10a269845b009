"""A workbook without what no card needs: pictures, charts, notes, and the formats of blank cells.

What is left is checked, so that it is safe and quick to read.
"""

import io
import re
import zipfile
from collections.abc import Iterable
from html import unescape

from cards.finding import UnusableFileError
from cards.reading.limits import MIB, too_large
from cards.reading.packed.archive import WORKBOOK, Archive, damaged, opened_archive
from cards.reading.packed.doubled import refuse_doubled_sheets
from cards.reading.packed.escapes import guarded
from cards.reading.packed.lean_sheet import (
    MOST_RUNS,
    is_far_reaching,
    is_sheet,
    lean_sheet,
    runs_in,
)

_XML = (".xml", ".rels")
# The folders of parts that no card needs, and sheets' own ties to them.
_NOT_NEEDED = re.compile(
    r"(^|/)(worksheets/_rels|drawings|charts|chartsheets|dialogsheets|macrosheets|media|comments\d*"
    r"|threadedComments|persons|externalLinks|pivotTables|pivotCache|tables|queryTables|slicers"
    r"|slicerCaches|timelines|timelineCaches|embeddings|activeX|ctrlProps|printerSettings|theme"
    r"|docProps|customXml|model|calcChain\.xml|connections\.xml|metadata\.xml|richData)(/|$|\.xml$)",
    re.IGNORECASE,
)
_SHEET = re.compile(r"(^|/)worksheets/[^/]+\.xml$", re.IGNORECASE)
_STRINGS = re.compile(r"(^|/)sharedStrings\d*\.xml$", re.IGNORECASE)
_MOST_STRINGS = 150_000
_MOST_OTHERS = 4 * MIB
# What a workbook's own part says of other workbooks, of names, and of tables of other programs.
_ASIDE = (b"definedNames", b"externalReferences", b"pivotCaches", b"extLst", b"customWorkbookViews")
# Of the styles of cells, no card needs more than the formats of numbers, and what is bold.
_STYLES = re.compile(r"(^|/)styles\d*\.xml$", re.IGNORECASE)
_LOOKS = (
    *(b"fills", b"borders", b"cellStyleXfs", b"cellStyles"),
    *(b"dxfs", b"tableStyles", b"colors", b"extLst"),
)
# openpyxl asks merged cells for theirs, so that all have the first one, and it is none.
_OF_BORDERS = re.compile(rb"""\sborderId\s*=\s*(?:"[^"]*"|'[^']*')""")
_NO_BORDER = b"<borders><border/></borders><cellXfs"
_FORMAT = re.compile(rb"""formatCode\s*=\s*("[^"]*"|'[^']*')""")
# openpyxl searches each for dates, once for every style that has it.
_LONGEST_FORMAT = 255
_MOST_GROUPS = 48
_LOOK = re.compile(rb"<(?:alignment|protection|color|family|charset|scheme)\b[^<>]*/>")


def lean_workbook(data: bytes, name: str) -> bytes:
    """Return a workbook with the parts that make cards; `name` is the file's name.

    Raises `UnusableFileError` if it is no archive, or holds what is too large or unsafe to read.
    """
    archive = opened_archive(data, name)
    written = io.BytesIO()
    with zipfile.ZipFile(written, "w") as lean:
        for part in dict.fromkeys(archive.parts):
            if part.lower().endswith(_XML) and not _NOT_NEEDED.search(part):
                lean.writestr(part, _lean_part(archive, part))
    return written.getvalue()


def _lean_part(archive: Archive, part: str) -> bytes:
    if _SHEET.search(part) or is_sheet(next(archive.chunks(part), b"")):
        return lean_sheet(archive, part)
    if _STRINGS.search(part):
        strings = archive.xml(part)
        texts = strings.count(b"<si>") + strings.count(b"<si ")
        if texts > _MOST_STRINGS or runs_in(strings) > MOST_RUNS:
            raise too_large(archive.name)
        return guarded(strings)
    other = archive.xml(part, _MOST_OTHERS)
    if is_far_reaching(other):
        raise UnusableFileError(damaged(archive.name))
    refuse_doubled_sheets(other, part, archive.name)
    if WORKBOOK.search(part):
        return _without(other, _ASIDE)
    if _STYLES.search(part):
        plain = _OF_BORDERS.sub(b"", _LOOK.sub(b"", _without(other, _LOOKS)))
        return _FORMAT.sub(_sane_format, plain.replace(b"<cellXfs", _NO_BORDER, 1))
    return other


def _sane_format(found: re.Match[bytes]) -> bytes:
    """Return the format of a number, or the general one for what no program offers."""
    code = unescape(found[1][1:-1].decode(errors="replace"))
    is_sane = len(code) <= _LONGEST_FORMAT and max(map(code.count, '["')) <= _MOST_GROUPS
    return found[0] if is_sane else b'formatCode="General"'


def _without(xml: bytes, tags: Iterable[bytes]) -> bytes:
    for tag in tags:
        start, closing = b"<" + tag, b"</" + tag + b">"
        before, found, rest = xml.partition(start)
        if found and closing in rest:
            xml = before + rest.partition(closing)[2]
    return xml
