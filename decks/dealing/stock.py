"""The items as an exchange sees them: each by its number, with what it counts for."""

from collections.abc import Sequence

from msgspec import Struct

from cards.item import Item
from decks.dealing.cells import Table, cell_of
from decks.dealing.even import Range
from decks.dealing.rivals import Rivals, fewest_clashes, rivals_among

Load = tuple[int, ...]


class Stock(Struct, frozen=True):
    """What is dealt to `teams` teams.

    `cells[item]` is the item's cell, `loads[k][item]` what it adds to load k of a hand (in the
    order of loads.LOADS), `homes[item]` the team it is pinned to, or None;
    `varied[k]` tells whether load k differs between items of one cell;
    no deal has fewer clashes than `fewest_clashes`.
    """

    teams: int
    cells: tuple[int, ...]
    homes: tuple[int | None, ...]
    loads: tuple[Load, Load]
    rivals: Rivals
    varied: tuple[bool, ...]
    fewest_clashes: int


def stock_of(
    items: Sequence[Item], homes: Sequence[int | None], table: Table, loads: tuple[Load, Load]
) -> Stock:
    """Return the items of a table as a stock."""
    index = {cell: number for number, cell in enumerate(table.cells)}
    cells = tuple(index[cell_of(item)] for item in items)
    varied = tuple(len(set(zip(cells, load, strict=True))) > len(index) for load in loads)
    teams = len(table.pinned)
    fewest = fewest_clashes(items, homes, teams)
    return Stock(teams, cells, tuple(homes), loads, rivals_among(items), varied, fewest)


class Fence(Struct, frozen=True):
    """How many cards of each span a team may hold: exchanges stay within.

    Spans are numbered. `covers[cell]` holds the numbers of those that count a cell's cards, and
    `mask[cell]` the same as bits.
    """

    least: tuple[int, ...]
    most: tuple[int, ...]
    covers: tuple[tuple[int, ...], ...]
    mask: tuple[int, ...]


def fence_of(ranges: Sequence[Range], cells: int) -> Fence:
    """Return the fence that ranges over groups of cells make."""
    covers: list[list[int]] = [[] for _ in range(cells)]
    for number, span in enumerate(ranges):
        for cell in span.group:
            covers[cell].append(number)
    return Fence(
        tuple(span.least for span in ranges),
        tuple(span.most for span in ranges),
        tuple(map(tuple, covers)),
        tuple(sum(1 << number for number in numbers) for numbers in covers),
    )
