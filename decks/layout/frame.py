"""What a page is made of: inert things at places, for the press to draw without deciding."""

from dataclasses import dataclass
from typing import TypeAlias

from cards.picture import Picture
from decks.layout.runs import Run


@dataclass(frozen=True, slots=True)
class Text:
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


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line."""

    x: float
    y: float
    end_x: float
    end_y: float
    width: float = 0.5
    tone: str = "quiet"
    dashed: bool = False


@dataclass(frozen=True, slots=True)
class Box:
    """A rectangle with rounded corners, filled, framed or both; `x`, `y` is its lower left."""

    x: float
    y: float
    width: float
    height: float
    radius: float = 0
    fill: str | None = None
    stroke: str | None = None


@dataclass(frozen=True, slots=True)
class Wedge:
    """A filled triangle."""

    points: tuple[tuple[float, float], ...]
    tone: str = "quiet"


@dataclass(frozen=True, slots=True)
class Curve:
    """Cubic Bézier curves that follow one another, drawn, filled or both.

    `points` are the start, and then for each curve its two controls and its end.
    """

    points: tuple[tuple[float, float], ...]
    width: float = 0.8
    stroke: str | None = "frame"
    fill: str | None = None


@dataclass(frozen=True, slots=True)
class Ribbon:
    """A team's colour and texture in a rectangle; `team` is its number, from 0."""

    x: float
    y: float
    width: float
    height: float
    team: int


@dataclass(frozen=True, slots=True)
class Image:
    """A picture in a rectangle of its own proportions."""

    x: float
    y: float
    width: float
    height: float
    picture: Picture


@dataclass(frozen=True, slots=True)
class Placed:
    """A frame inside another; half a turn is about the frame's own centre.

    `rotation` is a further turn about the centre, in degrees, anticlockwise.
    """

    x: float
    y: float
    frame: "Frame"
    half_turn: bool = False
    rotation: float = 0


Thing: TypeAlias = Text | Line | Box | Wedge | Curve | Ribbon | Image | Placed


@dataclass(frozen=True, slots=True)
class Frame:
    """A rectangle of paper and the things on it, from its lower left corner."""

    width: float
    height: float
    things: tuple[Thing, ...]
