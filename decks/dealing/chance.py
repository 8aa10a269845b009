"""Each team's chance to finish first, when all teams are equally good."""

from collections.abc import Iterable, Sequence
from typing import TYPE_CHECKING, TypeAlias

from cards.item import Item
from decks.dealing.loads import ShareOf, share_by_level

if TYPE_CHECKING:
    import numpy as np
    from numpy.typing import NDArray

    Chances: TypeAlias = NDArray[np.float64]


def chance_to_win(
    hands: Sequence[Sequence[Item]], share_of: ShareOf = share_by_level
) -> tuple[float, ...]:
    """Return each team's chance to have the most points; teams that tie for it share it equally.

    A card is a point with the probability that `share_of` tells, whatever happens on other cards:
    a team's points are a Poisson-binomial variable, and its distribution is found by adding card
    after card. The result is exact but for the rounding of floats, and sums to 1. Points are
    counted, not averaged: of two hands alike the smaller has the smaller chance.
    """
    if len(hands) == 1:
        return (1.0,)
    most = max(map(len, hands))
    points = [points_distribution(map(share_of, hand), most) for hand in hands]
    below = [distribution.cumsum() - distribution for distribution in points]
    return tuple(_first(team, points, below) for team in range(len(hands)))


def points_distribution(shares: Iterable[float], most: int) -> "Chances":
    """Return the probabilities of 0, 1, … `most` successes in independent trials.

    `shares` holds the probability of success of each trial, `most` trials at most.
    """
    import numpy as np  # noqa: PLC0415  (heavy, and copies do without)

    distribution = np.zeros(most + 1)
    distribution[0] = 1
    for share in sorted(shares):
        hits = distribution[:-1] * share
        distribution *= 1 - share
        distribution[1:] += hits
    return distribution


def _first(team: int, points: Sequence["Chances"], below: Sequence["Chances"]) -> float:
    """Return what a team has of the first place, over all scores.

    At each score every other team is below it, or level, or has more: how many are level while
    none has more is a Poisson-binomial again, but for what is lost to those with more.
    """
    level = [points[team]]
    for other, (at, low) in enumerate(zip(points, below, strict=True)):
        if other != team:
            longer = [*(chance * low for chance in level), at * 0]
            for n, chance in enumerate(level, start=1):
                longer[n] = longer[n] + chance * at
            level = longer
    return float(sum((chance / (n + 1)).sum() for n, chance in enumerate(level)))
