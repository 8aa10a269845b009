"""Set lines onto a canvas."""

from collections.abc import Sequence
from typing import Any
from weakref import WeakKeyDictionary

from reportlab.lib.rl_accel import fp_str
from reportlab.pdfgen.canvas import Canvas

from decks.press.script.faces import open_face
from decks.press.script.glyph_font import GlyphFont
from decks.press.script.glyphs import Cluster
from decks.press.script.pdf_font import PdfFont
from decks.press.script.shaping import Piece
from decks.press.script.sign_font import SignFont
from decks.press.type import plain

_fonts: WeakKeyDictionary[Any, dict[tuple[str, bool], PdfFont]] = WeakKeyDictionary()
"""The fonts of each document that is being made."""

NEAR = 0.0005
"""Differences of place in ems that do not show."""


def draw(canvas: Canvas, pieces: Sequence[Piece], x: float, y: float, size: float) -> None:
    """Draw a line whose baseline begins at (x, y), in the canvas's colour."""
    for piece in pieces:
        _draw(canvas, piece, x, y + piece.run.rise * size, size * piece.run.scale)
        x += piece.width * size


def _draw(canvas: Canvas, piece: Piece, x: float, y: float, size: float) -> None:
    if piece.letters:
        canvas.setFont(plain.font_name(strong=piece.run.strong), size)
        canvas.drawString(x, y, piece.letters)
    elif piece.clusters:
        font = _font(canvas, piece)
        shown = " ".join(_shown(font, piece.clusters))
        place = f"1 0 0 1 {fp_str(x, y)} Tm"
        canvas.addLiteral(f"BT {place} /{font.name} {fp_str(size)} Tf [{shown}] TJ ET")


def _font(canvas: Canvas, piece: Piece) -> PdfFont:
    document = canvas._doc  # noqa: SLF001 (a canvas has no other way to its document)
    known = _fonts.setdefault(document, {})
    strong = piece.run.strong
    key = (piece.source.regular if piece.source else "", strong)
    if key not in known:
        name = f"S{chr(ord('A') + len(known))}"
        known[key] = (
            GlyphFont(name, open_face(piece.source, strong=strong))
            if piece.source
            else SignFont(name, strong=strong)
        )
        document.delayedFonts.append(known[key])
    return known[key]


def _shown(font: PdfFont, clusters: Sequence[Cluster]) -> list[str]:
    """Return what shows the clusters, with how far to move between them where they are kerned."""
    row: list[str] = []
    owed = 0.0
    for cluster in clusters:
        if abs(owed) > NEAR:
            row.append(fp_str(-1000 * owed))
            owed = 0
        row.append(f"<{font.code(cluster)}>")
        owed += cluster.advance - font.advance(cluster)
    return row
