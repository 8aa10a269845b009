"""Notes of small print: words and arrows on a line, and which of them fit beside each other."""

from collections.abc import Iterable, Sequence
from typing import TypeAlias

from msgspec import Struct

from decks.layout.frame import Text, Thing, Wedge
from decks.press.type.fonts import measure

SMALL_PRINT = 8.5
ARROW = 0.8
"""How wide and how high an arrow is, in ems: as high as the letters beside it."""
CLEAR = 2.0
"""What parts two notes on one line, in ems."""


class Words(Struct, frozen=True):
    """A few words of small print."""

    text: str
    strong: bool = False


class Arrow(Struct, frozen=True):
    """An arrow head in a line of small print; it points `across` or `up`: -1, 0 or 1 each."""

    across: int
    up: int


Note: TypeAlias = Sequence[Words | Arrow]


def width_of_note(note: Note) -> float:
    """Return the width of a note in points."""
    return sum(_width(piece) for piece in note)


def fit_side_by_side(
    ways: Iterable[tuple[Note, Note]], left: float, right: float
) -> tuple[Note, Note]:
    """Return the first pair of notes that fit between two edges, or else the last."""
    way: tuple[Note, Note] = ((), ())
    for way in ways:
        first, second = (width_of_note(note) for note in way)
        between = CLEAR * SMALL_PRINT if first and second else 0
        if first + between + second <= right - left:
            break
    return way


def set_note(note: Note, x: float, y: float) -> list[Thing]:
    """Return a note on the baseline `y`, from `x` on."""
    things: list[Thing] = []
    for piece in note:
        things.append(_drawn(piece, x, y))
        x += _width(piece)
    return things


def _width(piece: Words | Arrow) -> float:
    if isinstance(piece, Arrow):
        return ARROW * SMALL_PRINT
    return measure(piece.text, piece.strong) * SMALL_PRINT


def _drawn(piece: Words | Arrow, x: float, y: float) -> Thing:
    if isinstance(piece, Arrow):
        return _head(piece, x, y)
    tone = "ink" if piece.strong else "quiet"
    return Text(x, y, piece.text, SMALL_PRINT, strong=piece.strong, tone=tone)


def _head(arrow: Arrow, x: float, y: float) -> Wedge:
    """Return a triangle whose tip is where the arrow points, in a square on the baseline."""
    half = ARROW * SMALL_PRINT / 2
    centre_x, centre_y = x + half, y + 0.345 * SMALL_PRINT
    along, aside = half * 0.85, half * 0.85
    tip = (centre_x + arrow.across * along, centre_y + arrow.up * along)
    back_x, back_y = centre_x - arrow.across * along, centre_y - arrow.up * along
    return Wedge(
        (
            tip,
            (back_x + arrow.up * aside, back_y + arrow.across * aside),
            (back_x - arrow.up * aside, back_y - arrow.across * aside),
        ),
        tone="ink",
    )
