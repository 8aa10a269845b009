"""Reading the sheets of an OpenDocument spreadsheet."""

from xml.parsers import expat

from cards.finding import Finding, UnusableFileError
from cards.reading.hidden import hidden_rows_note, hidden_sheet_note, pictures_left_out_note
from cards.reading.opendocument.content import ContentReader
from cards.reading.opendocument.names import BETWEEN
from cards.reading.opendocument.sheet import OpenSheet
from cards.reading.packed.archive import Archive, damaged, opened_archive
from cards.reading.table import Table

_CONTENT, _MANIFEST = "content.xml", "META-INF/manifest.xml"
_LOCKED = b"encryption-data"
_LOCKED_PART = "encrypted-package"


def read_opendocument(data: bytes, name: str) -> tuple[tuple[Table, ...], tuple[Finding, ...]]:
    """Read the visible sheets, left to right; `name` is the file's name.

    The findings tell what is hidden and therefore left out. Raises `UnusableFileError` if the
    file is locked with a password, is of another kind, is too large, or is damaged.
    """
    archive = opened_archive(data, name)
    _refuse_locked(archive)
    if not archive.holds(_CONTENT):
        raise UnusableFileError(damaged(name))
    tables: list[Table] = []
    findings: list[Finding] = []
    for sheet in _sheets(archive):
        found = _read_sheet(sheet)
        tables += found[0]
        findings += found[1]
    return tuple(tables), tuple(findings)


def _refuse_locked(archive: Archive) -> None:
    locked = archive.holds(_LOCKED_PART)
    if locked or (archive.holds(_MANIFEST) and _LOCKED in archive.xml(_MANIFEST)):
        raise UnusableFileError(
            f"{archive.name} is locked with a password. "
            "Open it, save a copy without a password, and use the copy."
        )


def _sheets(archive: Archive) -> list[OpenSheet]:
    reader = ContentReader(archive.name)
    parser = expat.ParserCreate(namespace_separator=BETWEEN)
    parser.buffer_text = True
    parser.StartElementHandler = reader.start
    parser.EndElementHandler = reader.end
    parser.CharacterDataHandler = reader.characters
    try:
        for piece in archive.xml_chunks(_CONTENT):
            parser.Parse(piece, False)  # noqa: FBT003 (takes no keywords)
        parser.Parse(b"", True)  # noqa: FBT003 (takes no keywords)
    except expat.ExpatError as error:
        raise UnusableFileError(damaged(archive.name)) from error
    return reader.sheets


def _read_sheet(sheet: OpenSheet) -> tuple[list[Table], list[Finding]]:
    table = sheet.table()
    if sheet.hidden:
        has_content = table.rows or sheet.hidden_rows
        return [], [hidden_sheet_note(sheet.title)] if has_content else []
    hidden = sorted(sheet.hidden_rows)
    notes = [hidden_rows_note(sheet.title, hidden)] if hidden else []
    if sheet.has_pictures and table.rows:
        notes.append(pictures_left_out_note(sheet.title))
    return [table] if table.rows else [], notes
