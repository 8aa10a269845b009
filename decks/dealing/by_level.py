"""How little expected points can differ where a card's level decides on them."""

import math
from collections.abc import Sequence
from math import gcd

from decks.dealing.cells import GOALS, Cell, Table
from decks.dealing.even import even_ranges
from decks.dealing.model import Limit, Model
from decks.dealing.program import solve
from decks.dealing.stock import Stock


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
    return _least(coarse, kept, list(levels.values()))


def _least(table: Table, limits: Sequence[Limit], worth: Sequence[int]) -> int:
    step = gcd(*worth)
    model = Model(table, limits)
    model.minimise_spread([points // step for points in worth])
    bound = solve(model.program).bound
    # the solver's tolerance must not lift a bound over a whole number
    return step * max(0, math.ceil(bound - 1e-6)) if math.isfinite(bound) else 0
