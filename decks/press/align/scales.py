"""The scales of the test page: ticks on the back, and on the front the lines they are read at."""

from msgspec import Struct

from decks.layout.frame import Line, Text, Thing
from decks.layout.turning import Turning
from decks.layout.units import mm
from decks.press.type.fonts import measure
from decks.printers import MOST_OFF

NUMBER_SIZE = 8.5
NUMBERS = (-5, 0, 5)

TICKS = {10: (4.6, 0.6), 2: (3.2, 0.4), 1: (2, 0.3)}
"""Length in mm and width in points of the ticks at every 10, 2 and 1 half millimetres."""

REACH = mm(MOST_OFF + 5)
"""How far a line of the front goes both ways, to meet its scale however far the back is off."""


class Scale(Struct, frozen=True):
    """A millimetre scale with its zero at (x, y), in points; `upwards` or else to the right."""

    name: str
    x: float
    y: float
    upwards: bool = False

    @property
    def back(self) -> list[Thing]:
        """The scale itself, on the back."""
        ends = self._line(-MOST_OFF, 0, MOST_OFF, 0, 0.45)
        halves = range(-int(2 * MOST_OFF), int(2 * MOST_OFF) + 1)
        return [ends, *map(self._tick, halves), *map(self._number, NUMBERS)]

    def front(self, turning: Turning) -> Line:
        """Return the line of the front that lies across zero where nothing is off."""
        across, up = (REACH, 0) if self.upwards else (0, REACH)
        x, y = turning.point(self.x - across, self.y - up)
        end_x, end_y = turning.point(self.x + across, self.y + up)
        return Line(x, y, end_x, end_y, 0.6, "ink")

    def _tick(self, half: int) -> Line:
        length, width = next(tick for step, tick in TICKS.items() if half % step == 0)
        return self._line(half / 2, 0, half / 2, length, width)

    def _line(self, at: float, off: float, end_at: float, end_off: float, width: float) -> Line:
        """Return a line between two places: mm along the scale, and mm off it."""
        x, y = self._point(at, off)
        end_x, end_y = self._point(end_at, end_off)
        return Line(x, y, end_x, end_y, width, "ink")

    def _point(self, at: float, off: float) -> tuple[float, float]:
        along, away = mm(at), mm(off)
        return (self.x + away, self.y + along) if self.upwards else (self.x + along, self.y + away)

    def _number(self, number: int) -> Text:
        text = f"{'−' if number < 0 else ''}{abs(number)}"
        wide = measure(text) * NUMBER_SIZE
        x, y = self._point(number, 0)
        if self.upwards:
            return Text(x - mm(1.2) - wide, y - 0.345 * NUMBER_SIZE, text, NUMBER_SIZE)
        # the minus hangs out, so that the figure stands under its tick
        hang = measure("−") * NUMBER_SIZE if number < 0 else 0
        return Text(x - (wide + hang) / 2, y - mm(1) - 0.7 * NUMBER_SIZE, text, NUMBER_SIZE)
