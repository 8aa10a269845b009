"""Font files get a glyph for each cluster: its parts, each at its place (OpenType, glyf table).

So a letter with its marks is one code in the PDF. A reader that copies the text need not guess from
places on paper which mark belongs to which letter.
"""

from collections.abc import Mapping, Sequence
from struct import pack, unpack_from

from msgspec import Struct

from decks.press.script.glyphs import Part

WORDS, PLACES, MORE = 0x0001, 0x0002, 0x0020
"""Flags of a component: offsets of sixteen bits, which are places, and another to come."""

MAGIC = 0xB1B0AFBA
"""What the checksums of a font file add up to."""

DEEPEST = 8
MOST_POINTS, MOST_CONTOURS = 6000, 300
"""Room that a glyph made of glyphs may need, told to whoever draws it."""


class Composite(Struct, frozen=True):
    """Glyphs of the file at places, and how far they move on, all in units of the face."""

    parts: tuple[Part, ...]
    advance: int


def composed(data: bytes, composites: Sequence[Composite]) -> bytes:
    """Return a font file with more glyphs, which follow those it has in the order given."""
    tables = tables_of(data)
    count = _number(tables["maxp"], 4)
    glyf, starts = tables["glyf"], _starts(tables, count)
    metrics = _metrics(tables, count)
    for composite in composites:
        glyph, left = _glyph(composite, glyf, starts)
        glyf += glyph
        starts.append(len(glyf))
        metrics.append((composite.advance, left))
    tables["glyf"] = glyf
    tables["loca"] = pack(f">{len(starts)}I", *starts)
    tables["hmtx"] = b"".join(pack(">Hh", *metric) for metric in metrics)
    tables["head"] = tables["head"][:50] + pack(">h", 1) + tables["head"][52:]
    tables["hhea"] = tables["hhea"][:34] + pack(">H", len(metrics))
    tables["maxp"] = _largest(tables["maxp"], composites, len(metrics))
    return file_of(data[:4], tables)


def tables_of(data: bytes) -> dict[str, bytes]:
    """Return the tables of a font file by their tags."""
    tables = {}
    for n in range(_number(data, 4)):
        tag, _checksum, start, length = unpack_from(">4sIII", data, 12 + 16 * n)
        tables[tag.decode("latin-1")] = data[start : start + length]
    return tables


def _number(table: bytes, at: int) -> int:
    return int(unpack_from(">H", table, at)[0])


def _starts(tables: Mapping[str, bytes], count: int) -> list[int]:
    """Return where each glyph starts in glyf, and where the last one ends."""
    if unpack_from(">h", tables["head"], 50)[0]:
        return list(unpack_from(f">{count + 1}I", tables["loca"]))
    return [2 * place for place in unpack_from(f">{count + 1}H", tables["loca"])]


def _metrics(tables: Mapping[str, bytes], count: int) -> list[tuple[int, int]]:
    """Return the advance and the left bearing of each glyph."""
    full = _number(tables["hhea"], 34)
    pairs = [unpack_from(">Hh", tables["hmtx"], 4 * n) for n in range(full)]
    lone = unpack_from(f">{count - full}h", tables["hmtx"], 4 * full)
    return [(int(a), int(b)) for a, b in pairs] + [(int(pairs[-1][0]), int(b)) for b in lone]


def _glyph(composite: Composite, glyf: bytes, starts: Sequence[int]) -> tuple[bytes, int]:
    """Return the entry of a composite glyph, and its left edge."""
    boxes = []
    for part in composite.parts:
        if starts[part.number] < starts[part.number + 1]:
            box = unpack_from(">4h", glyf, starts[part.number] + 2)
            boxes.append([n + (part.y if i % 2 else part.x) for i, n in enumerate(box)])
    if not boxes:
        return b"", 0
    lows, highs = (
        [min(c) for c in zip(*boxes, strict=True)],
        [max(c) for c in zip(*boxes, strict=True)],
    )
    entry = pack(">5h", -1, *lows[:2], *highs[2:])
    for n, part in enumerate(composite.parts, 1):
        flags = WORDS | PLACES | (MORE if n < len(composite.parts) else 0)
        entry += pack(">HHhh", flags, part.number, part.x, part.y)
    return entry + b"\0" * (-len(entry) % 4), lows[0]


def _largest(maxp: bytes, composites: Sequence[Composite], count: int) -> bytes:
    most = max((len(composite.parts) for composite in composites), default=0)
    told = list(unpack_from(">I14H", maxp))
    told[1] = count
    told[4] = max(told[4], MOST_POINTS)
    told[5] = max(told[5], MOST_CONTOURS)
    told[13] = max(told[13], most)
    told[14] = min(told[14] + 1, DEEPEST)
    return pack(">I14H", *told)


def file_of(kind: bytes, tables: Mapping[str, bytes]) -> bytes:
    """Return tables as a font file (OpenType, table directory)."""
    count = len(tables)
    power = 1 << (count.bit_length() - 1)
    head = kind + pack(">4H", count, 16 * power, power.bit_length() - 1, 16 * (count - power))
    at = 12 + 16 * count
    directory = body = b""
    for tag in sorted(tables):
        table = tables[tag]
        if tag == "head":
            table = table[:8] + b"\0\0\0\0" + table[12:]
            head_at = at
        directory += pack(">4sIII", tag.encode("latin-1"), _sum(table), at, len(table))
        padded = table + b"\0" * (-len(table) % 4)
        body += padded
        at += len(padded)
    data = head + directory + body
    adjustment = pack(">I", (MAGIC - _sum(data)) & 0xFFFFFFFF)
    return data[: head_at + 8] + adjustment + data[head_at + 12 :]


def _sum(table: bytes) -> int:
    padded = table + b"\0" * (-len(table) % 4)
    return int(sum(unpack_from(f">{len(padded) // 4}I", padded)) & 0xFFFFFFFF)
