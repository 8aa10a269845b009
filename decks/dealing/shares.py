"""The items are divided among the teams."""

import random
from collections.abc import Sequence

from cards.item import Item, folded
from decks.dealing.cells import GOALS, Cell, cell_of, table_of
from decks.dealing.counts import goal
from decks.dealing.deal import Deal, Hands
from decks.dealing.lot import Counts
from decks.dealing.stages import fairest

_Hands = list[list[Item]]


def deal_shares(items: Sequence[Item], team_names: Sequence[str], seed: str) -> Deal:
    """Divide the items among the teams, as fairly as can be.

    An item that is pinned goes to its team, the rest is dealt round it. Number of cards, cards of
    each level, of each topic and of each kind differ as little between teams as any deal can make
    them, in this order. The seed alone decides among the deals that are equally fair. Raises
    ValueError where there is no team, or an item is pinned to none of them.
    """
    if not team_names:
        raise ValueError("A deal needs at least one team.")
    homes = [_home(item, team_names) for item in items]
    rng = random.Random(f"{seed}/deal")
    table = table_of(items, homes, len(team_names))
    result = fairest(table, rng)
    hands = _hand_out(items, homes, table.cells, result.counts, rng)
    return Deal(hands, tuple(goal(hands, name, result.bounds[name], items) for name in GOALS))


def _home(item: Item, team_names: Sequence[str]) -> int | None:
    """Return the number of the team that an item is pinned to."""
    if item.team is None:
        return None
    names = [folded(name) for name in team_names]
    if folded(item.team) not in names:
        raise ValueError(f"{item.prompt_place}: there is no team “{item.team}”.")
    return names.index(folded(item.team))


def _hand_out(
    items: Sequence[Item],
    homes: Sequence[int | None],
    cells: Sequence[Cell],
    counts: Counts,
    rng: random.Random,
) -> Hands:
    hands: _Hands = [[] for _ in counts]
    piles: dict[Cell, list[Item]] = {cell: [] for cell in cells}
    for item, home in zip(items, homes, strict=True):
        (piles[cell_of(item)] if home is None else hands[home]).append(item)
    for number, cell in enumerate(cells):
        rng.shuffle(piles[cell])
        for hand, row in zip(hands, counts, strict=True):
            hand += [piles[cell].pop() for _ in range(row[number])]
    for hand in hands:
        rng.shuffle(hand)
    return tuple(tuple(hand) for hand in hands)
