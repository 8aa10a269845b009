"""The result of dealing: the hands, and how near to equal they are."""

from msgspec import Struct

from cards.item import Item

Hands = tuple[tuple[Item, ...], ...]
CARDS, THOUSANDTHS, WORDS, PAIRS = "cards", "thousandths of a point", "words", "pairs of cards"
"""The units of goals."""


class Goal(Struct, frozen=True):
    """One wish of a fair deal: that the teams differ as little as can be.

    `name` is `cards`, `level`, `topic`, `kind`, `expected points`, `reading load` or `clashes`.
    `reached` and `bound` are whole numbers of the `unit`. `reached` is the largest difference
    between any two teams, over all values of the attribute; `bound` is a difference that no deal
    goes below, given what is reached of the goals before it. `counts` holds for each value, in
    its natural order, what each team has, in the same unit.

    Clashes are no difference but a number: the pairs of cards in one hand that could answer each
    other's blank, over all hands.
    """

    name: str
    reached: int
    bound: int
    counts: tuple[tuple[str, tuple[int, ...]], ...] = ()
    unit: str = CARDS

    @property
    def proven(self) -> bool:
        """Whether it is certain that no deal reaches a smaller difference."""
        return self.reached == self.bound


class Deal(Struct, frozen=True):
    """The hands in team order, each in an order of its own, and the goals in order of weight.

    `chances` holds each team's chance to finish first when all teams are equally good.
    """

    hands: Hands
    goals: tuple[Goal, ...]
    chances: tuple[float, ...] = ()
