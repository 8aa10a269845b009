"""Everything that a file says and asks for, unpacked: what a reader sees, and what it does not."""

import re
import zipfile
from collections.abc import Iterator
from pathlib import Path

import pikepdf
import pypdfium2


def words_in(path: Path) -> bytes:
    """Return all that stands in a file, its packed parts unpacked, names and properties too."""
    if path.suffix == ".pdf":
        return b"\n".join([path.read_bytes(), *_in_pdf(path)])
    if path.suffix == ".xlsx":
        with zipfile.ZipFile(path) as archive:
            parts = [(part.filename.encode(), archive.read(part)) for part in archive.infolist()]
            notes = [part.comment + part.extra for part in archive.infolist()]
        return b"\n".join([archive.comment, *notes, *(piece for part in parts for piece in part)])
    return path.read_bytes()


def _in_pdf(path: Path) -> Iterator[bytes]:
    with pikepdf.open(path) as pdf:
        for thing in things_in(pdf):
            if isinstance(thing, pikepdf.Stream):
                # a picture's bytes are no words, and not every reader unpacks them
                is_picture = thing.get("/Subtype") == "/Image"
                yield thing.read_raw_bytes() if is_picture else thing.read_bytes()
            elif isinstance(thing, pikepdf.String):
                yield str(thing).encode()
    document = pypdfium2.PdfDocument(path)
    for page in document:
        yield page.get_textpage().get_text_range().encode("utf-8", "replace")
    document.close()


def things_in(pdf: pikepdf.Pdf) -> Iterator[pikepdf.Object]:
    """Yield everything in a document: what is in its list of objects, and what is in those."""
    waiting = [pdf.trailer, *pdf.objects]
    while waiting:
        thing = waiting.pop()
        yield thing
        inside = []
        if isinstance(thing, pikepdf.Dictionary | pikepdf.Stream):
            yield from (pikepdf.Name(key) for key in thing.keys())  # noqa: SIM118 (no iteration)
            inside = [value for _, value in thing.items()]
        elif isinstance(thing, pikepdf.Array):
            inside = list(thing)
        # what is an object of its own is in the list already, and may lead back here
        waiting += [one for one in inside if isinstance(one, pikepdf.Object) and not one.objgen[0]]


def names_in(path: Path) -> set[str]:
    """Return every name that a PDF uses, as a key or as a value."""
    with pikepdf.open(path) as pdf:
        return {str(thing) for thing in things_in(pdf) if isinstance(thing, pikepdf.Name)}


def parts_of(path: Path) -> dict[str, str]:
    """Return the parts of a workbook by name."""
    with zipfile.ZipFile(path) as archive:
        return {name: archive.read(name).decode() for name in archive.namelist()}


def formulas_in(path: Path) -> set[str]:
    """Return whatever a program would reckon: in cells, rules, lists and names."""
    held = r"<(f|formula|formula1|formula2|definedName|calculatedColumnFormula)\b[^>]*>([^<]+)</"
    return {found[2] for part in parts_of(path).values() for found in re.finditer(held, part)}
