"""What was read off the test page of a printer, and the shift that follows from it."""

import difflib
from collections.abc import Sequence

from msgspec import Struct

from cards.item import folded
from decks.lengths import Shift
from decks.recipe import Flip

SPAN = 150.0
"""From the scale at the head of the test page down to the one at its foot, in millimetres: both
stand half of it from the middle of the page. It fits on every paper but the smallest."""

MOST_OFF = 8.0
"""The scales end here. A printer that is farther off wants mending, not measuring, in mm."""

MOST_SKEW = 3.0
"""The same for the difference between head and foot, in mm."""


class Reading(Struct, frozen=True):
    """What the light showed on the back of the test page, in millimetres.

    `right` and `up` are where the lines of the front crossed the scales at the head. At the foot
    the line crossed at `right - skew`. `flip` is the edge that the printer flipped on.
    """

    right: float
    up: float
    skew: float
    flip: Flip


class Printer(Struct, frozen=True):
    """A printer by the teacher's name for it; what is None was not measured."""

    name: str
    upright: Reading | None = None
    turned: Reading | None = None


def find(printers: Sequence[Printer], name: str) -> Printer | None:
    """Return the printer of a name, written in small letters or large."""
    return next((one for one in printers if folded(one.name) == folded(name)), None)


def near_names(printers: Sequence[Printer], name: str) -> list[str]:
    """Return the names that a misspelt one may stand for, the nearest first."""
    names = {folded(one.name): one.name for one in printers}
    return [names[near] for near in difflib.get_close_matches(folded(name), names, n=3)]


def shift_for(printer: Printer, *, flip: Flip, turned: bool) -> Shift | None:
    """Return what a printer's backs are moved by, or None where such pages were not measured.

    Seen on the upright back, the line of the front crosses the scale where the middle of the back
    ought to be: what is read is what the back must be moved by. A shift is that of the middle of
    the page, half of `SPAN` below the head; head and foot differ by the skew, so it is half the
    skew less than what was read at the head.

    A printer turns every sheet over the same way: the error is one of its rollers and lies fixed
    on the sheet. To flip on the other edge the driver turns the image of the back half a turn
    round. In the image's own axes the error is then turned half round as well: what was right is
    left, what was up is down. A rotation is the same rotation seen from either end, so the skew
    keeps its sign.

    How a turned page lies on the sheet is the driver's affair: it may be a quarter turn either
    way. Turned pages are measured, or nothing is known of them.
    """
    reading = printer.turned if turned else printer.upright
    if reading is None:
        return None
    right, up = reading.right - reading.skew / 2, reading.up
    if reading.flip is not flip:
        right, up = -right, -up
    return Shift(right, up, reading.skew)
