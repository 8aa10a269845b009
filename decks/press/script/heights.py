"""How high the letters of a text are that is not all plain Fira Sans."""

from unicodedata import category

from decks.layout.runs import Run
from decks.press.script.faces import FIRA, Source, open_face
from decks.press.script.shaping import set_runs


def least_height(text: str, *, strong: bool) -> float:
    """Return the least height of plain letters, in ems, over the faces that set a text."""
    pieces = set_runs((Run(text, strong),))
    heights = [_height(piece.source or FIRA, piece.text, strong=strong) for piece in pieces]
    lettered = [
        height
        for height, piece in zip(heights, pieces, strict=True)
        if any(category(c)[0] in "LN" for c in piece.text)
    ]
    return min(lettered or heights, default=open_face(FIRA, strong=strong).top("H"))


def _height(source: Source, text: str, *, strong: bool) -> float:
    letter = source.plain
    if not source.blocks and not any(c.islower() for c in text):
        letter = "H"
    return open_face(source, strong=strong).top(letter)
