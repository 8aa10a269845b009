"""Plain type in a content stream: texts as the operators that show them."""

import re
from collections.abc import Sequence

from reportlab.pdfgen.canvas import Canvas

from decks.layout.runs import Run
from decks.press.type.embedded import font
from decks.press.type.plain import font_name, width_of

_ESCAPED = re.compile(r"[\\()]")


class Letters:
    """The plain type of one document; a font is part of it from the first letter on."""

    def __init__(self, canvas: Canvas) -> None:
        self._weights = {strong: _Weight(canvas, strong=strong) for strong in (False, True)}

    def text(self, text: str, x: float, y: float, size: float, *, strong: bool) -> str:
        """Return the text object that shows a plain text from a baseline at (x, y)."""
        return f"BT {x:.3f} {y:.3f} Td {self._weights[strong].shown(text, size)} ET"

    def runs(self, runs: Sequence[Run], x: float, y: float, size: float) -> str:
        """Return the text objects that show plain runs beside one another."""
        shown = []
        for run in runs:
            scaled = size * run.scale
            shown.append(self.text(run.text, x, y + run.rise * size, scaled, strong=run.strong))
            x += width_of(run.text, strong=run.strong) * scaled
        return " ".join(shown)


class _Weight:
    """One weight of a document.

    Its first subset has all of ASCII, each letter at its own code, and room for about a hundred
    letters more; texts with others are shown piece by piece.
    """

    def __init__(self, canvas: Canvas, *, strong: bool) -> None:
        self._font = font(font_name(strong=strong))
        self._document = canvas._doc  # noqa: SLF001 (a canvas has no other way to its document)
        self._first = self._name(0)
        self._codes = {ord("\\"): r"\\", ord("("): r"\(", ord(")"): r"\)"}
        self._sizes: dict[float, str] = {}
        self._known: set[str] = set()
        self._beyond: set[str] = set()

    def shown(self, text: str, size: float) -> str:
        """Return the operators that show a text."""
        if not text.isascii():
            self._learn(set(text) - self._known)
            if not self._beyond.isdisjoint(text):
                return self._in_pieces(text, size)
        elif not _ESCAPED.search(text):
            return f"{self._set_in(size)} ({text}) Tj"
        return f"{self._set_in(size)} ({text.translate(self._codes)}) Tj"

    def _set_in(self, size: float) -> str:
        """Return the operator that sets what follows in a size."""
        if size not in self._sizes:
            self._sizes[size] = f"{self._first} {size:.5g} Tf"
        return self._sizes[size]

    def _learn(self, letters: set[str]) -> None:
        for letter in sorted(letters):
            ((subset, code),) = self._font.splitString(letter, self._document)
            if subset:
                self._beyond.add(letter)
            elif not letter.isascii():
                self._codes[ord(letter)] = f"\\{code[0]:03o}"
        self._known |= letters

    def _in_pieces(self, text: str, size: float) -> str:
        pieces = self._font.splitString(text, self._document)
        return " ".join(
            f"{self._name(subset)} {size:.5g} Tf <{codes.hex()}> Tj" for subset, codes in pieces
        )

    def _name(self, subset: int) -> str:
        name: str = self._font.getSubsetInternalName(subset, self._document)
        return name
