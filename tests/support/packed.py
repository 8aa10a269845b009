"""Packed files, made by hand: whatever a test needs to stand in them."""

import zipfile
from collections.abc import Iterable, Mapping
from io import BytesIO
from pathlib import Path

from support.workbooks import Sheets, fill

Part = str | bytes | Iterable[bytes]
SHEET = "xl/worksheets/sheet1.xml"
_MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main"


def pack(path: Path, parts: Mapping[str, Part]) -> Path:
    """Write an archive of these parts; an iterable is written piece by piece."""
    with zipfile.ZipFile(path, "w", zipfile.ZIP_DEFLATED, compresslevel=1) as archive:
        for name, part in parts.items():
            pieces = [part.encode()] if isinstance(part, str) else part
            with archive.open(name, "w", force_zip64=True) as written:
                for piece in [pieces] if isinstance(pieces, bytes) else pieces:
                    written.write(piece)
    return path


def parts_of(sheets: Sheets) -> dict[str, bytes]:
    """Return the parts of a workbook with these sheets."""
    buffer = BytesIO()
    fill(sheets).save(buffer)
    with zipfile.ZipFile(buffer) as archive:
        return {name: archive.read(name) for name in archive.namelist()}


def workbook_with(path: Path, parts: Mapping[str, Part]) -> Path:
    """Write a workbook of one sheet, Facts, with these parts put in or in place of its own."""
    return pack(path, parts_of({"Facts": [["Prompt", "Answer"], ["Tides a day", "2"]]}) | parts)


def sheet_xml(rows: str, *, before: str = "", after: str = "") -> str:
    """Return a sheet with these rows, and what stands before and after them."""
    return (
        f'<?xml version="1.0" encoding="UTF-8"?><worksheet xmlns="{_MAIN}">{before}'
        f"<sheetData>{rows}</sheetData>{after}</worksheet>"
    )


def text_row(number: int, *texts: str) -> str:
    """Return a row with these texts from column A on."""
    cells = "".join(
        f'<c r="{chr(ord("A") + i)}{number}" t="inlineStr"><is><t>{text}</t></is></c>'
        for i, text in enumerate(texts)
    )
    return f'<row r="{number}">{cells}</row>'


def ods_xml(body: str, styles: str = "") -> str:
    """Return the content of an OpenDocument spreadsheet (OASIS OpenDocument 1.3, part 3)."""
    names = " ".join(
        f'xmlns:{prefix}="urn:oasis:names:tc:opendocument:xmlns:{name}:1.0"'
        for prefix, name in (
            ("office", "office"),
            ("table", "table"),
            ("text", "text"),
            ("style", "style"),
            ("draw", "drawing"),
            ("fo", "xsl-fo-compatible"),
        )
    )
    calc = 'xmlns:calcext="urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0"'
    return (
        f'<?xml version="1.0" encoding="UTF-8"?><office:document-content {names} {calc}>'
        f"<office:automatic-styles>{styles}</office:automatic-styles><office:body>"
        f"<office:spreadsheet>{body}</office:spreadsheet></office:body></office:document-content>"
    )


def ods_row(*texts: str, **attributes: str) -> str:
    """Return a row of an OpenDocument spreadsheet; `rows_repeated="3"` is an attribute of it."""
    given = "".join(
        f' table:{"number-" if "repeated" in name else ""}{name.replace("_", "-")}="{value}"'
        for name, value in attributes.items()
    )
    cells = "".join(
        f"<table:table-cell><text:p>{text}</text:p></table:table-cell>" for text in texts
    )
    return f"<table:table-row{given}>{cells}</table:table-row>"
