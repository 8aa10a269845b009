"""Evening out by steps: as long as one exchange leads nearer, then with shakes between."""

import random
from itertools import permutations, product

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from support.small_deals import Row, SmallDeck

from decks.dealing.evening import Effort, Evening, even_out
from decks.dealing.exchanges import Candidate

NONE_BELOW = (0, 0, 0)
ANY_CLASHES = 10**9


def stepped(deck, best=NONE_BELOW):
    """Return who holds what after all steps that lead nearer, without a shake."""
    holding = deck.holding()
    Evening(holding, best, Effort(len(deck.rows))).run()
    return tuple(holding.owners)


def apart(weights, owners, one, other):
    """Return by how much a team carries more than another."""
    carried = zip(weights, owners, strict=True)
    return sum((owner == one) * weight - (owner == other) * weight for weight, owner in carried)


def exchanges(owners, one, other):
    """Yield the owners after each exchange of one card or none for one or none."""
    mine = [n for n, owner in enumerate(owners) if owner == one]
    theirs = [n for n, owner in enumerate(owners) if owner == other]
    for out, into in product([None, *mine], [None, *theirs]):
        given_to = {out: other, into: one}
        yield tuple(given_to.get(n, owner) for n, owner in enumerate(owners))


def nearer(deck, weights, owners):
    """Return the deals within the limits by which one exchange brings two teams nearer."""
    return [
        after
        for one, other in permutations(range(deck.teams), 2)
        if (before := apart(weights, owners, one, other)) > 0
        for after in exchanges(owners, one, other)
        if abs(apart(weights, after, one, other)) < before and deck.keeps(after)
    ]


@st.composite
def weighed_cards(draw):
    """Draw hands of up to four cards, and whether they weigh what their level says."""
    by_level = draw(st.booleans())
    card = st.tuples(st.integers(1, 3), st.sampled_from("ab"), st.integers(0, 9))
    hands = draw(st.lists(st.lists(card, max_size=4), min_size=2, max_size=4).filter(any))
    cards = [(level, topic, level if by_level else w) for hand in hands for level, topic, w in hand]
    known = tuple(team for team, hand in enumerate(hands) for _card in hand)
    return len(hands), cards, known


@pytest.mark.parametrize("load", ["points", "words"])
@settings(deadline=None)
@given(weighed_cards())
def test_no_exchange_of_a_card_is_left_that_brings_two_teams_nearer(load, drawn):
    teams, cards, known = drawn
    rows = [Row(f"word {n}", level, topic) for n, (level, topic, _) in enumerate(cards)]
    weights = [weight for *_, weight in cards]
    rows = [row._replace(**{load: weight}) for row, weight in zip(rows, weights, strict=True)]
    deck = SmallDeck(teams, rows, known)
    owners = stepped(deck)
    assert deck.keeps(owners)
    assert deck.standing(owners) <= deck.standing(known)
    assert nearer(deck, weights, owners) == []


@pytest.mark.parametrize("load", ["points", "words"])
def test_a_card_is_exchanged_for_one_of_its_cell_that_weighs_less(load):
    # 9 + 5 against 5 + 1: one exchange makes that 5 + 5 and 9 + 1, two would turn it round
    rows = [
        Row(f"word {n}", level)._replace(**{load: weight})
        for n, (level, weight) in enumerate([(1, 9), (2, 5), (1, 5), (2, 1)])
    ]
    deck = SmallDeck(2, rows, (0, 0, 1, 1))
    assert deck.standing(stepped(deck)) == (0, 0, 0)


def test_points_come_before_words():
    # 9 + 5 against 5 + 1 points, 4 words each: even points cost 8 words
    rows = [
        Row("word 0", level=1, points=9, words=0),
        Row("word 1", level=2, points=5, words=4),
        Row("word 2", level=1, points=5, words=4),
        Row("word 3", level=2, points=1, words=0),
    ]
    deck = SmallDeck(2, rows, (0, 0, 1, 1))
    assert deck.standing(deck.known) == (8, 0, 0)
    assert deck.standing(stepped(deck)) == (0, 8, 0)


def test_words_are_not_evened_out_where_that_costs_points():
    # 5 for 2 would make 6 words each of 9 and 3, and 1 point and 3 of 2 and 2
    rows = [
        Row("word 0", points=1, words=4),
        Row("word 1", points=1, words=5),
        Row("word 2", points=0, words=2),
        Row("word 3", points=2, words=1),
    ]
    deck = SmallDeck(2, rows, (0, 0, 1, 1))
    assert deck.standing(stepped(deck)) == deck.standing(deck.known) == (0, 6, 0)


@pytest.mark.parametrize("best", [NONE_BELOW, (0, 9, 0), (9, 0, 0)])
def test_a_rival_goes_to_a_team_that_comes_later(best):
    rows = [Row("ebb"), Row("ebb"), Row("flood"), Row("slack")]
    deck = SmallDeck(2, rows, (0, 0, 1, 1))
    assert deck.standing(stepped(deck, best)) == (0, 0, 0)


def test_a_rival_is_not_exchanged_for_a_rival_of_another_card():
    # for the first “ebb” the second “flood” would do as little as before: “slack” it must be
    rows = [Row("flood"), Row("flood"), Row("ebb"), Row("ebb"), Row("slack")]
    deck = SmallDeck(2, rows, (0, 1, 0, 0, 1))
    assert deck.standing(stepped(deck)) == (0, 0, 0)


def test_what_is_looked_at_is_counted_until_the_effort_is_spent():
    nothing = Candidate((0, 0), ((), ()))
    effort = Effort(0)
    effort.left = 4
    assert list(effort.spend(iter([nothing, None, nothing]))) == [nothing, nothing]
    assert effort.left == 1
    assert list(effort.spend(iter([nothing] * 3))) == [nothing]
    assert list(effort.spend(iter([nothing] * 3))) == []


def drawn_deck(seed, teams):
    """Return seven cards that differ in all, some of them rivals."""
    drawn = random.Random(seed)
    rows = [
        Row(
            *(drawn.choice("xyz"), drawn.randint(1, 2), drawn.choice("ab")),
            *(drawn.randint(0, 9), drawn.randint(0, 9)),
        )
        for _ in range(7)
    ]
    return SmallDeck(teams, rows, tuple(n % teams for n in range(7)))


@pytest.mark.parametrize("teams", [2, 3])
def test_shakes_lead_to_the_best_where_steps_alone_do_not(teams):
    short = 0
    for seed in range(40):
        deck = drawn_deck(seed, teams)
        best = min(map(deck.standing, deck.deals()))
        holding = deck.holding()
        even_out(holding, [holding.fence], best, random.Random(seed))
        assert deck.standing(holding.owners) == best
        short += deck.standing(stepped(deck, best)) > best
    assert short > 0


def test_an_exchange_of_cards_that_are_right_for_many_blanks_costs_more_effort():
    rows = [Row(f"word {n}", points=n) for n in range(34)]
    deck = SmallDeck(2, rows, (0,) * 17 + (1,) * 17)
    plain = deck.stock

    def left(accepts):
        deck.stock = replace(plain, rivals=replace(plain.rivals, accepts=(accepts,) * 34))
        effort = Effort(34)
        Evening(deck.holding(), (1, 0, ANY_CLASHES), effort).run()
        return effort.left

    # the same exchanges of two cards: for each 2 * 16 blanks are looked at more, counted by 16
    more = left(()) - left(tuple(range(16)))
    assert more > 0
    assert more % 2 == 0


@st.composite
def rivals_and_others(draw):
    """Draw hands of a few cards that differ in points and words, and often answer each other."""
    teams = draw(st.integers(2, 3))
    row = st.tuples(st.sampled_from("xyz"), st.integers(0, 9), st.integers(0, 9))
    drawn = draw(st.lists(row, min_size=4, max_size=12))
    rows = [Row(answer, points=points, words=words) for answer, points, words in drawn]
    return SmallDeck(teams, rows, tuple(n % teams for n in range(len(rows))))


@settings(deadline=None, max_examples=300)
@given(rivals_and_others())
def test_neither_words_nor_rivals_cost_points(deck):
    plain = [row._replace(words=0, answer=f"word {n}") for n, row in enumerate(deck.rows)]
    by_points = stepped(SmallDeck(deck.teams, plain, deck.known))
    assert deck.standing(stepped(deck))[0] <= deck.standing(by_points)[0]
