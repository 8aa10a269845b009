"""The test page of `fairdeal align`: printed on both sides, held to the light and read.

Leaf 1 is upright, leaf 2 turned. The scales stand on the back and lines across their zeros on the
front, so that the light shows, on a scale in the back's own axes, where the back ought to be.
"""

from collections.abc import Iterator

from msgspec import Struct

from decks.layout.frame import Frame, Line, Placed, Text, Thing, Wedge
from decks.layout.paper import PAPERS, Paper
from decks.layout.turning import Turning, duplex
from decks.layout.units import mm
from decks.lengths import WHITE_EDGE
from decks.press.align.scales import REACH, Scale
from decks.press.align.words import before_reading, command, how_to_read, in_short
from decks.press.pdf import make_pdf
from decks.press.type.setting import HEADING, NOTE, line_of, width_of
from decks.printers import SPAN
from decks.recipe import Flip, PaperName

WHITE = mm(WHITE_EDGE.top)
EDGE = WHITE + mm(0.6)
CORNER = mm(3.5)
RULE_INDENT = mm(6)
"""Keeps the rule away from the mark in the corner."""
COLUMN = mm(132)
END_ROOM = mm(24)
"""From the edge of a roomy page to the scale at its head or foot, at least."""
SMALL_HEAD = mm(32)
"""From the head of a small page to its scales."""
BETWEEN = mm(30)
"""From one scale at the head to the other, so that no line reaches the other's ticks."""
FOOT_ROOM = mm(14)
BESIDE = mm(16)
BLANK = mm(24)
NARROWEST = 100.0
"""The narrowest column for the words of the front, in points; where there is less they are left
out, as anywhere else they would show through the directions."""


class Leaf(Struct, frozen=True):
    """One leaf of the test page: its paper, its size in points, and the edge to flip on."""

    paper: Paper
    width: float
    height: float
    flip: Flip

    @property
    def turned(self) -> bool:
        """Whether it stands for pages wider than high."""
        return self.width > self.height

    @property
    def turning(self) -> Turning:
        """Where the back of a point is."""
        return duplex(width=self.width, height=self.height, flip=self.flip)

    @property
    def roomy(self) -> bool:
        """Whether there is room for a scale at the foot, a whole span below the head."""
        return self.height >= mm(SPAN) + 2 * END_ROOM and self.width > COLUMN + 2 * WHITE

    @property
    def side_margin(self) -> float:
        """The white beside the lines of type."""
        return mm(10.5) if self.roomy else mm(8)

    @property
    def scales(self) -> list[Scale]:
        """The scales; on a small page those of the head stand side by side."""
        x = self.width / 2
        if not self.roomy:
            y = self.height - SMALL_HEAD
            return [
                Scale("right", x - BETWEEN / 2, y),
                Scale("up", x + BETWEEN / 2, y, upwards=True),
            ]
        head = self.height / 2 + mm(SPAN) / 2
        return [
            Scale("right", x, head),
            Scale("up", x, head - BETWEEN, upwards=True),
            Scale("foot", x, head - mm(SPAN)),
        ]


def align_file(paper: PaperName, flip: Flip) -> bytes:
    """Return the test file for a paper and the edge to flip on, as a PDF."""
    pages = align_pages(PAPERS[paper], flip)
    return make_pdf(pages, title="Printer test", flip=flip)


def align_pages(paper: Paper, flip: Flip) -> list[Frame]:
    """Return the four pages of the test file: leaf 1 upright, leaf 2 turned, front and back."""
    upright = Leaf(paper, paper.width, paper.height, flip)
    turned = Leaf(paper, paper.height, paper.width, flip)
    return [
        page
        for number, leaf in enumerate((upright, turned), start=1)
        for page in (_front(leaf, number), _back(leaf, number))
    ]


def _front(leaf: Leaf, number: int) -> Frame:
    things: list[Thing] = [
        *_small_print(leaf, f"leaf {number} of 2 · front"),
        _corner(leaf, back=False),
        *[scale.front(leaf.turning) for scale in leaf.scales],
    ]
    room = leaf.width / 2 - BESIDE - BLANK - mm(10) - leaf.side_margin
    if leaf.roomy and room >= NARROWEST:
        words = before_reading(room)
        top = leaf.height - mm(22)
        things.append(Placed(leaf.side_margin, top - words.height, words))
    return Frame(leaf.width, leaf.height, tuple(things))


def _back(leaf: Leaf, number: int) -> Frame:
    things: list[Thing] = [
        *_small_print(leaf, f"leaf {number} of 2 · back"),
        _corner(leaf, back=True),
        _directions(leaf),
    ]
    for scale in leaf.scales:
        things += scale.back
        things += _beside(scale) if leaf.roomy else [_above(scale)]
    return Frame(leaf.width, leaf.height, tuple(things))


def _directions(leaf: Leaf) -> Placed:
    """Return the directions: between up and foot on a roomy page, else under the scales."""
    typed = command(turned=leaf.turned, flip=leaf.flip, foot=leaf.roomy)
    lowest = leaf.scales[1].y - REACH
    width = min(COLUMN, leaf.width - 2 * leaf.side_margin)
    words = how_to_read(typed, leaf.flip, turned=leaf.turned, foot=leaf.roomy, width=width)
    if leaf.roomy:
        top = (lowest + leaf.scales[2].y + REACH + words.height) / 2
        return Placed((leaf.width - width) / 2, top - words.height, words)
    if words.height > lowest - FOOT_ROOM:
        words = in_short(typed, leaf.width - 2 * leaf.side_margin)
    return Placed((leaf.width - words.width) / 2, lowest - mm(1.5) - words.height, words)


def _beside(scale: Scale) -> Iterator[Thing]:
    """Yield the name of a scale on its left, and on its right the line to write the number on."""
    y = scale.y - 0.345 * HEADING.size
    yield line_of(scale.name, HEADING, x=scale.x - BESIDE - width_of(scale.name, HEADING), y=y)
    yield Line(scale.x + BESIDE, y - 2, scale.x + BESIDE + BLANK, y - 2)
    yield line_of("mm", NOTE, x=scale.x + BESIDE + BLANK + mm(1.5), y=y)


def _above(scale: Scale) -> Text:
    x = scale.x - width_of(scale.name, HEADING) / 2
    return line_of(scale.name, HEADING, x=x, y=scale.y + REACH + mm(1))


def _small_print(leaf: Leaf, side: str) -> Iterator[Thing]:
    """Yield what the page is and how to print it at the head, and the check rule at the foot."""
    what = f"Printer test · {side}"
    how = f"both sides · flip on the {leaf.flip} edge"
    how = f"{leaf.paper.name} · actual size (100 %) · {how}" if leaf.roomy else f"100 % · {how}"
    x, y = leaf.side_margin, leaf.height - WHITE - 0.95 * NOTE.size
    # the mark of the back may stand in a corner at the head
    right = leaf.width - max(x, EDGE + CORNER + mm(1)) - width_of(how, NOTE)
    beside = right > x + width_of(what, NOTE) + NOTE.size
    yield line_of(what, NOTE, x=x, y=y)
    yield line_of(how, NOTE, x=right if beside else x, y=y if beside else y - 1.4 * NOTE.size)
    yield from _check_rule(leaf)


def _check_rule(leaf: Leaf) -> Iterator[Thing]:
    length = next((at for at in (100, 50) if mm(at + 50) < leaf.width), 30)
    x, y = leaf.side_margin + RULE_INDENT, EDGE
    yield Line(x, y, x + mm(length), y)
    for at in range(0, length + 1, 10):
        yield Line(x + mm(at), y, x + mm(at), y + mm(2 if at % 50 else 3))
    words = f"{length} mm at full size" if mm(length + 60) < leaf.width else f"{length} mm"
    yield line_of(words, NOTE, x=x + mm(length + 3), y=y + 0.8)


def _corner(leaf: Leaf, *, back: bool) -> Wedge:
    """Return the mark in one corner; after a wrong flip it lies behind the opposite corner."""
    x, y = leaf.width - EDGE, EDGE
    corner = [(x, y), (x - CORNER, y), (x, y + CORNER)]
    return Wedge(tuple(leaf.turning.point(*point) if back else point for point in corner))
