"""How near points can come where levels decide on them: small decks are dealt in every way."""

import random

from hypothesis import example, given, settings
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck

from decks.dealing.by_level import least_by_level
from decks.dealing.stages import fairest

POINTS = {1: 900, 2: 750, 3: 600}  # as cards.item gives them by level


def least_of_all(deck):
    return min(points for points, _words, _rivals in map(deck.standing, deck.deals()))


def dealt(teams, levels, homes, *, topics=None, points=POINTS):
    """Return a deck within the limits that are set for it."""
    rows = [
        Row(f"word {n}", level, topic, points[level], 0, home)
        for n, (level, home, topic) in enumerate(
            zip(levels, homes, topics or ["Tides"] * len(levels), strict=True)
        )
    ]
    deck = SmallDeck(teams, rows, tuple(home or 0 for home in homes))
    deck.limits = fairest(deck.table, random.Random(1)).limits[:3]
    return deck


def said(deck):
    return least_by_level(deck.table, deck.stock, deck.limits)


@st.composite
def rows(draw):
    teams = draw(st.integers(2, 3))
    home = st.sampled_from([None, None, None, *range(teams)])
    drawn = draw(st.lists(st.tuples(st.integers(1, 3), home), min_size=1, max_size=6))
    levels, homes = zip(*drawn, strict=True)
    return teams, levels, homes


# one card weighs as much as the two others together
@example((2, (1, 2, 3), (None, None, None)), {1: 5, 2: 3, 3: 2})
@settings(deadline=None, max_examples=60)
@given(rows(), st.sampled_from([POINTS, {1: 5, 2: 3, 3: 2}]))
def test_with_one_topic_it_is_what_the_best_deal_reaches(drawn, points):
    deck = dealt(*drawn, points=points)
    assert said(deck) == least_of_all(deck)


@settings(deadline=None, max_examples=60)
@given(rows(), st.lists(st.sampled_from("ab"), min_size=6, max_size=6))
def test_with_more_topics_no_deal_is_below_it(drawn, topics):
    _teams, levels, _homes = drawn
    deck = dealt(*drawn, topics=topics[: len(levels)])
    assert 0 <= said(deck) <= least_of_all(deck)


def test_it_tells_nothing_where_levels_do_not():
    # 9 and 1 at one level: the teams are 8 apart, which levels do not say
    rows = [Row("ebb", points=9), Row("flood", points=1)]
    deck = SmallDeck(2, rows, (0, 1))
    assert least_of_all(deck) == 8
    assert said(deck) == 0


def test_one_team_and_cards_without_points_are_never_apart():
    assert said(dealt(1, (1, 2, 3), (None,) * 3)) == 0
    assert said(dealt(2, (1, 2, 3), (None, 0, None), points={1: 0, 2: 0, 3: 0})) == 0
