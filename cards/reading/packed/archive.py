"""The zip archive that a workbook is, opened with care: it may hold anything."""

import io
import re
import zipfile
from collections import Counter
from collections.abc import Iterator

from msgspec import Struct, field

from cards.finding import UnusableFileError
from cards.reading.limits import MIB, MOST_KEPT_BYTES, MOST_UNPACKED_BYTES, too_large

WORKBOOK = re.compile(r"(^|/)workbook\d*\.xml$", re.IGNORECASE)
"""The part that names the sheets of a workbook."""

_ENTRY = b"PK\x01\x02"
_MOST_ENTRIES = 10_000
_PACKINGS = frozenset({zipfile.ZIP_STORED, zipfile.ZIP_DEFLATED})
# What a document type declares can be of any size, or stand in another file.
_DECLARATION = re.compile(rb"<!(?:DOCTYPE|ENTITY)")
_ENCODING = re.compile(rb"""^\s*<\?xml[^>]*?encoding\s*=\s*["']([^"']*)""")
# All that spreadsheet programs write, and what is a part of it.
_ENCODINGS = frozenset({b"utf-8", b"us-ascii", b"ascii"})


class Archive(Struct):
    """The parts of a packed file; `unpacked` counts the bytes read from them so far.

    `kept` counts what was kept of all of them, by what it is.
    """

    name: str
    _zip: zipfile.ZipFile
    unpacked: int = field(default=0)
    kept: Counter[str] = field(default_factory=Counter)

    @property
    def parts(self) -> tuple[str, ...]:
        """The names of the parts, in the order of the archive."""
        return tuple(self._zip.namelist())

    def holds(self, part: str) -> bool:
        """Say whether there is a part of this name."""
        return part in self._zip.NameToInfo

    def chunks(self, part: str) -> Iterator[bytes]:
        """Yield a part piece by piece, believing nothing that the archive says of its size.

        Raises `UnusableFileError` if all that was read so far is too large, or the part is
        packed in a way that spreadsheet programs do not use.
        """
        try:
            self._refuse_packing(self._zip.getinfo(part))
            with self._zip.open(part) as unpacking:
                while chunk := unpacking.read(MIB):
                    self._count(chunk)
                    yield chunk
        except (UnusableFileError, MemoryError):
            raise
        # A part that is damaged, locked, packed in a way of the future, or said to lie before the
        # file begins or beyond all files' ends, can fail in whatever way.
        except Exception as error:
            raise UnusableFileError(damaged(self.name)) from error

    def xml_chunks(self, part: str) -> Iterator[bytes]:
        """Yield a part of XML in pieces that end before a tag begins, without declarations.

        Raises `UnusableFileError` as `chunks` does, if a document type is declared, and if the
        encoding is not UTF-8.
        """
        carried = b""
        for number, chunk in enumerate(self.chunks(part)):
            if not number:
                self._refuse_encodings(chunk)
            piece = carried + chunk
            end = max(piece.rfind(b"<"), 0)
            piece, carried = piece[:end], piece[end:]
            if len(carried) > MOST_KEPT_BYTES:
                raise too_large(self.name)
            yield self._checked(piece)
        yield self._checked(carried)

    def xml(self, part: str, most: int = MOST_KEPT_BYTES) -> bytes:
        """Return a part of XML whole; raise as `xml_chunks` does, or above `most` bytes."""
        pieces: list[bytes] = []
        for piece in self.xml_chunks(part):
            pieces.append(piece)
            most -= len(piece)
            if most < 0:
                raise too_large(self.name)
        return b"".join(pieces)

    def _count(self, chunk: bytes) -> None:
        self.unpacked += len(chunk)
        if self.unpacked > MOST_UNPACKED_BYTES:
            raise too_large(self.name)

    def _refuse_packing(self, info: zipfile.ZipInfo) -> None:
        if info.compress_type not in _PACKINGS:
            raise UnusableFileError(damaged(self.name))

    def _refuse_encodings(self, start: bytes) -> None:
        named = _ENCODING.match(start.removeprefix(b"\xef\xbb\xbf"))
        if b"\0" in start[:4] or (named and named[1].lower() not in _ENCODINGS):
            raise UnusableFileError(
                f"{self.name} was written in an unusual way. "
                "Open it in your spreadsheet program and save it as .xlsx again."
            )

    def _checked(self, piece: bytes) -> bytes:
        if _DECLARATION.search(piece):
            raise UnusableFileError(
                f"{self.name} holds declarations that no spreadsheet program writes, and was not "
                "read. Copy the rows that make cards into a new workbook, and use that."
            )
        return piece


def opened_archive(data: bytes, name: str) -> Archive:
    """Open a packed file; `name` is the file's name.

    Raises `UnusableFileError` if it is no archive, or one of absurdly many parts.
    """
    if data.count(_ENTRY) > _MOST_ENTRIES:
        raise too_large(name)
    try:
        return Archive(name, zipfile.ZipFile(io.BytesIO(data)))
    except MemoryError:
        raise
    # A damaged directory can fail in whatever way.
    except Exception as error:
        raise UnusableFileError(damaged(name)) from error


def damaged(name: str) -> str:
    """Say that a file is damaged."""
    return (
        f"{name} is damaged or not a workbook. "
        "Open it in your spreadsheet program and save it as .xlsx again."
    )
