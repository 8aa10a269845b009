"""Drawn outlines as a TrueType file, with the tables that a PDF needs (OpenType specification)."""

from collections.abc import Sequence
from itertools import pairwise
from struct import pack

from msgspec import Struct

from decks.press.script.composing import file_of
from decks.press.script.signs.outlines import Outline

Box = tuple[int, int, int, int]
"""The left, the foot, the right and the top of a glyph."""

EM = 1000
TOP, FOOT = 935, -265

ON_CURVE, OVERLAPPING = 0x01, 0x40
"""Flags of a point: it lies on the outline; outlines of this glyph lie over one another."""


class Drawn(Struct, frozen=True):
    """Outlines in thousandths of an em, and how far the glyph moves on."""

    outlines: Sequence[Outline]
    advance: int


def font_file(glyphs: Sequence[Drawn]) -> bytes:
    """Return a TrueType file with these glyphs, in this order."""
    entries = [_glyph(_whole(glyph.outlines)) for glyph in glyphs]
    ends = [0]
    for entry, _box in entries:
        ends.append(ends[-1] + len(entry))
    boxes = [box for _entry, box in entries]
    metrics = [(glyph.advance, box[0]) for glyph, box in zip(glyphs, boxes, strict=True)]
    tables = {
        "glyf": b"".join(entry for entry, _box in entries),
        "loca": pack(f">{len(ends)}I", *ends),
        "hmtx": b"".join(pack(">Hh", *metric) for metric in metrics),
        "head": _head(boxes),
        "hhea": _horizontal_header(glyphs),
        "maxp": _limits(glyphs),
    }
    return file_of(b"\0\1\0\0", tables)


def _head(boxes: Sequence[Box]) -> bytes:
    """Return the font's header, with the box around the boxes of all glyphs."""
    low = map(min, *[box[:2] for box in boxes], (0, 0))
    high = map(max, *[box[2:] for box in boxes], (0, 0))
    # version, revision, checksum, magic, flags, em, two dates, box, style, smallest, hint, form
    values = (0x10000, 0x10000, 0, 0x5F0F3CF5, 3, EM, 0, 0, *low, *high, 0, 8, 2, 1, 0)
    return pack(">IIIIHHqq4hHHhhh", *values)


def _horizontal_header(glyphs: Sequence[Drawn]) -> bytes:
    widest = max(glyph.advance for glyph in glyphs)
    # version, heights and gap, widest, two bearings, extent, caret's slope and shift, format, count
    values = (0x10000, TOP, FOOT, 0, widest, 0, 0, widest, 1, *[0] * 7, len(glyphs))
    return pack(">I3hH11hH", *values)


def _limits(glyphs: Sequence[Drawn]) -> bytes:
    """Return the table of what a reader must have room for: points, and outlines."""
    outlines = [len(outline) for glyph in glyphs for outline in glyph.outlines]
    points = max((sum(map(len, glyph.outlines)) for glyph in glyphs), default=0)
    return pack(">I14H", 0x10000, len(glyphs), points, len(outlines), 0, 0, 2, *[0] * 8)


def _whole(outlines: Sequence[Outline]) -> list[list[tuple[int, int]]]:
    return [[(round(x), round(y)) for x, y in outline] for outline in outlines]


def _glyph(outlines: Sequence[Sequence[tuple[int, int]]]) -> tuple[bytes, Box]:
    """Return the entry of a simple glyph, and its box."""
    points = [point for outline in outlines for point in outline]
    if not points:
        return b"", (0, 0, 0, 0)
    xs, ys = [x for x, _y in points], [y for _x, y in points]
    box = (min(xs), min(ys), max(xs), max(ys))
    ends: list[int] = []
    for outline in outlines:
        ends.append((ends[-1] if ends else -1) + len(outline))
    entry = pack(f">5h{len(ends)}HH", len(outlines), *box, *ends, 0)
    entry += bytes([ON_CURVE | OVERLAPPING] + [ON_CURVE] * (len(points) - 1))
    for line in (xs, ys):
        steps = [b - a for a, b in pairwise([0, *line])]
        entry += pack(f">{len(steps)}h", *steps)
    return entry + b"\0" * (-len(entry) % 4), box
