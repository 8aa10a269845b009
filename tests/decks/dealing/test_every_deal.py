"""Small decks are dealt in every way there is: none is fairer than the deal that was made."""

from collections import Counter
from itertools import product

from hypothesis import example, given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card, decks

from cards.item import Kind
from decks.dealing import deal_shares

ATTRIBUTES = (
    lambda _item: "any",
    lambda item: item.level,
    lambda item: item.topic,
    lambda item: item.kind,
)


def unfairness(hands):
    """Return for each goal the largest difference between two teams, and the sum of them all."""
    return tuple(
        _differences([Counter(map(value, hand)) for hand in hands]) for value in ATTRIBUTES
    )


def _differences(held):
    values = {key for counter in held for key in counter}
    apart = [max(c[v] for c in held) - min(c[v] for c in held) for v in values]
    return max(apart, default=0), sum(apart)


def every_deal(items, teams):
    homes = [range(len(teams)) if i.team is None else [teams.index(i.team)] for i in items]
    for owners in product(*homes):
        hands = [[] for _ in teams]
        for item, owner in zip(items, owners, strict=True):
            hands[owner].append(item)
        yield hands


def crossing(*cells, pins=()):
    """Return one card for each (level, topic, kind)."""
    kinds = tuple(Kind)
    return [
        card(n, level, f"Topic {topic}", kinds[kind], team=dict(pins).get(n))
        for n, (level, topic, kind) in enumerate(cells)
    ]


@settings(deadline=None, max_examples=150)
@given(decks(most_cards=7, teams=st.integers(2, 3), pins=True))
@example((crossing((1, 1, 1), (1, 2, 2), (2, 2, 1)), TEAMS[:2]))
@example((crossing((1, 1, 1), (1, 2, 2), (2, 2, 1), pins={0: "Heron", 2: "Heron"}), TEAMS[:2]))
@example((crossing(*[(1, 1, 0)] * 3, *[(2, 2, 1)] * 4, pins={0: "Otter", 1: "Otter"}), TEAMS[:3]))
def test_no_deal_is_fairer_and_every_bound_is_met(deck):
    items, teams = deck
    deal = deal_shares(items, teams, "shore")
    best = min(map(unfairness, every_deal(items, teams)))
    assert unfairness(deal.hands) == best
    assert [goal.bound for goal in deal.goals] == [largest for largest, _sum in best]
