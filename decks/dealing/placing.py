"""Which cards of a cell a team gets: the loads evened out, rivals parted, and how far that goes."""

import random

from msgspec import Struct

from decks.dealing.by_level import least_by_level
from decks.dealing.cells import GOALS, Table
from decks.dealing.counting import least_spread
from decks.dealing.even import even_ranges
from decks.dealing.evening import even_out
from decks.dealing.exhausting import MOST_CARDS, Exhausting
from decks.dealing.holding import NOBODY, Holding, Standing
from decks.dealing.lot import Counts
from decks.dealing.stages import Fairest, liked_ranges
from decks.dealing.stock import Stock, fence_of


class Placing(Struct, frozen=True):
    """The team of every item, and the standing that no deal as even in counts goes below."""

    owners: tuple[int, ...]
    bound: Standing


def place(stock: Stock, table: Table, fairest: Fairest, rng: random.Random) -> Placing:
    """Hand out the items so that the loads differ little, in their order, and rivals are parted.

    Cards of each cell may also change teams where the counts that `fairest` promises stay.
    """
    fences = [
        fence_of([*fairest.ranges, *liked_ranges(table, fairest.counts)], len(table.cells)),
        fence_of(fairest.ranges, len(table.cells)),
    ]
    holding = Holding(stock, _by_lot(stock, fairest.counts, rng), fences[0])
    if stock.teams == 1 or None not in stock.homes:
        return Placing(tuple(holding.owners), holding.standing())
    bound = _bound(stock, table, fairest)
    even_out(holding, fences, bound, rng)
    return _looked_through(holding, fairest, bound, rng)


def _by_lot(stock: Stock, counts: Counts, rng: random.Random) -> list[int]:
    """Hand out the items of each cell by lot, as many as each team is to get."""
    piles: list[list[int]] = [[] for _ in counts[0]]
    for item, (cell, home) in enumerate(zip(stock.cells, stock.homes, strict=True)):
        if home is None:
            piles[cell].append(item)
    owners = [NOBODY if home is None else home for home in stock.homes]
    for cell, pile in enumerate(piles):
        rng.shuffle(pile)
        for team, row in enumerate(counts):
            for _ in range(row[cell]):
                owners[pile.pop()] = team
    return owners


def _bound(stock: Stock, table: Table, fairest: Fairest) -> Standing:
    (sizes,) = even_ranges(table, [GOALS["cards"]])
    points, reading = (least_spread(load, stock.homes, sizes) for load in stock.loads)
    by_level = least_by_level(table, stock, fairest.limits)
    return max(points, by_level), reading, stock.fewest_clashes


def _looked_through(
    holding: Holding, fairest: Fairest, bound: Standing, rng: random.Random
) -> Placing:
    """Look through all deals where the deck is small enough for it to prove the best."""
    owners, standing = tuple(holding.owners), holding.standing()
    if standing == bound or holding.stock.homes.count(None) > MOST_CARDS:
        return Placing(owners, bound)
    search = Exhausting(holding.stock, fairest.limits, bound, standing=standing, owners=owners)
    done = search.run(rng)
    return Placing(search.owners, search.standing if done else bound)
