"""A sheet of a workbook without what no card needs, as text: it may be larger than a tree can be.

Parts and names are those of ECMA-376 Part 1, 18.3.1.
"""

import re
from collections import Counter
from collections.abc import Iterator
from itertools import chain

from msgspec import Struct, field

from cards.finding import UnusableFileError
from cards.reading.limits import (
    LAST_ROW,
    MIB,
    MOST_CELLS,
    MOST_KEPT_BYTES,
    MOST_ROWS,
    too_large,
    too_many_cells,
    too_many_rows,
)
from cards.reading.packed.archive import Archive, damaged
from cards.reading.packed.escapes import guarded
from cards.reading.packed.ranges import clipped

_ATTRIBUTES = rb'(?: [\w:]+="[^"<>]*")*'
# Blank cells and rows, each followed by another that says where it stands, so that none is moved.
_BLANK_CELL = re.compile(
    rb'<c r="[A-Z]{1,3}\d{1,7}"' + _ATTRIBUTES + rb" ?(?:/>|></c>)(?=\s*(?:<c r=|</row>))"
)
_BLANK_ROW = re.compile(
    rb'<row r="\d{1,7}"' + _ATTRIBUTES + rb" ?(?:/>|>\s*</row>)(?=\s*(?:<row r=|</sheetData>))"
)
# Formulas that hold for many cells would be worked out for each.
_FORMULA = re.compile(rb"<((?:\w+:)?f)\s[^<>]*?(/?)>")
_CELL = re.compile(rb"<(?:\w+:)?c[\s/>]")
_ROW = re.compile(rb"<(?:\w+:)?row[\s/>]")
_ROW_NUMBER = re.compile(rb"""<(?:\w+:)?row\s[^<>]*?\br\s*=\s*["'](\d{1,7})["']""")
# Some programs write such a text as a value; openpyxl looks for it elsewhere.
_INLINE_VALUE = re.compile(rb"""(["'])inlineStr(["'][^<>]*>\s*<(?:\w+:)?v>)""")
# Some programs write what is true in words; openpyxl reads figures only.
_TRUTH = re.compile(rb"""(["']b["'][^<>]*>\s*<(?:\w+:)?v>)\s*(true|false)\s*(?=<)""", re.IGNORECASE)
_RUN = re.compile(rb"<(?:\w+:)?r>")
MOST_RUNS = 50_000
# These are looked at cell by cell, however far they reach.
_FAR_REACHING = re.compile(rb"<(?:\w+:)?(?:mergeCell|hyperlink)")
# Of the shared texts the first is 0; Python would take the last.
_BELOW_ALL_TEXTS = re.compile(rb"""["']s["'][^<>]*>\s*<(?:\w+:)?v>\s*-""")
_SHEET_DATA = re.compile(rb"<((?:\w+:)?)sheetData\s*(/?)>")
_START = re.compile(rb"<((?:\w+:)?)worksheet\b[^>]*>")
_REF = rb"""\s[^<>]*?\bref\s*=\s*["']([A-Z0-9:$]{1,30})["']"""
_MERGED = re.compile(rb"<(?:\w+:)?mergeCell" + _REF)
_FILTER = re.compile(rb"<(?:\w+:)?autoFilter" + _REF)
_KEPT_BEFORE = (b"sheetViews", b"cols")
_MOST_BESIDE = 8 * MIB
MOST_MERGED = 100_000
"""More merged cells than so many would take longer than anyone waits: each is made."""

# Each is compared with all the others.
_MOST_RANGES = 4_000
_NEVER = re.compile(rb"(?!)")


class _Rows(Struct):
    """The rows of a sheet as they are read: what is kept, and how much that is in all sheets."""

    name: str
    counts: Counter[str]
    kept: list[bytes] = field(default_factory=list)
    last_row: int = 0

    def add(self, piece: bytes) -> None:
        """Keep what is not blank in a piece of the rows; raise if that is too much."""
        lean = _FORMULA.sub(rb"<\1\2>", _BLANK_ROW.sub(b"", _BLANK_CELL.sub(b"", piece)))
        lean = _INLINE_VALUE.sub(rb"\1str\2", guarded(lean))
        lean = _TRUTH.sub(_as_figure, lean)
        if _FAR_REACHING.search(lean) or _BELOW_ALL_TEXTS.search(lean):
            raise UnusableFileError(damaged(self.name))
        self.kept.append(lean)
        cells, rows = len(_CELL.findall(lean)), len(_ROW.findall(lean))
        self.counts.update(bytes=len(lean), cells=cells, rows=rows, runs=runs_in(lean))
        numbers = _ROW_NUMBER.findall(lean)
        # a row without a number follows upon the one before it
        self.last_row = max(self.last_row, *map(int, numbers), 0) + rows - len(numbers)
        self._refuse_too_much()

    def _refuse_too_much(self) -> None:
        if self.counts["cells"] > MOST_CELLS:
            raise too_many_cells(self.name)
        if self.counts["rows"] > MOST_ROWS:
            raise too_many_rows(self.name)
        if self.counts["bytes"] > MOST_KEPT_BYTES or self.counts["runs"] > MOST_RUNS:
            raise too_large(self.name)


def _as_figure(found: re.Match[bytes]) -> bytes:
    return found[1] + (b"1" if found[2].lower() == b"true" else b"0")


def lean_sheet(archive: Archive, part: str) -> bytes:
    """Return a sheet with its rows, hidden columns, frozen rows, merged cells and filter.

    Raises `UnusableFileError` if it holds what is too large or unsafe to read.
    """
    name = archive.name
    pieces = archive.xml_chunks(part)
    before, piece = _until(_SHEET_DATA, pieces, name)
    start = _START.search(before)
    if not start:
        raise UnusableFileError(damaged(name))
    opened = _SHEET_DATA.match(piece)
    rows, after = _Rows(name, archive.kept), piece
    if opened and not opened[2]:
        after = _read_rows(rows, piece, pieces, b"</" + opened[1] + b"sheetData>")
    after += _until(_NEVER, pieces, name)[0]
    kept = (_element(before, start[1] + tag) for tag in _KEPT_BEFORE)
    end = b"</" + start[1] + b"worksheet>"
    return b"".join([start[0], *kept, *rows.kept, *_ranges(after, rows, start[1]), end])


def is_sheet(start: bytes) -> bool:
    """Say whether a part is a sheet, seen how it begins."""
    return _START.search(start) is not None


def runs_in(xml: bytes) -> int:
    """Return how many runs of letters have a format of their own."""
    return len(_RUN.findall(xml))


def merged_in(xml: bytes) -> int:
    """Return how many cells of a sheet are merged with others, however far down that is."""
    ranges = (clipped(ref.decode(), LAST_ROW) for ref in _MERGED.findall(xml))
    return sum(one.area for one in ranges if one)


def is_far_reaching(xml: bytes) -> bool:
    """Say whether a part holds what is looked at cell by cell, however far it reaches."""
    return _FAR_REACHING.search(xml) is not None


def _until(tag: re.Pattern[bytes], pieces: Iterator[bytes], name: str) -> tuple[bytes, bytes]:
    """Return what stands before a tag, and the rest of its piece from the tag on."""
    before = b""
    for piece in pieces:
        found = tag.search(piece)
        before += piece[: found.start()] if found else piece
        if len(before) > _MOST_BESIDE:
            raise too_large(name)
        if found:
            return before, piece[found.start() :]
    return before, b""


def _read_rows(rows: _Rows, piece: bytes, pieces: Iterator[bytes], closing: bytes) -> bytes:
    """Add rows until they end; return what stands behind them in the last piece."""
    for one in chain([piece], pieces):
        inside, end, rest = one.partition(closing)
        rows.add(inside + end)
        if end:
            return rest
    return b""


def _element(xml: bytes, tag: bytes) -> bytes:
    """Return the first element of a name, or nothing."""
    closing = b"</" + tag + b">"
    start = xml.find(b"<" + tag)
    end = xml.find(closing, start)
    return xml[start : end + len(closing)] if 0 <= start < end else b""


def _ranges(after: bytes, rows: _Rows, prefix: bytes) -> Iterator[bytes]:
    """Yield the filter and the merged cells, as far down as there are rows."""
    filtered = _FILTER.search(after)
    if filtered:
        yield b'<%sautoFilter ref="%s"/>' % (prefix, filtered[1])
    refs = dict.fromkeys(_MERGED.findall(after))
    merged = (clipped(ref.decode(), rows.last_row) for ref in refs)
    inside = [one for one in merged if one]
    if len(inside) > _MOST_RANGES or sum(one.area for one in inside) > MOST_MERGED:
        raise too_large(rows.name)
    if inside:
        cells = b"".join(b'<%smergeCell ref="%s"/>' % (prefix, str(one).encode()) for one in inside)
        yield b"<%smergeCells>%s</%smergeCells>" % (prefix, cells, prefix)
