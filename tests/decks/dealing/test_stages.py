"""Goal after goal is as small as it can be: small decks are dealt in every way there is."""

import random
from itertools import product

from hypothesis import example, given, settings
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck, differences

from decks.dealing.stages import fairest

GOALS = ("cards", "level", "topic", "kind")


def unfairness(deck, owners):
    """Return for each goal the largest difference and the sum of the differences."""
    sizes = [owners.count(team) for team in range(deck.teams)]
    counts = [differences(deck, owners, goal) for goal in GOALS[1:]]
    return [(max(apart), sum(apart)) for apart in ([max(sizes) - min(sizes)], *counts)]


def every_deal(deck):
    return product(*[range(deck.teams) if home is None else [home] for home in deck.homes])


@st.composite
def decks(draw):
    """Draw a few cards with much in common, many of them set to teams."""
    teams = draw(st.integers(2, 3))
    homes = st.sampled_from([None, None, *range(teams)])
    levels, topics, kinds = st.integers(1, 2), st.sampled_from("ab"), st.integers(0, 2)
    row = st.tuples(levels, topics, homes, kinds)
    rows = [
        Row(f"word {n}", level, topic, home=home, kind=kind)
        for n, (level, topic, home, kind) in enumerate(
            draw(st.lists(row, min_size=1, max_size=7 if teams == 2 else 6))
        )
    ]
    return SmallDeck(teams, rows, tuple(row.home or 0 for row in rows))


# kinds that stand in one cell of level and topic are taken one after the other
@example(
    SmallDeck(
        3,
        [
            Row("word 0", 1, "b", home=2, kind=1),
            Row("word 1", 2, "a", home=1, kind=1),
            Row("word 2", 1, "a", kind=2),
            Row("word 3", 1, "b", home=0, kind=2),
            Row("word 4", 1, "a", home=0, kind=1),
        ],
        (2, 1, 0, 0, 0),
    ),
    1,
)
@settings(deadline=None, max_examples=100)
@given(decks(), st.integers(0, 9))
def test_no_deal_is_fairer_goal_by_goal(deck, seed):
    found = fairest(deck.table, random.Random(seed))
    best = min(unfairness(deck, owners) for owners in every_deal(deck))
    assert unfairness(deck, deck.owners(found.counts)) == best
    assert [found.bounds[goal] for goal in GOALS] == [largest for largest, _sum in best]
