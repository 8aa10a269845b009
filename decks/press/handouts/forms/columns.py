"""Columns: a heading over each, its details under it."""

from collections.abc import Sequence

from decks.layout.flow import Block
from decks.layout.frame import Curve, Frame, Line, Placed, Thing
from decks.press.handouts.forms.plan import Heading, Plan
from decks.press.handouts.forms.writing import PAD, detail, heading_words, parted, straight
from decks.press.operators import CIRCLE
from decks.press.type.setting import gap, paragraph, under_one_another

BETWEEN = 10.0
RADIUS = 9.0
FOOT = 12.0
AFTER = 6.0
NARROW = 215.0
"""A detail in a narrower column has two lines at the least."""

MOST_LINES = 4
ACROSS, ACROSS_LARGE = 4, 2


def columns(plan: Plan) -> list[Block]:
    """Return the columns as strips that a page may end after; a head is set again on the next."""
    rows = parted(plan.headings, ACROSS if plan.sizes.beside else ACROSS_LARGE)
    room = plan.first / len(rows)
    return [block for row in rows for block in _row(row, plan, room)]


def _row(row: Sequence[Heading], plan: Plan, room: float) -> list[Block]:
    across = len(row)
    each = (plan.width - (across - 1) * BETWEEN) / across
    head = _heads(row, plan, each)
    deep = max(heading.details for heading in row)
    count = lines_each(plan, each, deep, room - head.height - FOOT - 10)
    strips = [
        Block(_strip(row, plan, each, n, count), head=head, with_next=n == deep - 1)
        for n in range(deep)
    ]
    return [
        Block(head, space=10, with_next=True),
        *strips,
        Block(_feet(across, each, plan.width)),
    ]


def lines_each(plan: Plan, width: float, details: int, room: float) -> int:
    """Return how many lines every detail gets: as many as fill the room, within reason."""
    least = 1 if width >= NARROW else 2
    fitting = int((room / max(details, 1) - AFTER) // plan.pitch)
    return max(least, min(MOST_LINES, fitting))


def _heads(row: Sequence[Heading], plan: Plan, each: float) -> Frame:
    words = [
        under_one_another(
            [
                paragraph("Heading", each - 2 * PAD, plan.sizes.label),
                heading_words(one.number, one.hint, each - 2 * PAD, plan.sizes),
            ]
        )
        for one in row
    ]
    height = max(word.height for word in words) + 2 * PAD
    things: list[Thing] = []
    for n, word in enumerate(words):
        x = n * (each + BETWEEN)
        things.append(_arch(x, each, height))
        things.append(Placed(x + PAD, height - PAD - word.height, word))
    return Frame(plan.width, height, tuple(things))


def _arch(x: float, width: float, height: float) -> Curve:
    """Return the tinted head of a column, round at the top."""
    return Curve(_rounded(x, width, height), stroke="frame", fill="panel")


def _rounded(x: float, width: float, height: float) -> tuple[tuple[float, float], ...]:
    right, near = x + width, RADIUS * (1 - CIRCLE)
    left_top, right_top = (x, height - RADIUS), (right - RADIUS, height)
    return (
        (x, 0),
        *straight((x, 0), left_top),
        (x, height - near),
        (x + near, height),
        (x + RADIUS, height),
        *straight((x + RADIUS, height), right_top),
        (right - near, height),
        (right, height - near),
        (right, height - RADIUS),
        *straight((right, height - RADIUS), (right, 0)),
        *straight((right, 0), (x, 0)),
    )


def _strip(row: Sequence[Heading], plan: Plan, each: float, place: int, count: int) -> Frame:
    """Return the places of all columns for their detail of this number, between their borders."""
    height = count * plan.pitch + AFTER
    things: list[Thing] = []
    for n, heading in enumerate(row):
        x = n * (each + BETWEEN)
        things += [Line(edge, 0, edge, height, 0.8, "frame") for edge in (x, x + each)]
        if place < heading.details:
            things.append(Placed(x + PAD, 0, detail(count, each - 2 * PAD, plan.pitch)))
    return Frame(plan.width, height, tuple(things))


def _feet(across: int, each: float, width: float) -> Frame:
    """Return the round feet of the columns."""
    things: list[Thing] = []
    near = RADIUS * (1 - CIRCLE)
    for n in range(across):
        x = n * (each + BETWEEN)
        right = x + each
        points = (
            (x, FOOT),
            *straight((x, FOOT), (x, RADIUS)),
            (x, near),
            (x + near, 0),
            (x + RADIUS, 0),
            *straight((x + RADIUS, 0), (right - RADIUS, 0)),
            (right - near, 0),
            (right, near),
            (right, RADIUS),
            *straight((right, RADIUS), (right, FOOT)),
        )
        things.append(Curve(points))
    return under_one_another([Frame(width, FOOT, tuple(things)), gap(2)])
