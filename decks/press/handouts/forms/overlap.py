"""Two fields that lie over each other: what is in one, in the other, and in both."""

from decks.layout.frame import Box, Frame, Line, Placed, Thing
from decks.press.handouts.guide_type import GuideType
from decks.press.type.setting import paragraph

SIDE = 0.37
"""The share of the width that only one field has."""

RADIUS = 22.0
PAD = 12.0


def overlapping(width: float, height: float, sizes: GuideType) -> Frame:
    """Return two rounded fields that lie over each other in the middle, with lines to write on."""
    side = SIDE * width
    middle = width - 2 * side
    things: list[Thing] = [
        Box(side, 0, middle, height, radius=RADIUS, fill="panel"),
        Box(0, 0, side + middle, height, radius=RADIUS, stroke="quiet"),
        Box(side, 0, side + middle, height, radius=RADIUS, stroke="quiet"),
    ]
    fields = (
        (0.0, side, "Only in our text", True),
        (side, middle, "In both", False),
        (side + middle, side, "Only in the other", True),
    )
    for x, wide, label, titled in fields:
        things += _field(x + PAD, wide - 2 * PAD, height, label, sizes, titled=titled)
    return Frame(width, height, tuple(things))


def _field(  # noqa: PLR0913 (a place, a size and what stands there)
    x: float, width: float, height: float, label: str, sizes: GuideType, *, titled: bool
) -> list[Thing]:
    """Return a label with lines under it; the first line of a text's own field is for its title."""
    words = paragraph(label, width, sizes.label)
    top = height - RADIUS / 2 - words.height
    count = int((top - RADIUS / 2) // sizes.next_line)
    things: list[Thing] = [Placed(x, top, words)]
    for n in range(1, count + 1):
        y = top - n * sizes.next_line
        title = titled and n == 1
        things.append(Line(x, y, x + width, y, 1.2 if title else 0.6, "quiet" if title else "rule"))
    return things
