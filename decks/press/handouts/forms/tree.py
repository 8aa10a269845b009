"""A tree: a trunk from the main idea, a branch for each heading, a twig for each detail."""

from collections.abc import Iterator, Sequence

from msgspec import Struct

from decks.layout.flow import Block
from decks.layout.frame import Curve, Frame, Line, Placed, Thing
from decks.press.handouts.forms.plan import Heading, Plan
from decks.press.handouts.forms.writing import (
    PAD,
    Point,
    bend,
    framed_box,
    heading_words,
    lines,
)
from decks.press.type.setting import paragraph, under_one_another

TRUNK = 12.0
BOUGH = 34.0
"""How far the trunk stands from the margin, and how far a heading."""

CROOK = 22.0
STOUT = 2.6
SHARE = 0.36
TWIG = 40.0
AIR = 14.0
MOST_LINES = 3
TWIGS = 6
"""More details of one heading are parted, so that a page may end among them."""

LEAF = 9.0


class Piece(Struct, frozen=True):
    """Some of a heading's details; `first` and `last` of it, `ends` where the tree ends with it."""

    heading: Heading
    twigs: int
    first: bool
    last: bool
    ends: bool


def tree(plan: Plan) -> list[Block]:
    """Return the tree as blocks, a branch each; long branches are parted."""
    count = _lines_each(plan)
    return [
        Block(
            _branch(piece, plan, count),
            head=None if piece.first else _again(piece.heading, plan),
        )
        for piece in _pieces(plan.headings)
    ]


def _pieces(headings: Sequence[Heading]) -> Iterator[Piece]:
    for heading in headings:
        for first in range(0, heading.details, TWIGS):
            twigs = min(TWIGS, heading.details - first)
            last = first + twigs == heading.details
            yield Piece(heading, twigs, first == 0, last, heading is headings[-1])


def _lines_each(plan: Plan) -> int:
    """Return how many lines every detail gets, as many as leave the tree on its first page."""
    details = sum(heading.details for heading in plan.headings)
    room = plan.first - AIR * len(plan.headings)
    return max(1, min(MOST_LINES, int(room // max(1, details * plan.pitch))))


def _branch(piece: Piece, plan: Plan, count: int) -> Frame:
    """Return a heading with its details, beside the piece of the trunk that it grows from."""
    edge = BOUGH + SHARE * plan.width
    box = _box(piece.heading, plan, SHARE * plan.width) if piece.first else None
    needed = piece.twigs * count * plan.pitch + (AIR if piece.last else 0)
    height = max(needed, box.height + AIR if box else 0)
    node = (height + (0 if piece.last else AIR)) / 2
    things: list[Thing] = [*_trunk(piece, height, node), *_stem(piece, edge, height, node)]
    if box:
        things += [Placed(BOUGH, node - box.height / 2, box), _bough(node)]
    top = (height + piece.twigs * count * plan.pitch) / 2
    for n in range(1, piece.twigs + 1):
        things += _twig((edge, node), top - n * count * plan.pitch, count, plan)
    return Frame(plan.width, height, tuple(things))


def _trunk(piece: Piece, height: float, node: float) -> list[Line]:
    """Return the trunk beside a piece; it ends where the last heading grows."""
    if piece.ends and not piece.first:
        return []
    foot = node + CROOK if piece.ends else 0.0
    return [Line(TRUNK, height, TRUNK, min(height, foot), STOUT, "frame")]


def _stem(piece: Piece, x: float, height: float, node: float) -> list[Line]:
    """Return what joins the pieces of one heading."""
    top, foot = node if piece.first else height, node if piece.last else 0.0
    return [Line(x, top, x, foot, 1.0, "frame")] if top > foot else []


def _twig(root: Point, y: float, count: int, plan: Plan) -> list[Thing]:
    x = root[0] + TWIG
    written = lines(count, plan.width - x - 2, plan.pitch)
    return [bend(root, (x - LEAF, y)), _leaf(x - LEAF, y), Placed(x + 2, y, written)]


def _bough(node: float) -> Curve:
    """Return the bend from the trunk to a heading at this height."""
    start, end = (TRUNK, node + CROOK), (BOUGH, node)
    points = (start, (TRUNK, node + 0.35 * CROOK), (TRUNK + 0.4 * CROOK, node), end)
    return Curve(points, width=STOUT)


def _box(heading: Heading, plan: Plan, width: float) -> Frame:
    inner = width - 2 * PAD
    words = under_one_another(
        [
            paragraph("Heading", inner, plan.sizes.label),
            heading_words(heading.number, heading.hint, inner, plan.sizes),
        ]
    )
    return framed_box(words, fill="panel")


def _leaf(x: float, y: float) -> Curve:
    """Return a leaf at the end of a twig, its stalk at (x, y)."""
    tip = (x + LEAF, y)
    high = 0.48 * LEAF
    points = (
        (x, y),
        (x + 0.25 * LEAF, y + high),
        (x + 0.7 * LEAF, y + high),
        tip,
        (x + 0.7 * LEAF, y - high),
        (x + 0.25 * LEAF, y - high),
        (x, y),
    )
    return Curve(points, stroke="rule", fill="white", width=0.7)


def _again(heading: Heading, plan: Plan) -> Frame:
    return paragraph(f"Heading {heading.number}, more details", plan.width, plan.sizes.label)
