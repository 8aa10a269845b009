"""The result of choosing: the items, and how near they come to what was asked for."""

from msgspec import Struct

from cards.item import Item


class Count(Struct, frozen=True):
    """One value of an attribute: how many cards were wanted (a fraction), taken, and on offer."""

    value: str
    wanted: float
    chosen: int
    offered: int


class Goal(Struct, frozen=True):
    """One wish of a choice; `reached` is how far it is missed, `bound` what no choice goes below.

    `cards`: cards more or fewer than asked for. `seen`: cards that have been seen before, too many
    or too few. `target`: how far the mean expected share lies outside what is near the target.
    `liked`: items that are wanted if they can be had, and are not in.
    `level` and `topic`: cards too many or too few, over all values; a value that has its wanted
    number within one has none. `share`: the difference between the mean expected share and the
    target. Shares are rounded to half a percent. Each is bounded given the goals before it.
    """

    name: str
    reached: float
    bound: float
    counts: tuple[Count, ...] = ()

    @property
    def proven(self) -> bool:
        """Whether it is certain that no choice comes nearer."""
        return self.reached == self.bound


class Choice(Struct, frozen=True):
    """The chosen items in the teacher's order, the goals in order of weight, and advice.

    `share` is the mean expected share of the chosen items. Each line of `advice` says what would
    let a goal be met that the content does not allow; there is none where all are met.
    """

    items: tuple[Item, ...]
    goals: tuple[Goal, ...]
    share: float
    advice: tuple[str, ...]
