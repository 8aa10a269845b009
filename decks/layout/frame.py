"""What a page is made of: inert things at places, for the press to draw without deciding."""

from typing import TypeAlias

from msgspec import Struct

from cards.picture import Picture
from decks.layout.runs import Run


class Text(Struct, frozen=True):
    """A line of text; `x`, `y` is the left end of its baseline.

    A line that is partly set from right to left and not in one style keeps its runs together, as
    only the whole line has an order; they are then drawn in place of the text. `to_left` is how the
    paragraph runs that the line is part of; where it is None, the line's first letter tells.
    """

    x: float
    y: float
    text: str
    size: float
    strong: bool = False
    tone: str = "ink"
    runs: tuple[Run, ...] = ()
    to_left: bool | None = None


class Line(Struct, frozen=True):
    """A straight line."""

    x: float
    y: float
    end_x: float
    end_y: float
    width: float = 0.5
    tone: str = "quiet"
    dashed: bool = False


class Box(Struct, frozen=True):
    """A rectangle with rounded corners, filled, framed or both; `x`, `y` is its lower left."""

    x: float
    y: float
    width: float
    height: float
    radius: float = 0
    fill: str | None = None
    stroke: str | None = None


class Wedge(Struct, frozen=True):
    """A filled triangle."""

    points: tuple[tuple[float, float], ...]
    tone: str = "quiet"


class Curve(Struct, frozen=True):
    """Cubic Bézier curves that follow one another, drawn, filled or both.

    `points` are the start, and then for each curve its two controls and its end.
    """

    points: tuple[tuple[float, float], ...]
    width: float = 0.8
    stroke: str | None = "frame"
    fill: str | None = None


class Ribbon(Struct, frozen=True):
    """A team's colour and texture in a rectangle; `team` is its number, from 0."""

    x: float
    y: float
    width: float
    height: float
    team: int


class Image(Struct, frozen=True):
    """A picture in a rectangle of its own proportions."""

    x: float
    y: float
    width: float
    height: float
    picture: Picture


class Placed(Struct, frozen=True):
    """A frame inside another; half a turn is about the frame's own centre.

    `rotation` is a further turn about the centre, in degrees, anticlockwise.
    """

    x: float
    y: float
    frame: "Frame"
    half_turn: bool = False
    rotation: float = 0


Thing: TypeAlias = Text | Line | Box | Wedge | Curve | Ribbon | Image | Placed


class Frame(Struct, frozen=True):
    """A rectangle of paper and the things on it, from its lower left corner."""

    width: float
    height: float
    things: tuple[Thing, ...]
