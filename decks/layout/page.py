"""A page and its edges: what the printer leaves white, and what cutting needs round the cards."""

from msgspec import Struct

from decks.layout.paper import Paper
from decks.layout.turning import duplex
from decks.layout.units import mm
from decks.lengths import Margins
from decks.recipe import Flip, Sides

MARK_LENGTH = mm(3.5)
LEAST_GAP = mm(1)
OVER_BLEED = mm(0.5)
"""A mark keeps clear of what runs over the cut, by at least the bleed."""

BESIDE = mm(5.5)
BEYOND = mm(9)
"""Beside the cards stand cut marks, above and below them also a line of small print."""

ROUND_WHOLE = mm(3)
"""Parts the small print from the face of a card that is not cut."""

FACE_INSET = mm(5)
"""What a face keeps clear along its own edges. A card that fills its paper has its inset there."""

TWO_SIDED = frozenset({Sides.DUPLEX, Sides.TWO_PASSES})
FOLDED = frozenset({Sides.FOLD, Sides.TENT})


class Edges(Struct, frozen=True, kw_only=True):
    """Widths along the four edges of a page, in points."""

    top: float
    right: float
    bottom: float
    left: float

    def evened(self, *, sideways: bool, endways: bool) -> "Edges":
        """Return the edges with the wider of two that face each other for both."""
        side, end = max(self.left, self.right), max(self.top, self.bottom)
        return Edges(
            top=end if endways else self.top,
            right=side if sideways else self.right,
            bottom=end if endways else self.bottom,
            left=side if sideways else self.left,
        )


class Page(Struct, frozen=True, kw_only=True):
    """A page as it is read: its size, its white edges and the edges round its cards, in points."""

    paper: Paper
    width: float
    height: float
    white: Edges
    around: Edges

    @property
    def turned(self) -> bool:
        """Whether the paper lies on its side."""
        return self.width > self.height

    @property
    def across(self) -> float:
        """The width for cards."""
        return self.width - self.around.left - self.around.right

    @property
    def down(self) -> float:
        """The height for cards."""
        return self.height - self.around.top - self.around.bottom


def mark_gap(bleed: float) -> float:
    """Return how far a mark keeps from the cards, in points, as `bleed` is."""
    return max(LEAST_GAP, bleed + OVER_BLEED)


def page_to_cut(  # noqa: PLR0913 (each of them moves an edge)
    paper: Paper, margins: Margins, sides: Sides, flip: Flip, *, turned: bool, bleed: float
) -> Page:
    """Return a page on which cards stand apart from its white edges by the room for cutting.

    A back lies mirrored behind its front, so that the wider of two mirrored edges counts on both
    sides. Drivers turn paper either way round, so that on turned paper the wider ones always count.
    """
    width, height = _size(paper, turned=turned)
    mirrored = sides in TWO_SIDED
    sideways = duplex(width=width, height=height, flip=flip).sideways
    white = _white(margins, turned=turned).evened(
        sideways=turned or (mirrored and sideways),
        endways=turned or (mirrored and not sideways),
    )
    more = mark_gap(bleed) - LEAST_GAP
    around = Edges(
        top=white.top + BEYOND + more,
        right=white.right + BESIDE + more,
        bottom=white.bottom + BEYOND + more,
        left=white.left + BESIDE + more,
    )
    return Page(paper=paper, width=width, height=height, white=white, around=around)


def whole_page(paper: Paper, margins: Margins, *, turned: bool) -> Page:
    """Return a page that is one card: its face reaches the white edges at the sides.

    Above and below, the face's own inset is left for the small print.
    """
    width, height = _size(paper, turned=turned)
    white = _white(margins, turned=turned).evened(sideways=True, endways=True)
    side = max(0.0, white.left - FACE_INSET)
    end = white.top + ROUND_WHOLE
    around = Edges(top=end, right=side, bottom=end, left=side)
    return Page(paper=paper, width=width, height=height, white=white, around=around)


def _size(paper: Paper, *, turned: bool) -> tuple[float, float]:
    return (paper.height, paper.width) if turned else (paper.width, paper.height)


def _white(margins: Margins, *, turned: bool) -> Edges:
    top, right, bottom, left = (
        mm(edge) for edge in (margins.top, margins.right, margins.bottom, margins.left)
    )
    if turned:
        return Edges(top=right, right=bottom, bottom=left, left=top)
    return Edges(top=top, right=right, bottom=bottom, left=left)
