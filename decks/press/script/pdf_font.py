"""Fonts in the PDF: the shapes that were drawn and no others, with the text that each shows.

They are composite fonts with two-byte codes (ISO 32000-1, §9.7). A code stands for a shape together
with its text, so that one shape that shows now this text and now that can be copied rightly.
"""

from abc import ABC, abstractmethod
from collections.abc import Sequence
from struct import pack
from typing import Any, TypeAlias

from reportlab.pdfbase.pdfdoc import PDFArray, PDFDictionary, PDFStream, PDFZCompress

from decks.press.script.glyphs import Cluster, Part
from decks.press.script.to_unicode import to_unicode
from decks.press.type.embedded import font
from decks.press.type.plain import font_name

SYMBOLIC = 4

Shape: TypeAlias = tuple[tuple[Part, ...], float]
"""The parts of a cluster, and how far its glyph moves on by itself in ems."""

NOTHING: Shape = ((Part(0),), 0.0)


class PdfFont(ABC):
    """A font in one document; codes are given out as clusters are drawn."""

    def __init__(self, name: str, *, strong: bool) -> None:
        """Take the name that pages will call it by."""
        self.name = name
        self.strong = strong
        self._codes: dict[tuple[Shape, str], int] = {(NOTHING, ""): 0}

    @property
    @abstractmethod
    def family(self) -> str:
        """What the face is called."""

    @abstractmethod
    def advance(self, cluster: Cluster) -> float:
        """Return how far the cluster's glyph moves on by itself, in ems."""

    @abstractmethod
    def file(self, shapes: Sequence[Shape]) -> tuple[bytes, list[int]]:
        """Return a TrueType file with these shapes, and which glyph of it each is."""

    def code(self, cluster: Cluster) -> str:
        """Return the code that stands for a cluster, in hexadecimal."""
        shape = (cluster.parts, self.advance(cluster))
        return f"{self._codes.setdefault((shape, cluster.text), len(self._codes)):04X}"

    def addObjects(self, document: Any) -> None:  # noqa: ANN401, N802 (the press asks for it so)
        """Put the font into a document, when all has been drawn."""
        shapes = [shape for shape, _text in self._codes]
        data, places = self.file(shapes)
        base = f"/{self.name}AAAA+{self.family}"
        descendant = PDFDictionary(
            {
                "Type": "/Font",
                "Subtype": "/CIDFontType2",
                "BaseFont": base,
                "CIDSystemInfo": "<</Registry (Adobe) /Ordering (Identity) /Supplement 0>>",
                "FontDescriptor": self._descriptor(document, base, data),
                "W": PDFArray([0, PDFArray([round(wide * 1000, 3) for _parts, wide in shapes])]),
                "CIDToGIDMap": _stream(document, pack(f">{len(places)}H", *places)),
            }
        )
        font = PDFDictionary(
            {
                "Type": "/Font",
                "Subtype": "/Type0",
                "BaseFont": base,
                "Encoding": "/Identity-H",
                "DescendantFonts": PDFArray([document.Reference(descendant)]),
                "ToUnicode": _stream(document, to_unicode([text for _s, text in self._codes])),
            }
        )
        document.idToObject["BasicFonts"].dict[self.name] = document.Reference(font)

    def _descriptor(self, document: Any, base: str, data: bytes) -> Any:  # noqa: ANN401
        """Return the descriptor; with the heights of plain type, a mixed line reads as one."""
        like = font(font_name(strong=self.strong)).face
        return document.Reference(
            PDFDictionary(
                {
                    "Type": "/FontDescriptor",
                    "FontName": base,
                    "Flags": SYMBOLIC,
                    "FontBBox": PDFArray(like.bbox),
                    "ItalicAngle": 0,
                    "Ascent": like.ascent,
                    "Descent": like.descent,
                    "CapHeight": like.capHeight,
                    "StemV": like.stemV,
                    "FontFile2": _stream(document, data, Length1=len(data)),
                }
            )
        )


def _stream(document: Any, content: bytes | str, **more: int) -> Any:  # noqa: ANN401
    return document.Reference(PDFStream(PDFDictionary(more), content, [PDFZCompress]))
