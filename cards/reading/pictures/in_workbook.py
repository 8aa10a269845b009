"""Pictures pasted into the sheets of a workbook.

Parts and names are those of ECMA-376 Part 1: 18.2.19 (sheets), 20.5.2 (anchors), 20.1.8.13 (blip)
and 20.1.8.55 (what is cut off).
"""

import posixpath
import re
from collections.abc import Iterator, Mapping
from functools import partial
from xml.etree import ElementTree as ET

from cards.finding import Finding, Severity, UnusableFileError
from cards.place import Place
from cards.reading.limits import LAST_COLUMN, LAST_ROW, MIB
from cards.reading.packed.archive import WORKBOOK, Archive, damaged, opened_archive
from cards.reading.pictures.beside import MOST_BYTES
from cards.reading.pictures.pasted import Pasted
from cards.reading.pictures.unusable import broken, too_large

_DRAWING = re.compile(r"(^|/)drawings/[^/]+\.xml$", re.IGNORECASE)
_MOST_XML = 4 * MIB
_MOST_PASTED = 5_000
_ANCHORS = ("twoCellAnchor", "oneCellAnchor")
_SIDES = ("l", "t", "r", "b")
_WHOLE = 100_000


def pasted_in(data: bytes, name: str) -> tuple[Mapping[str, tuple[Pasted, ...]], list[Finding]]:
    """Return the pictures in each sheet of a workbook, by title, left to right in each row.

    No picture is unpacked yet. The findings tell of sheets whose pictures could not be found.
    """
    archive = opened_archive(data, name)
    if not any(map(_DRAWING.search, archive.parts)):
        return {}, []
    pasted: dict[str, tuple[Pasted, ...]] = {}
    findings: list[Finding] = []
    for title, part in _sheets(archive):
        try:
            found = [
                one for drawing in _drawings(archive, part) for one in _in(archive, drawing, title)
            ]
        except UnusableFileError:
            findings.append(_not_found(title))
            continue
        pasted[title] = tuple(sorted(found, key=lambda one: (one.place.row, one.place.column)))
    return pasted, findings


def _sheets(archive: Archive) -> Iterator[tuple[str, str]]:
    """Yield each sheet's title and its part."""
    for part in filter(WORKBOOK.search, archive.parts):
        ties = _ties(archive, part)
        for sheet in _inside(_parsed(archive, part), "sheet"):
            target = ties.get(_tie(sheet, "id"), "")
            if target:
                yield sheet.get("name", ""), target


def _drawings(archive: Archive, sheet: str) -> Iterator[str]:
    return (part for part in _ties(archive, sheet).values() if _DRAWING.search(part))


def _in(archive: Archive, drawing: str, title: str) -> Iterator[Pasted]:
    ties = _ties(archive, drawing)
    read = partial(_unpacked, archive)
    anchors = [one for tag in _ANCHORS for one in _inside(_parsed(archive, drawing), tag)]
    for anchor in anchors[:_MOST_PASTED]:
        place = _corner(anchor, title)
        for picture in _inside(anchor, "pic"):
            blip = next(_inside(picture, "blip"), None)
            if place and blip is not None:
                part = ties.get(_tie(blip, "embed"), "")
                yield Pasted(place, part, read, _crop(picture))


def _corner(anchor: ET.Element, title: str) -> Place | None:
    """Return the cell in which an anchor begins."""
    start = next(_inside(anchor, "from"), None)
    if start is None:
        return None
    row, column = (_number(next(_inside(start, tag), None)) for tag in ("row", "col"))
    if not (0 <= row < LAST_ROW and 0 <= column < LAST_COLUMN):
        return None
    return Place(title, row + 1, column + 1)


def _crop(picture: ET.Element) -> tuple[float, float, float, float]:
    cut = next(_inside(picture, "srcRect"), None)
    if cut is None:
        return 0, 0, 0, 0
    left, top, right, bottom = (_share(cut.get(side, "0")) for side in _SIDES)
    return left, top, right, bottom


def _share(text: str) -> float:
    return min(max(int(text), 0), _WHOLE) / _WHOLE if re.fullmatch(r"-?\d{1,7}", text) else 0


def _number(element: ET.Element | None) -> int:
    text = (element.text or "").strip() if element is not None else ""
    return int(text) if re.fullmatch(r"\d{1,7}", text) else -1


def _ties(archive: Archive, part: str) -> Mapping[str, str]:
    """Return the parts that a part is tied to, by the names of the ties; nothing outside."""
    folder, name = posixpath.split(part)
    ties = posixpath.join(folder, "_rels", f"{name}.rels")
    if not archive.holds(ties):
        return {}
    targets = {
        tie.get("Id", ""): _inner(folder, tie.get("Target", ""))
        for tie in _inside(_parsed(archive, ties), "Relationship")
        if tie.get("TargetMode") != "External"
    }
    return {tie: target for tie, target in targets.items() if archive.holds(target)}


def _inner(folder: str, target: str) -> str:
    """Return the name of the part that a tie of a folder leads to."""
    return posixpath.normpath(posixpath.join("/", folder, target)).removeprefix("/")


def _parsed(archive: Archive, part: str) -> ET.Element:
    try:
        return ET.fromstring(archive.xml(part, _MOST_XML))  # noqa: S314 (declarations are refused)
    except ET.ParseError as error:
        raise UnusableFileError(damaged(archive.name)) from error


def _inside(element: ET.Element, tag: str) -> Iterator[ET.Element]:
    """Yield the elements of a name, whatever the namespace: there are two for each."""
    return (one for one in element.iter() if one.tag.rpartition("}")[2] == tag)


def _tie(element: ET.Element, name: str) -> str:
    ends = "}" + name
    return next((value for key, value in element.attrib.items() if key.endswith(ends)), "")


def _unpacked(archive: Archive, part: str) -> bytes:
    """Return what a part holds; raise `UnusablePictureError` if it is too large or damaged."""
    pieces: list[bytes] = []
    size = 0
    try:
        for piece in archive.chunks(part):
            pieces.append(piece)
            size += len(piece)
            if size > MOST_BYTES:
                raise too_large(f"has more than {MOST_BYTES // 1_000_000} MB")
    except UnusableFileError as error:
        raise broken() from error
    return b"".join(pieces)


def _not_found(title: str) -> Finding:
    return Finding(
        "pictures-not-read",
        Severity.WARNING,
        Place(title),
        "",
        "The pictures pasted into this sheet could not be read.",
        "Open the workbook in your spreadsheet program and save it as .xlsx again.",
    )
