"""Each team's chance to finish first, when all teams are equally good."""

from collections.abc import Iterable, Sequence
from itertools import accumulate

from cards.item import Item
from decks.dealing.loads import ShareOf

Chances = list[float]  # [points]

_NOTHING = 1e-30
"""A chance below this is lost in the rounding of those that count."""


def chance_to_win(hands: Sequence[Sequence[Item]], share_of: ShareOf) -> tuple[float, ...]:
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
    below = [[0.0, *accumulate(distribution[:-1])] for distribution in points]
    return tuple(_first(team, points, below) for team in range(len(hands)))


def points_distribution(shares: Iterable[float], most: int) -> Chances:
    """Return the probabilities of 0, 1, … `most` successes in independent trials.

    `shares` holds the probability of success of each trial, `most` trials at most.
    """
    first, likely = 0, [1.0]  # of `first` successes and more; those less likely are left out
    for share in sorted(shares):
        miss = 1 - share
        likely = [
            without * miss + hit * share
            for without, hit in zip([*likely, 0.0], [0.0, *likely], strict=True)
        ]
        while likely[0] < _NOTHING:
            del likely[0]
            first += 1
        while likely[-1] < _NOTHING:
            del likely[-1]
    return [0.0] * first + likely + [0.0] * (most + 1 - first - len(likely))


def _first(team: int, points: Sequence[Chances], below: Sequence[Chances]) -> float:
    """Return what a team has of the first place, over all scores."""
    rivals = [n for n in range(len(points)) if n != team]
    return sum(
        at * _shared([points[n][score] for n in rivals], [below[n][score] for n in rivals])
        for score, at in enumerate(points[team])
        if at
    )


def _shared(level: Sequence[float], below: Sequence[float]) -> float:
    """Return what is left of the first place for a team at a score that others may have too.

    At each score every other team is below it, or level, or has more: how many are level while
    none has more is a Poisson-binomial again, but for what is lost to those with more.
    """
    tied = [1.0]
    for at, low in zip(level, below, strict=True):
        tied = [
            same * low + one_less * at
            for same, one_less in zip([*tied, 0.0], [0.0, *tied], strict=True)
        ]
    return sum(chance / (n + 1) for n, chance in enumerate(tied))
