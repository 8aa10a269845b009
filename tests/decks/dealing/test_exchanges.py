"""The exchanges that are tried are those there are: counted here one after the other."""

from itertools import combinations, product

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.small_deals import Row, SmallDeck

from decks.dealing.exchanges import alike, of_item, several, twice_alike, unlike


@st.composite
def decks(draw):
    """Draw up to four cards for each of three teams; the fence is what they have at the most."""
    homes = st.sampled_from([False, False, False, True])
    levels, topics, weights = st.integers(1, 2), st.sampled_from("ab"), st.integers(0, 9)
    row = st.tuples(levels, topics, weights, weights, homes)
    hands = [draw(st.lists(row, max_size=4)) for _team in range(3)]
    rows = [
        Row(f"word {team}", level, topic, points, words, team if pinned else None)
        for team, hand in enumerate(hands)
        for level, topic, points, words, pinned in hand
    ]
    known = tuple(team for team, hand in enumerate(hands) for _card in hand)
    return SmallDeck(3, rows, known)


def cell(deck, item):
    return deck.rows[item].level, deck.rows[item].topic


def free(deck, team):
    """Return the items of a team that may go, by number."""
    return [
        item
        for item, (owner, row) in enumerate(zip(deck.known, deck.rows, strict=True))
        if owner == team and row.home is None
    ]


def sets(deck, team, *sizes):
    return [chosen for size in sizes for chosen in combinations(free(deck, team), size)]


def lost(deck, out, into):
    """Count what a team that gives some items and takes others loses of points and of words."""
    rows = deck.rows
    return (
        sum(rows[n].points for n in out) - sum(rows[n].points for n in into),
        sum(rows[n].words for n in out) - sum(rows[n].words for n in into),
    )


def expected(deck, outs, intos, allowed):
    return {
        (lost(deck, out, into), frozenset(out), frozenset(into))
        for out, into in product(outs, intos)
        if allowed(out, into)
    }


def found(candidates):
    """Return the exchanges, without the marks for mere looking."""
    return {(c.lost, frozenset(c.what[0]), frozenset(c.what[1])) for c in candidates if c}


def of_like_cells(deck):
    def allowed(out, into):
        return sorted(cell(deck, n) for n in out) == sorted(cell(deck, n) for n in into)

    return allowed


def within_fence(deck):
    """Let the first two teams exchange what leaves all counts within those of the known deal."""

    def allowed(out, into):
        after = [0 if n in into else 1 if n in out else team for n, team in enumerate(deck.known)]
        return deck.keeps(after) and [cell(deck, n) for n in out] != [cell(deck, n) for n in into]

    return allowed


@given(decks())
def test_one_card_is_given_for_each_of_the_same_cell(deck):
    ones = sets(deck, 0, 1), sets(deck, 1, 1)
    assert found(alike(deck.holding(), 0, 1)) == expected(deck, *ones, of_like_cells(deck))


@given(decks())
def test_two_cards_are_given_for_two_of_their_cells(deck):
    twos = sets(deck, 0, 2), sets(deck, 1, 2)
    assert found(twice_alike(deck.holding(), 0, 1)) == expected(deck, *twos, of_like_cells(deck))


@given(decks())
def test_a_card_is_given_for_one_of_another_cell_or_for_none_where_no_count_leaves_the_fence(deck):
    outs, intos = sets(deck, 0, 0, 1), sets(deck, 1, 0, 1)
    assert found(unlike(deck.holding(), 0, 1)) == expected(deck, outs, intos, within_fence(deck))


@given(decks())
def test_one_item_is_given_for_a_like_card_for_another_or_for_none(deck):
    holding, intos = deck.holding(), sets(deck, 1, 0, 1)
    like, fits = of_like_cells(deck), within_fence(deck)
    for item in free(deck, 0):
        assert found(of_item(holding, item, 1)) == expected(
            deck, [(item,)], intos, lambda out, into: like(out, into) or fits(out, into)
        )


@given(decks())
def test_two_or_three_cards_are_given_for_as_many_of_the_same_levels_and_topics(deck):
    def allowed(out, into):
        return all(
            sorted(cell(deck, n)[k] for n in out) == sorted(cell(deck, n)[k] for n in into)
            for k in (0, 1)
        )

    hands = sets(deck, 0, 2, 3), sets(deck, 1, 2, 3)
    assert found(several(deck.holding(), 0, 1)) == expected(deck, *hands, allowed)


def two_hands(mine, theirs):
    """Return the hands of two teams that hold cards of one cell for each number of them."""
    rows, known = [], []
    for team, hand in enumerate((mine, theirs)):
        for level, cards in hand.items():
            rows += [Row(f"word {team}", level)] * cards
            known += [team] * cards
    return SmallDeck(2, rows, known).holding()


def many(source, mine, theirs):
    return sum(candidate is not None for candidate in source(two_hands(mine, theirs), 0, 1))


@pytest.mark.parametrize(
    ("cards", "count"), [({1: 5}, 25), ({1: 50}, 40 * 40), ({1: 50, 2: 50}, 2000)]
)
def test_of_many_like_cards_some_are_tried(cards, count):
    assert many(alike, cards, cards) == count


def test_of_many_pairs_of_exchanges_of_like_cards_every_other_is_tried():
    # of 12 for 12 that is each of 12 for each of 6: 66 pairs of the ones, 30 of the others
    assert many(twice_alike, {1: 12}, {1: 12}) == 66 * 30


def test_of_many_unlike_cards_four_are_tried():
    # 4 for 4 of the other level; 4 for none, which leaves 8 cards to the one and 9 to the other
    assert many(unlike, {1: 9}, {2: 8}) == 4 * 4 + 4


@pytest.mark.parametrize(
    ("cards", "count"),
    [
        (27, 40 * 40 + 40 * 40),  # 351 twos and 2,925 threes
        (28, 40 * 40),  # 3,276 threes are too many to be tried
        (77, 40 * 40),  # 2,926 twos
        (78, 0),  # 3,003
    ],
)
def test_of_many_sets_some_are_tried_and_of_too_many_none(cards, count):
    assert many(several, {1: cards}, {1: cards}) == count
