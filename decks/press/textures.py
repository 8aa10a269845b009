"""Twelve textures of our own, knocked out of a team's ribbon in white.

They tell the teams apart on a grey copier and to colour-blind eyes. One unit is the ribbon's
width, so that a small swatch shows the same pattern as a card. `path` is a path of reportlab's;
the form that the ribbon is drawn into clips what reaches over its edges.
"""

from collections.abc import Callable, Iterator
from typing import Any, TypeAlias

Texture: TypeAlias = Callable[[Any, float], None]

STROKE = 0.11
"""The width of a white line, in ribbon widths."""

OVER = 0.1
"""How far lines reach over the ribbon’s edges, so that no end of a line shows."""


def _every(step: float, length: float, *, start: float = 0.0) -> Iterator[float]:
    return (start + n * step for n in range(int((length - start) / step) + 2))


def _staggered(length: float, *, step: float) -> Iterator[tuple[float, float]]:
    for n, y in enumerate(_every(step, length, start=step / 2)):
        for x in (0.5,) if n % 2 else (0.2, 0.8):
            yield x, y


def _line(path: Any, *points: tuple[float, float]) -> None:  # noqa: ANN401
    path.moveTo(*points[0])
    for point in points[1:]:
        path.lineTo(*point)


def _slant(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.36, length, start=-1):
        _line(path, (-OVER, y - OVER), (1 + OVER, y + 1 + OVER))


def _lattice(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.58, length, start=-1):
        _line(path, (-OVER, y - OVER), (1 + OVER, y + 1 + OVER))
        _line(path, (-OVER, y + 1 + OVER), (1 + OVER, y - OVER))


def _waves(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.43, length):
        path.moveTo(-1 / 4, y)
        for n in range(-1, 5):
            x, lift = n / 4, 0.15 if n % 2 else -0.15
            path.curveTo(x + 1 / 12, y + lift, x + 1 / 6, y + lift, x + 1 / 4, y)


def _bricks(path: Any, length: float) -> None:  # noqa: ANN401
    course = 0.45
    for n, y in enumerate(_every(course, length, start=-course / 2)):
        _line(path, (-OVER, y), (1 + OVER, y))
        for x in (0.25, 0.75) if n % 2 else (0.5,):
            _line(path, (x, y), (x, y + course))


def _bars(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.4, length, start=0.2):
        _line(path, (-OVER, y), (1 + OVER, y))


def _chevrons(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.5, length, start=-0.5):
        _line(path, (-OVER, y - OVER), (0.5, y + 0.5), (1 + OVER, y - OVER))


def _dashes(path: Any, length: float) -> None:  # noqa: ANN401
    for n, x in enumerate((0.125, 0.375, 0.625, 0.875)):
        for y in _every(1.1, length, start=-0.4 if n % 2 else 0.15):
            _line(path, (x, y), (x, y + 0.65))


def _steps(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.72, length, start=-1.74):
        treads = ((n / 3 - 1 / 6, y + n / 3) for n in range(5))
        _line(path, *(point for x, y in treads for point in ((x, y), (x, y + 1 / 3))))


def _crosses(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(1.06, length, start=0.5):
        _line(path, (0.16, y - 0.34), (0.84, y + 0.34))
        _line(path, (0.16, y + 0.34), (0.84, y - 0.34))


def _rings(path: Any, length: float) -> None:  # noqa: ANN401
    for y in _every(0.8, length, start=0.4):
        path.circle(0.5, y, 0.3)


def _shells(path: Any, length: float) -> None:  # noqa: ANN401
    for n, y in enumerate(_every(0.5, length)):
        path.circle(n % 2, y, 0.32)


def _dots(path: Any, length: float) -> None:  # noqa: ANN401
    for x, y in _staggered(length, step=0.41):
        path.circle(x, y, 0.13)


STROKED: dict[str, Texture] = {
    "slant": _slant,
    "waves": _waves,
    "bricks": _bricks,
    "bars": _bars,
    "chevrons": _chevrons,
    "rings": _rings,
    "crosses": _crosses,
    "lattice": _lattice,
    "dashes": _dashes,
    "steps": _steps,
}
FILLED: dict[str, Texture] = {"dots": _dots, "shells": _shells}


def draw(canvas: Any, name: str, *, width: float, height: float) -> None:  # noqa: ANN401
    """Draw a texture in white over a rectangle of `width` by `height` points."""
    path = canvas.beginPath()
    (STROKED | FILLED)[name](path, height / width)
    canvas.scale(width, width)
    canvas.setStrokeColorRGB(1, 1, 1)
    canvas.setFillColorRGB(1, 1, 1)
    canvas.setLineWidth(STROKE)
    canvas.drawPath(path, stroke=name in STROKED, fill=name in FILLED)
