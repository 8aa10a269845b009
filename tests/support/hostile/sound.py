"""Files with nothing wrong, to be spoilt: a workbook, an OpenDocument sheet and a text."""

import zipfile
from collections.abc import Mapping
from io import BytesIO

from support.packed import ods_row, ods_xml
from support.pictures import coded, disc, paste
from support.workbooks import fill

ROWS = (
    ("Prompt", "Answer", "Topic"),
    ("Tides a day", "2", "Tides"),
    ("What pulls the sea", "the moon", "Tides"),
    ("Where whelks live", "low on the shore", "Zones"),
    ("Zone that is wet at each tide", "the middle shore", "Zones"),
)


def archive(parts: Mapping[str, bytes], packing: int = zipfile.ZIP_DEFLATED) -> bytes:
    """Return an archive of these parts."""
    buffer = BytesIO()
    with zipfile.ZipFile(buffer, "w", packing) as packed:
        for name, part in parts.items():
            packed.writestr(zipfile.ZipInfo(name), part, packing)
    return buffer.getvalue()


def parts_in(data: bytes) -> dict[str, bytes]:
    """Return the parts of an archive."""
    with zipfile.ZipFile(BytesIO(data)) as packed:
        return {name: packed.read(name) for name in packed.namelist()}


def _workbook() -> bytes:
    book = fill({"Facts": [*ROWS, ("=1+1", 3.5, "Tides")]})
    paste(book, "Facts", coded(disc(12)), "D3")
    book["Facts"].freeze_panes = "A2"
    book["Facts"].merge_cells("C2:C3")
    buffer = BytesIO()
    book.save(buffer)
    return buffer.getvalue()


WORKBOOK = _workbook()
PARTS = parts_in(WORKBOOK)
TABLE = f'<table:table table:name="Facts">{"".join(ods_row(*row) for row in ROWS)}</table:table>'
OPENDOCUMENT = archive({"content.xml": ods_xml(TABLE).encode()})
TEXT = "".join(",".join(row) + "\n" for row in ROWS).encode()
