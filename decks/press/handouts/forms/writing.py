"""Lines and boxes to write in, with their labels."""

from collections.abc import Sequence
from typing import TypeAlias, TypeVar

from decks.evenly import evenly
from decks.layout.frame import Box, Curve, Frame, Line, Placed
from decks.press.handouts.guide_type import GuideType
from decks.press.type.setting import gap, line_of, paragraph, under_one_another

Point: TypeAlias = tuple[float, float]
T = TypeVar("T")
PAD = 10.0
RING = 5.0


def lines(count: int, width: float, pitch: float) -> Frame:
    """Return lines to write on, one under another; the last lies at the foot."""
    things = tuple(Line(0, n * pitch, width, n * pitch, 0.6, "rule") for n in range(count))
    return Frame(width, count * pitch, things)


def detail(count: int, width: float, pitch: float) -> Frame:
    """Return the lines for one detail, with a ring before the first of them."""
    ring = Box(0.4, (count - 1) * pitch + 3, RING, RING, radius=RING / 2, stroke="rule")
    written = Placed(2.2 * RING, 0, lines(count, width - 2.2 * RING, pitch))
    return Frame(width, count * pitch, (ring, written))


def labelled(label: str, below: Frame, sizes: GuideType) -> Frame:
    """Return a small label over what it names."""
    return under_one_another([paragraph(label, below.width, sizes.label), below])


def framed_box(inside: Frame, *, fill: str | None = None) -> Frame:
    """Return what stands inside in a thin rounded frame."""
    width, height = inside.width + 2 * PAD, inside.height + 2 * PAD
    box = Box(0, 0, width, height, radius=9, fill=fill, stroke="frame")
    return Frame(width, height, (box, Placed(PAD, PAD, inside)))


def main_idea(sizes: GuideType, width: float) -> Frame:
    """Return the frame for the main idea, with two lines to write on."""
    inner = width - 2 * PAD
    return framed_box(labelled("Main idea", lines(2, inner, sizes.next_line), sizes))


def symbols(rows: int, sizes: GuideType, width: float) -> Frame:
    """Return places for symbols, in two columns: a box to draw in, a line for what it means."""
    each = width if not sizes.beside else (width - 20) / 2
    places = [
        _symbol(each, sizes.next_line + 4) for _ in range(rows if not sizes.beside else 2 * rows)
    ]
    across = 1 if not sizes.beside else 2
    height = rows * (sizes.next_line + 10)
    things = tuple(
        Placed((n % across) * (each + 20), height - (n // across + 1) * (sizes.next_line + 10), one)
        for n, one in enumerate(places)
    )
    grid = Frame(width, height, things)
    label = paragraph("Our symbols, and what each symbol means", width, sizes.label)
    return under_one_another([label, gap(2), grid])


def _symbol(width: float, side: float) -> Frame:
    box = Box(0.4, 0, 1.35 * side, side, radius=5, stroke="frame")
    start = 1.35 * side + 8
    return Frame(width, side, (box, Line(start, 0.4, width, 0.4, 0.6, "rule")))


def heading_words(number: int, hint: str, width: float, sizes: GuideType) -> Frame:
    """Return the line for a heading: its number before it, the hint for it below."""
    figure = line_of(str(number), sizes.number, x=0, y=3)
    start = 1.3 * sizes.number.size
    line = Line(start, 0, width, 0, 0.9, "rule")
    written = Frame(width, sizes.next_line, (figure, line))
    if not hint:
        return written
    words = paragraph(hint, width - start, sizes.label)
    return under_one_another(
        [written, gap(2), Frame(width, words.height, (Placed(start, 0, words),))]
    )


def straight(start: Point, end: Point) -> tuple[Point, Point, Point]:
    """Return a straight line as the controls and the end of a curve."""
    third = ((end[0] - start[0]) / 3, (end[1] - start[1]) / 3)
    return (
        (start[0] + third[0], start[1] + third[1]),
        (end[0] - third[0], end[1] - third[1]),
        end,
    )


def bend(start: Point, end: Point) -> Curve:
    """Return a curve that leaves and arrives level, as a twig does."""
    middle = (start[0] + end[0]) / 2
    points = (start, (middle, start[1]), (middle, end[1]), end)
    return Curve(points, width=1.0)


def parted(things: Sequence[T], most: int) -> list[Sequence[T]]:
    """Part a sequence into as few pieces of at most so many as can be, as even as can be."""
    return evenly(things, max(1, -(-len(things) // most)))
