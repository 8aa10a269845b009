"""A figure: the main idea in its head, headings and details in arms, chest and legs."""

from collections.abc import Sequence

from decks.layout.flow import Block
from decks.layout.frame import Frame, Line, Placed, Thing
from decks.press.handouts.forms.outline import Figure, Room
from decks.press.handouts.forms.plan import Heading, Plan
from decks.press.handouts.forms.writing import detail, heading_words, parted
from decks.press.type.setting import gap, line_of, paragraph, under_one_another, width_of

MOST = 5
NARROW = 200.0
SPACE = 10.0
LEAST = 430.0
TO_DRAW_IN = "Room to draw"


def figure(plan: Plan) -> list[Block]:
    """Return figures of up to five headings each, and more lines for what has no room in them."""
    groups = parted(plan.headings, MOST)
    blocks = []
    for n, headings in enumerate(groups):
        drawn = _figure(plan, n)
        blocks.append(Block(_drawing(drawn, headings, plan), space=SPACE))
    return [*blocks, *_more(groups, plan)]


def _figure(plan: Plan, number: int) -> Figure:
    """Return the outline: the first on the first page, if it has room there for a whole figure."""
    room = plan.first if number == 0 and plan.first >= LEAST else plan.page
    return Figure(plan.width, max(LEAST, room) - SPACE)


def _rooms(drawn: Figure, count: int) -> tuple[list[Room], list[Room]]:
    """Return the rooms for so many headings in reading order, and those that are left."""
    arms, chest, legs = list(drawn.arms), [drawn.chest], list(drawn.legs)
    if count == 1:
        return chest, [*arms, *legs]
    if count == 2:  # noqa: PLR2004 (the largest rooms are two)
        return legs, [*arms, *chest]
    if count == 3:  # noqa: PLR2004 (what lies side by side)
        return [arms[0], *chest, arms[1]], legs
    if count == 4:  # noqa: PLR2004 (the limbs)
        return [*arms, *legs], chest
    return [arms[0], *chest, arms[1], *legs], []


def _drawing(drawn: Figure, headings: Sequence[Heading], plan: Plan) -> Frame:
    used, free = _rooms(drawn, len(headings))
    things: list[Thing] = [*drawn.drawn, *_main_idea(drawn, plan)]
    for room, heading in zip(used, headings, strict=True):
        things.append(_placed(room, _part(room, heading, plan)))
    things += [_to_draw_in(room, plan) for room in free]
    return Frame(drawn.width, drawn.height, tuple(things))


def _to_draw_in(room: Room, plan: Plan) -> Thing:
    """Return the label of a part that no heading has, in its middle at the top."""
    style = plan.sizes.label
    x = room.x + (room.width - width_of(TO_DRAW_IN, style)) / 2
    return line_of(TO_DRAW_IN, style, x=x, y=room.top - 1.2 * style.size)


def _placed(room: Room, frame: Frame) -> Placed:
    return Placed(room.x, room.top - frame.height, frame)


def _main_idea(drawn: Figure, plan: Plan) -> list[Thing]:
    """Return the label in the crown and as many lines as the head has room for."""
    size = plan.sizes.label.size
    label = width_of("Main idea", plan.sizes.label)
    first = 1.9 * size
    things: list[Thing] = [
        line_of("Main idea", plan.sizes.label, x=drawn.half - label / 2, y=drawn.height - first)
    ]
    count = int((drawn.head - 14 - first) // plan.pitch)
    for n in range(1, count + 1):
        down = first + n * plan.pitch
        wide, y = drawn.head_width(down), drawn.height - down
        things.append(Line(drawn.half - wide / 2, y, drawn.half + wide / 2, y, 0.6, "rule"))
    return things


def _part(room: Room, heading: Heading, plan: Plan) -> Frame:
    """Return a heading and the lines for as many of its details as have room."""
    head = _head(heading, room, plan)
    count = _lines_each(room, heading, plan)
    details = min(heading.details, _fitting(room, heading, plan, count))
    return under_one_another([head, *[detail(count, room.width, plan.pitch)] * details])


def _head(heading: Heading, room: Room, plan: Plan) -> Frame:
    return heading_words(heading.number, heading.hint, room.width, plan.sizes)


def _lines_each(room: Room, heading: Heading, plan: Plan) -> int:
    """Return two lines a detail where there is room for it, or where one line is very short."""
    both = _fitting(room, heading, plan, 2) >= heading.details
    return 2 if both or room.width < NARROW / 2 else 1


def _fitting(room: Room, heading: Heading, plan: Plan, count: int) -> int:
    left = room.height - _head(heading, room, plan).height
    return max(0, int(left // (count * plan.pitch)))


def _more(groups: Sequence[Sequence[Heading]], plan: Plan) -> list[Block]:
    """Return lines for the details that have no room in the figures, heading by heading."""
    blocks = []
    for n, headings in enumerate(groups):
        drawn = _figure(plan, n)
        for room, heading in zip(_rooms(drawn, len(headings))[0], headings, strict=True):
            held = _fitting(room, heading, plan, _lines_each(room, heading, plan))
            blocks += _lines_for(heading, heading.details - held, plan)
    return blocks


def _lines_for(heading: Heading, details: int, plan: Plan) -> list[Block]:
    if details <= 0:
        return []
    title = paragraph(f"Heading {heading.number}, more details", plan.width, plan.sizes.label)
    row = under_one_another([gap(3), detail(1, plan.width, plan.pitch)])
    return [
        Block(title, space=14, with_next=True),
        *(Block(row, head=title) for _ in range(details)),
    ]
