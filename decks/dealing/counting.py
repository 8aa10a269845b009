"""How little the teams' loads can differ: what no deal can beat, by counting alone."""

from collections.abc import Sequence
from itertools import accumulate
from math import gcd

from decks.dealing.even import Range, evenest
from decks.dealing.stock import Load


def least_spread(load: Load, homes: Sequence[int | None], sizes: Range) -> int:
    """Return a difference in a load that no deal goes below.

    `sizes` are the numbers of cards that a hand may have. What is counted: the steps that
    sums come in, a team that must carry much, a team that cannot carry enough, pinned items.
    """
    teams = len(sizes.pinned)
    if teams == 1 or not load:
        return 0
    return max(
        _by_steps(load, sizes),
        _by_heavy_hand(sum(load), teams, _heaviest_hand(load, sizes)),
        _by_light_hand(sum(load), teams, _lightest_hand(load, sizes)),
        _by_pins(load, homes, sizes),
    )


def _by_steps(load: Load, sizes: Range) -> int:
    """All items weigh `first` and a whole number of steps: so do hands, for their size."""
    first, teams = load[0], len(sizes.pinned)
    step = gcd(*(weight - first for weight in load))
    if not step:
        return first * sizes.width
    if sizes.width > 1:
        return 0
    longer = len(load) - teams * sizes.least
    hands = {(first * sizes.least) % step: teams - longer}
    if longer:
        residue = (first * sizes.most) % step
        hands[residue] = hands.get(residue, 0) + longer
    return _narrowest(sum(load), step, hands)


def _narrowest(total: int, step: int, hands: dict[int, int]) -> int:
    """Return the narrowest window with room for the hands.

    `hands` holds how many sums leave which residue by the step; all sums together are `total`.
    A window begins at a sum or could begin later, and two steps round the mean hold the best.
    """
    mean = total // sum(hands.values())
    sums = [(mean // step + n) * step + residue for n in range(-2, 4) for residue in sorted(hands)]
    return min(
        high - low
        for low in sums
        for high in sums
        if low <= high and _has_room(total, step, hands, low, high)
    )


def _has_room(total: int, step: int, hands: dict[int, int], low: int, high: int) -> bool:
    least = most = 0
    for residue, count in hands.items():
        first = low + (residue - low) % step
        last = high - (high - residue) % step
        if first > last:
            return False
        least += count * first
        most += count * last
    return least <= total <= most


def _by_heavy_hand(total: int, teams: int, hand: int) -> int:
    return max(0, hand - (total - hand) // (teams - 1))


def _by_light_hand(total: int, teams: int, hand: int) -> int:
    return max(0, -((hand - total) // (teams - 1)) - hand)


def _heaviest_hand(load: Load, sizes: Range) -> int:
    """Return what some team carries at the least."""
    lightest, cards, teams = _sums(load), len(load), len(sizes.pinned)
    hands = [lightest[sizes.most]]  # for some team has that many
    # of the k·teams + 1 heaviest items some team has k + 1 (pigeonhole)
    for k in range(sizes.least):
        first = cards - k * teams - 1
        heavy = lightest[first + k + 1] - lightest[first]
        hands.append(heavy + lightest[sizes.least - k - 1])
    return max(hands)


def _lightest_hand(load: Load, sizes: Range) -> int:
    """Return what some team carries at the most."""
    lightest, cards, teams = _sums(load), len(load), len(sizes.pinned)
    hands = [lightest[-1] - lightest[cards - sizes.least]]
    for k in range(sizes.least):
        light = lightest[k * teams + 1] - lightest[k * teams - k]
        heaviest = lightest[-1] - lightest[cards - (sizes.most - k - 1)]
        hands.append(light + heaviest)
    return min(hands)


def _sums(load: Load) -> list[int]:
    """Return what the lightest items weigh together: none of them, one, two and so on."""
    return list(accumulate(sorted(load), initial=0))


def _by_pins(load: Load, homes: Sequence[int | None], sizes: Range) -> int:
    """Pour what is free over the pinned items, as if cards could be divided.

    A team carries at least its pinned items and the lightest that fill its hand, at most these
    and the heaviest.
    """
    if not any(sizes.pinned):
        return 0
    carried = [0] * len(sizes.pinned)
    for weight, home in zip(load, homes, strict=True):
        if home is not None:
            carried[home] += weight
    rising = sorted(weight for weight, home in zip(load, homes, strict=True) if home is None)
    falling = rising[::-1]
    lower, upper = list(carried), list(carried)
    for team, have in enumerate(sizes.pinned):
        lower[team] += sum(rising[: max(0, sizes.least - have)])
        upper[team] += sum(falling[: max(0, sizes.most - have)])
    least, most = evenest(lower, sum(load) - sum(lower))
    low, high = evenest([-weight for weight in upper], sum(upper) - sum(load))
    return max(most - least, high - low)
