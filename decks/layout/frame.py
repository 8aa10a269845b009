"""What a page is made of: inert things at places, for the press to draw without deciding."""

from dataclasses import dataclass
from typing import TypeAlias


@dataclass(frozen=True, slots=True)
class Text:
    """A line of text; `x`, `y` is the left end of its baseline."""

    x: float
    y: float
    text: str
    size: float
    strong: bool = False
    tone: str = "ink"


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
class Ribbon:
    """A team's colour and texture in a rectangle; `team` is its number, from 0."""

    x: float
    y: float
    width: float
    height: float
    team: int


@dataclass(frozen=True, slots=True)
class Placed:
    """A frame inside another; half a turn is about the frame's own centre."""

    x: float
    y: float
    frame: "Frame"
    half_turn: bool = False


Thing: TypeAlias = Text | Line | Box | Wedge | Ribbon | Placed


@dataclass(frozen=True, slots=True)
class Frame:
    """A rectangle of paper and the things on it, from its lower left corner."""

    width: float
    height: float
    things: tuple[Thing, ...]
