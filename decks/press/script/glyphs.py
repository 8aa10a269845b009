"""Letters in one face and direction become glyphs: joined, stacked and placed by HarfBuzz."""

from bisect import bisect_right
from collections.abc import Iterator, Sequence
from unicodedata import mirrored

import uharfbuzz as hb
from msgspec import Struct

from decks.press.script.faces import Face
from decks.press.type import plain


class Part(Struct, frozen=True):
    """A glyph of a face and where it stands, in units of the face from the cluster's origin."""

    number: int
    x: int = 0
    y: int = 0


class Cluster(Struct, frozen=True):
    """What cannot be parted: a letter with its marks, or letters that make one shape.

    `text` is what it shows, from left to right; `advance` is in ems.
    """

    parts: tuple[Part, ...]
    advance: float
    text: str


def shape(
    face: Face, line: str, places: range, texts: Sequence[str], *, to_left: bool
) -> tuple[Cluster, ...]:
    """Return the clusters of some characters of a line, from the left.

    The line around them is considered, as a letter joins its neighbour though that be set in
    another weight. `texts` are what the characters stand for.
    """
    buffer = hb.Buffer()
    buffer.add_str(line, places.start, len(places))
    buffer.direction = "rtl" if to_left else "ltr"
    # the machine's own language must not choose the shapes
    buffer.language = "und"
    buffer.guess_segment_properties()
    hb.shape(face.font, buffer, face.source.features)
    starts = [info.cluster - places.start for info in buffer.glyph_infos]
    heads = [start for n, start in enumerate(sorted({*starts})) if not n or texts[start]]
    ends = dict(zip(heads, [*heads[1:], len(texts)], strict=True))
    groups = _grouped(starts, buffer, heads)
    blank = plain.width_of(" ", strong=face.strong)
    return tuple(
        _cluster(face, group, "".join(texts[start : ends[start]]), blank, to_left=to_left)
        for start, group in groups
    )


def _grouped(
    starts: Sequence[int], buffer: hb.Buffer, heads: Sequence[int]
) -> Iterator[tuple[int, list[tuple[hb.GlyphInfo, hb.GlyphPosition]]]]:
    """Yield the glyphs of each cluster; one that stands for no text belongs to that before it."""
    group: list[tuple[hb.GlyphInfo, hb.GlyphPosition]] = []
    head = None
    for start, glyph in zip(
        starts, zip(buffer.glyph_infos, buffer.glyph_positions, strict=True), strict=True
    ):
        of = heads[bisect_right(heads, start) - 1]
        if head is not None and of != head:
            yield head, group
            group = []
        head = of
        group.append(glyph)
    if head is not None:
        yield head, group


def _cluster(
    face: Face,
    glyphs: Sequence[tuple[hb.GlyphInfo, hb.GlyphPosition]],
    text: str,
    blank: float,
    *,
    to_left: bool,
) -> Cluster:
    parts = []
    x = 0
    for info, place in glyphs:
        parts.append(Part(info.codepoint, x + place.x_offset, place.y_offset))
        x += place.x_advance
    if to_left:
        text = _from_the_left(face, parts, text)
    return Cluster(tuple(parts), blank if text == " " else x / face.file.upem, text)


def _from_the_left(face: Face, parts: Sequence[Part], text: str) -> str:
    """Return the text of a cluster of a script that runs to the left as it stands on paper.

    Readers of PDFs take letters from left to right, turn such scripts round, and turn brackets too.
    """
    if len(text) == len(parts) == 1 and mirrored(text):
        return face.mirror.get(parts[0].number, text)
    return text[::-1]
