"""Goal after goal is as small as it can be: small decks are dealt in every way there is."""

import random

from hypothesis import example, given, settings
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck, every_deal, pinned_decks, unfairness

from decks.dealing.cells import GOALS
from decks.dealing.stages import fairest


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
@given(pinned_decks(), st.integers(0, 9))
def test_no_deal_is_fairer_goal_by_goal(deck, seed):
    found = fairest(deck.table, random.Random(seed))
    best = min(unfairness(deck, owners) for owners in every_deal(deck))
    assert unfairness(deck, deck.owners(found.counts)) == best
    assert [found.bounds[goal] for goal in GOALS] == [largest for largest, _sum in best]
