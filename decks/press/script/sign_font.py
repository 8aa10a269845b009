"""The signs we draw as a font of the PDF, so that they can be searched for and copied."""

from collections.abc import Sequence

from decks.press.script.glyphs import Cluster
from decks.press.script.pdf_font import PdfFont, Shape
from decks.press.script.signs import SIGNS
from decks.press.script.signs.truetype import EM, Drawn, font_file


class SignFont(PdfFont):
    """The signs of one weight in one document."""

    @property
    def family(self) -> str:
        """What the face is called."""
        return f"fairdeal-signs-{'SemiBold' if self.strong else 'Regular'}"

    def advance(self, cluster: Cluster) -> float:
        """Return how far a sign moves on, in ems."""
        return cluster.advance

    def file(self, shapes: Sequence[Shape]) -> tuple[bytes, list[int]]:
        """Return a TrueType file with these shapes, and which glyph of it each is."""
        drawn = []
        for parts, wide in shapes:
            sign = SIGNS.get(chr(parts[0].number))
            outlines = sign.outlines(strong=self.strong) if sign else []
            drawn.append(Drawn(outlines, round(wide * EM)))
        return font_file(drawn), list(range(len(drawn)))
