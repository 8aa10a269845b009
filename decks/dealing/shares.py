"""The items are divided among the teams."""

import random
from collections.abc import Sequence

from cards.item import Item, folded
from decks.dealing.cells import GOALS, table_of
from decks.dealing.chance import chance_to_win
from decks.dealing.counts import goal
from decks.dealing.deal import PAIRS, THOUSANDTHS, WORDS, Deal, Goal, Hands
from decks.dealing.loads import LOADS, ShareOf, points, share_by_level, words
from decks.dealing.placing import Placing, place
from decks.dealing.rivals import clashes_in
from decks.dealing.stages import fairest
from decks.dealing.stock import stock_of


def deal_shares(
    items: Sequence[Item],
    team_names: Sequence[str],
    seed: str,
    share_of: ShareOf = share_by_level,
) -> Deal:
    """Divide the items among the teams, as fairly as can be.

    An item that is pinned goes to its team, the rest is dealt round it. In this order the teams
    are to differ as little as can be in: number of cards; cards of each level, of each topic, of
    each kind (first the largest difference over all values, then the sum of the differences);
    expected points, with `share_of` telling the share of students expected to get an item right;
    reading load, which is the number of words of prompts and answers. Cards that could answer
    each other's blank are parted as far as that costs none of these anything.

    The counts of cards are the least there are, proven by a solver. Points and words are evened
    out by exchanges; small decks are searched through. Where that does not reach the bound, goals
    tell the difference reached beside it. The seed alone decides among deals equally fair. Raises
    ValueError where there is no team, or an item is pinned to none of them.
    """
    if not team_names:
        raise ValueError("A deal needs at least one team.")
    homes = [_home(item, team_names) for item in items]
    rng = random.Random(f"{seed}/deal")
    table = table_of(items, homes, len(team_names))
    counted = fairest(table, rng)
    loads = tuple(points(item, share_of) for item in items), tuple(map(words, items))
    placing = place(stock_of(items, homes, table, loads), table, counted, rng)
    hands = _hands(items, placing.owners, len(team_names), rng)
    goals = [goal(hands, name, counted.bounds[name], items) for name in GOALS]
    weighed = _weighed(hands, placing, share_of)
    return Deal(hands, (*goals, *weighed), chance_to_win(hands, share_of))


def _home(item: Item, team_names: Sequence[str]) -> int | None:
    """Return the number of the team that an item is pinned to."""
    if item.team is None:
        return None
    names = [folded(name) for name in team_names]
    if folded(item.team) not in names:
        raise ValueError(f"{item.prompt_place}: there is no team “{item.team}”.")
    return names.index(folded(item.team))


def _hands(items: Sequence[Item], owners: Sequence[int], teams: int, rng: random.Random) -> Hands:
    hands: list[list[Item]] = [[] for _ in range(teams)]
    for item, owner in zip(items, owners, strict=True):
        hands[owner].append(item)
    for hand in hands:
        rng.shuffle(hand)
    return tuple(tuple(hand) for hand in hands)


def _weighed(hands: Hands, placing: Placing, share_of: ShareOf) -> list[Goal]:
    """Return the goals that weigh a hand, from the hands as they are."""
    expected = tuple(sum(points(item, share_of) for item in hand) for hand in hands)
    reading = tuple(sum(map(words, hand)) for hand in hands)
    clashes = tuple(map(clashes_in, hands))
    least = placing.bound
    goals = [
        Goal(name, max(held) - min(held), bound, (("all", held),), unit)
        for name, held, bound, unit in zip(
            LOADS, (expected, reading), least, (THOUSANDTHS, WORDS), strict=False
        )
    ]
    return [*goals, Goal("clashes", sum(clashes), least[-1], (("all", clashes),), PAIRS)]
