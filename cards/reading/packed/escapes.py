"""Escapes in the texts of a workbook: `_x0041_` stands for A (ECMA-376 part 1, 22.9.2.19).

Characters that XML cannot hold are written this way too, and `_x005F_` is an underscore that would
begin an escape. Other kinds of file have none.
"""

import io
import re
import zipfile

_ESCAPE = re.compile("_x([0-9A-Fa-f]{4})_")
_TEXT = re.compile(rb"<(?:\w+:)?t(?:\s[^<>]*)?>[^<]*")
# openpyxl takes the first out of every such text, an escape or not; of the second it leaves that.
_TAKEN_OUT, _DOUBLED = b"x005F_", b"x005Fx005F__"
_PARTS = re.compile(r"(^|/)(worksheets/[^/]+|sharedStrings\d*)\.xml$", re.IGNORECASE)


def unescaped(text: str) -> str:
    """Return a text with the characters that its escapes stand for, gone through once.

    Two that are the halves of one character become that one; a half alone is no character, and
    becomes the sign for a lost one.
    """
    if "_x" not in text:
        return text
    decoded = _ESCAPE.sub(lambda escape: chr(int(escape[1], 16)), text)
    return decoded.encode("utf-16-le", "surrogatepass").decode("utf-16-le", "replace")


def guarded(xml: bytes) -> bytes:
    """Return the XML of a sheet, or of texts, of which openpyxl reads what stood in it."""
    if _TAKEN_OUT not in xml:
        return xml
    return _TEXT.sub(lambda text: text[0].replace(_TAKEN_OUT, _DOUBLED), xml)


def guarded_workbook(data: bytes) -> bytes:
    """Return a workbook with `guarded` parts; one without escapes is left as it is."""
    written = io.BytesIO()
    with zipfile.ZipFile(io.BytesIO(data)) as source:
        names = dict.fromkeys(source.namelist())
        if not any(_TAKEN_OUT in source.read(name) for name in filter(_PARTS.search, names)):
            return data
        with zipfile.ZipFile(written, "w") as target:
            for name in names:
                part = source.read(name)
                target.writestr(name, guarded(part) if _PARTS.search(name) else part)
    return written.getvalue()
