"""How well two inks are told apart by everybody, and which inks to choose."""

from collections.abc import Iterable, Sequence
from functools import cache

from decks.colour.difference import difference
from decks.colour.seeing import Sight, seen
from decks.colour.spaces import Lab

LEAST = {Sight.NORMAL: 20, Sight.PROTAN: 10, Sight.DEUTAN: 10, Sight.TRITAN: 10}
"""The ΔE00 that each sight should have between two teams: no standard sets one, these are ours."""

LEAST_IN_GREY = 15
"""The difference in lightness that tells two teams apart on a grey copier: our own choice too."""

MOST_IN_GREY = 5
"""Above this many teams greys cannot do it within 100 steps of lightness; the textures do."""


def apart(one: str, other: str) -> float:
    """Return how well two `#RRGGBB` codes are told apart by whoever tells them worst.

    1 is what `LEAST` asks for, 0 is not at all.
    """
    return min(apart_for(sight, one, other) for sight in Sight)


@cache
def apart_for(sight: Sight, one: str, other: str) -> float:
    """Return how well one sight tells two codes apart, as a part of what it should have."""
    return difference(_seen(one, sight), _seen(other, sight)) / LEAST[sight]


def apart_in_grey(one: str, other: str) -> float:
    """Return how well two codes are told apart when copied in grey, with 1 for enough."""
    ours, theirs = _seen(one, Sight.NORMAL), _seen(other, Sight.NORMAL)
    return abs(ours.lightness - theirs.lightness) / LEAST_IN_GREY


def choose(count: int, palette: Sequence[str], given: Iterable[str] = ()) -> tuple[str, ...]:
    """Return `count` inks of a palette that go best with each other and with those given.

    Best is the largest least `apart`, of up to five inks also the least `apart_in_grey`. Enough
    is enough: of sets that reach 1, the first in the palette's order is taken, so that a palette
    is also an order of liking. Raises `ValueError` for a palette that is too short.
    """
    given = tuple(given)
    in_grey = count + len(given) <= MOST_IN_GREY
    return _Search(count, tuple(palette), given, in_grey=in_grey).best()


class _Search:
    """Goes through the sets in order, and leaves a branch that cannot be better."""

    def __init__(
        self, count: int, palette: tuple[str, ...], given: tuple[str, ...], *, in_grey: bool
    ) -> None:
        if count > len(palette):
            raise ValueError(count)
        self.count, self.palette, self.given, self.in_grey = count, palette, given, in_grey
        self.found: tuple[str, ...] = ()
        self.reached = -1.0

    def best(self) -> tuple[str, ...]:
        self._extend((), 1.0, 0)
        return self.found

    def _extend(self, chosen: tuple[str, ...], worst: float, start: int) -> None:
        if len(chosen) == self.count:
            self.found, self.reached = chosen, worst
            return
        last = len(self.palette) - self.count + len(chosen)
        for index in range(start, last + 1):
            ink = self.palette[index]
            least = min([worst, *(self._apart(ink, other) for other in (*self.given, *chosen))])
            if least > self.reached:
                self._extend((*chosen, ink), least, index + 1)

    def _apart(self, one: str, other: str) -> float:
        return min(apart(one, other), apart_in_grey(one, other) if self.in_grey else 1)


@cache
def _seen(code: str, sight: Sight) -> Lab:
    return seen(code, sight)
