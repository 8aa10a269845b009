"""A sign that we draw.

It is a function of the width of its lines, in thousandths of an em. Signs stand on the baseline
or about the axis of the figures, as plus and minus do.
"""

from collections.abc import Callable
from typing import TypeAlias

from msgspec import Struct

from decks.press.script.signs import outlines as o

AXIS = 330
CAP = 689
LINE = {False: 77, True: 112}
"""The middle of plus and minus, the height of capitals and the width of a minus in Fira Sans."""

Drawing: TypeAlias = Callable[[float], list[o.Outline]]


class Sign(Struct, frozen=True):
    """A sign and how much room it takes, in thousandths of an em."""

    room: float
    drawing: Drawing

    @property
    def width(self) -> float:
        """The width in ems; that of both weights, so that columns of signs stay columns."""
        return self.room / 1000

    def outlines(self, *, strong: bool) -> list[o.Outline]:
        """Return the filled outlines for a weight."""
        return self.drawing(LINE[strong])


def laid(*drawings: Drawing) -> Drawing:
    """Return drawings laid over one another."""
    return lambda w: [outline for drawing in drawings for outline in drawing(w)]
