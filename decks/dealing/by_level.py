"""How little expected points can differ where a card's level decides on them."""

from collections.abc import Sequence
from itertools import product
from math import gcd
from operator import mul

from decks.dealing.cells import GOALS, Cell, Table
from decks.dealing.even import even_ranges
from decks.dealing.model import Limit, Model
from decks.dealing.solving import solve
from decks.dealing.stock import Stock

Hand = tuple[int, ...]  # [level] -> cards


def least_by_level(table: Table, stock: Stock, limits: Sequence[Limit]) -> int:
    """Return a difference in expected points that no deal within the limits goes below.

    Counts of cards and of levels are modelled exactly; topics and kinds are left out, so that a
    deal may have to stay above it. Where items of one level differ in points, levels tell
    nothing: 0.
    """
    points = stock.loads[0]
    worth = {(table.cells[c].level, p) for c, p in zip(stock.cells, points, strict=True)}
    levels = dict(sorted(worth))
    if len(levels) < len(worth) or not any(points) or len(table.pinned) == 1:
        return 0
    coarse = table.merged(lambda cell: Cell(cell.level, "", 0))
    kept = [
        Limit(even_ranges(coarse, [GOALS[name]]), limit.largest, limit.total)
        for name, limit in zip(("cards", "level"), limits, strict=False)
    ]
    weights = list(levels.values())
    hands = _hands(coarse, kept)
    return _least_by_hands(hands, coarse, weights) if hands else _least(coarse, kept, weights)


def _hands(table: Table, limits: Sequence[Limit]) -> list[Hand]:
    """Return the hands that a team may have; none where not every team may have the same."""
    cards, levels = limits
    if any(map(any, table.pinned)) or cards.largest is not None or levels.largest is not None:
        return []
    (size,) = cards.ranges
    spans = [range(span.least, span.most + 1) for span in levels.ranges]
    return [hand for hand in product(*spans) if size.least <= sum(hand) <= size.most]


def _least_by_hands(hands: Sequence[Hand], table: Table, weights: Sequence[int]) -> int:
    """Return the least difference between teams that each have one of some hands.

    Windows of what a hand weighs are tried, the narrowest first.
    """
    weigh: dict[Hand, int] = {hand: sum(map(mul, hand, weights)) for hand in hands}
    sums = sorted(set(weigh.values()))
    windows = sorted((high - low, low) for low in sums for high in sums if low <= high)
    for width, low in windows:
        within = [hand for hand in hands if low <= weigh[hand] <= low + width]
        if _can_share_out(tuple(within), table.free, len(table.pinned)):
            return width
    return 0


def _can_share_out(hands: tuple[Hand, ...], cards: Hand, teams: int) -> bool:
    """Say whether so many teams can have all cards between them, each with one of the hands."""
    if not hands:
        return not teams and not any(cards)
    (first, *others), left = hands, cards
    for taken in range(teams + 1):
        if min(left) < 0:
            return False
        if _can_share_out(tuple(others), left, teams - taken):
            return True
        left = tuple(have - one for have, one in zip(left, first, strict=True))
    return False


def _least(table: Table, limits: Sequence[Limit], worth: Sequence[int]) -> int:
    step = gcd(*worth)
    model = Model(table, limits)
    model.minimise_spread([points // step for points in worth])
    return step * solve(model.program).least
