"""The result of dealing: the hands, and how near to equal they are."""

from dataclasses import dataclass

from cards.item import Item

Hands = tuple[tuple[Item, ...], ...]


@dataclass(frozen=True, slots=True)
class Goal:
    """One wish of a fair deal: that the teams' counts of cards differ as little as can be.

    `name` is `cards`, `level`, `topic` or `kind`. `reached` is the largest difference between any
    two teams, in cards, over all values of that attribute; `bound` is the largest difference that
    no deal can go below, given the goals before it. `counts` holds for each value, in its natural
    order, the number of cards of each team.
    """

    name: str
    reached: int
    bound: int
    counts: tuple[tuple[str, tuple[int, ...]], ...] = ()

    @property
    def proven(self) -> bool:
        """Whether it is certain that no deal reaches a smaller difference."""
        return self.reached == self.bound


@dataclass(frozen=True, slots=True)
class Deal:
    """The hands in team order, each in an order of its own, and the goals in order of weight."""

    hands: Hands
    goals: tuple[Goal, ...]
