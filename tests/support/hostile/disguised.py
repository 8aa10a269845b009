"""Files that are not what their endings say."""

from support.hostile.sound import OPENDOCUMENT, TEXT, WORKBOOK
from support.pictures import SHELL, coded, disc

# The first bytes of a compound file, and how it names what is locked ([MS-CFB] 2.2, 2.6.1).
_COMPOUND = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1" + b"\0" * 504
_LOCKED = _COMPOUND + "EncryptedPackage".encode("utf-16-le") + b"\0" * 512
_PAGE = b"<html><body><table><tr><td>Prompt</td><td>Answer</td></tr></table></body></html>"
_XML = b'<?xml version="1.0"?><Workbook xmlns="urn:schemas-microsoft-com:office:spreadsheet"/>'
_PICTURE = coded(disc(12))
_TELLS = {
    "workbook": WORKBOOK,
    "opendocument": OPENDOCUMENT,
    "locked": _LOCKED,
    "compound": _COMPOUND,
    "page": _PAGE,
    "xml": _XML,
    "picture": _PICTURE,
    "drawing": SHELL.encode(),
    "pdf": b"%PDF-1.7\n%\xe2\xe3\xcf\xd3\n",
    "program": b"\x7fELF\x02\x01\x01" + bytes(range(256)),
    "empty": b"",
    "blank": b" \n" * 10,
    "zeros": b"\0" * 5000,
    "text": TEXT,
}
_READ = ("xlsx", "ods", "csv")
_NOT_READ = ("xls", "png", "exe", "xlsm", "tsv")
DISGUISED = {
    **{f"{what}.{ending}": data for what, data in _TELLS.items() for ending in _READ},
    **{f"workbook.{ending}": WORKBOOK for ending in _NOT_READ},
    **{f"page.{ending}": _PAGE for ending in _NOT_READ},
}
