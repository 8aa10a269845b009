"""A face as a font of the PDF: the glyphs that its clusters are made of, at the face's weight."""

from collections.abc import Sequence

import uharfbuzz as hb

from decks.press.script.composing import Composite, composed
from decks.press.script.faces import Face
from decks.press.script.glyphs import Cluster, Part
from decks.press.script.pdf_font import PdfFont, Shape

DROPPED = ("GSUB", "GPOS", "GDEF", "BASE", "STAT", "MATH", "name", "gasp", "DSIG", "meta")
"""Tables that only serve to set type; the glyphs are already chosen and placed."""


class GlyphFont(PdfFont):
    """A face in one document."""

    def __init__(self, name: str, face: Face) -> None:
        """Take the name that pages will call it by, and the face."""
        super().__init__(name, strong=face.strong)
        self._face = face

    @property
    def family(self) -> str:
        """What the face is called."""
        return self._face.name

    def advance(self, cluster: Cluster) -> float:
        """Return how far the cluster's glyph moves on by itself, in ems."""
        em = self._face.file.upem
        if _single(cluster.parts):
            number = cluster.parts[0].number
            return float(self._face.font.get_glyph_h_advance(number) / em)
        return float(round(cluster.advance * em) / em)

    def file(self, shapes: Sequence[Shape]) -> tuple[bytes, list[int]]:
        """Return a TrueType file with these shapes, and which glyph of it each is."""
        numbers = sorted({part.number for parts, _wide in shapes for part in parts})
        data, moved = _subset(self._face, numbers)
        many = [shape for shape in dict.fromkeys(shapes) if not _single(shape[0])]
        composites = [
            Composite(
                tuple(Part(moved[part.number], part.x, part.y) for part in parts),
                round(wide * self._face.file.upem),
            )
            for parts, wide in many
        ]
        count = max(moved.values()) + 1
        found = {shape: count + n for n, shape in enumerate(many)}
        places = [found.get(shape, moved[shape[0][0].number]) for shape in shapes]
        return composed(data, composites), places


def _subset(face: Face, numbers: Sequence[int]) -> tuple[bytes, dict[int, int]]:
    """Return a font file with these glyphs and what they are made of, and the new numbers."""
    asked = hb.SubsetInput()
    asked.glyph_set.update(numbers)
    asked.drop_table_tag_set.update(int.from_bytes(tag.encode()) for tag in DROPPED)
    asked.flags = hb.SubsetFlags.NO_LAYOUT_CLOSURE | hb.SubsetFlags.NOTDEF_OUTLINE
    for tag, value in face.axes.items():
        asked.pin_axis_location(face.file, tag, value)
    plan = hb.SubsetPlan(face.file, asked)
    moved = plan.old_to_new_glyph_mapping
    return plan.execute().blob.data, {number: moved[number] for number in moved}


def _single(parts: Sequence[Part]) -> bool:
    return len(parts) == 1 and not parts[0].x and not parts[0].y
