"""The search through all deals finds the best within the limits, and claims it only if it did."""

import random

from hypothesis import given, settings
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck

from decks.dealing.exhausting import Exhausting

NO_FLOOR = (-1, 0, 0)
RANDOMS = st.randoms(use_true_random=False)


def search_from(deck, known, floor=NO_FLOOR):
    standing = deck.standing(known)
    return Exhausting(deck.stock, deck.limits, floor, standing=standing, owners=known)


def weighing(*points):
    """Return items of one level and topic that no other could answer."""
    return [Row(answer=f"word {n}", points=weight) for n, weight in enumerate(points)]


@st.composite
def decks(draw):
    """Draw two or three teams, up to six items, and a deal of them that sets the limits."""
    teams, weights = draw(st.integers(2, 3)), st.integers(0, 9)
    homes = st.sampled_from([None, None, *range(teams)])
    answers, levels, topics = st.sampled_from("xyz"), st.integers(1, 3), st.sampled_from("ab")
    row = st.tuples(answers, levels, topics, weights, weights, homes)
    rows = [Row(*drawn) for drawn in draw(st.lists(row, min_size=1, max_size=6))]
    known = tuple(draw(st.integers(0, teams - 1)) if r.home is None else r.home for r in rows)
    return SmallDeck(teams, rows, known, draw(st.sets(st.sampled_from(("level", "topic")))))


@settings(deadline=None, max_examples=150)
@given(decks(), RANDOMS)
def test_no_deal_within_the_limits_is_better_than_the_one_found(deck, rng):
    search, deals = search_from(deck, deck.known), deck.deals()
    assert search.run(rng)
    assert search.standing == min(map(deck.standing, deals))
    assert search.owners in deals
    assert deck.standing(search.owners) == search.standing


@settings(deadline=None, max_examples=100)
@given(decks(), RANDOMS)
def test_a_known_deal_is_kept_where_none_is_better(deck, rng):
    best = min(deck.deals(), key=deck.standing)
    search = search_from(deck, best)
    assert search.run(rng)
    assert search.owners == best


def test_teams_without_a_card_stand_for_one_another():
    # eight cards to eight teams make 4,140 deals if teams have no names, 16,777,216 if they have
    rows = weighing(1, 2, 4, 8, 16, 32, 64, 128)
    deck = SmallDeck(8, rows, (0,) * 8, apart=["cards", "level", "topic"])
    search = search_from(deck, deck.known)
    assert search.run(random.Random(1))
    assert search.standing == (127, 0, 0)  # a card each


def test_a_team_that_has_cards_may_get_the_first_of_the_others():
    # the hands 0 + 5, 4 and 4 have 3 words each; the card of 5 is the heaviest and is dealt first
    rows = [
        Row("set", words=3, home=2),
        Row("heavy", points=5),
        Row("light", points=4, words=3),
        Row("as light", points=4, words=3),
    ]
    deck = SmallDeck(3, rows, (2, 0, 1, 2))
    search = search_from(deck, deck.known)
    assert search.run(random.Random(1))
    assert search.owners in {(2, 2, 0, 1), (2, 2, 1, 0)}


def test_heavy_cards_come_first_so_that_what_cannot_be_better_is_left_early():
    rows = weighing(*[n * n for n in range(18, 6, -1)])
    deck = SmallDeck(4, rows, tuple(n // 3 for n in range(12)))
    assert search_from(deck, deck.known).run(random.Random(1))


def test_nothing_is_looked_for_where_nothing_can_be_better():
    deck = SmallDeck(4, weighing(*[1] * 24), tuple(n % 4 for n in range(24)))
    assert search_from(deck, deck.known).run(random.Random(1))


def test_a_search_that_would_take_too_long_claims_nothing():
    drawn = random.Random(1)
    rows = weighing(*[drawn.randrange(1000) for _ in range(16)])
    deck = SmallDeck(4, rows, tuple(n // 4 for n in range(16)))
    search = search_from(deck, deck.known)
    assert not search.run(random.Random(1))
    assert search.standing < deck.standing(deck.known)
    assert search.standing == deck.standing(search.owners)


def test_a_search_ends_at_a_standing_that_none_is_below():
    # 23 cards of one point to three teams: eight, eight and seven
    rows = weighing(*[1] * 23)
    deck = SmallDeck(3, rows, (0,) * 9 + (1,) * 7 + (2,) * 7)
    search = search_from(deck, deck.known, floor=(1, 0, 0))
    assert search.run(random.Random(1))
    assert search.standing == (1, 0, 0)
    assert not search_from(deck, deck.known).run(random.Random(1))
