"""Sets of cards for the bases."""

from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.recipe import Activity, Ink, Recipe, Sets
from decks.team import MOST_TEAMS, make_teams, stock_name


def stations(items, **more):
    recipe = Recipe(
        title="Shore",
        teams=make_teams(TEAMS[:4], [None] * 4),
        activity=Activity.STATIONS,
        **more,
    )
    return make_deck(recipe, items, number=1, seed="s")


ROWS = st.lists(st.tuples(st.integers(1, 3), st.sampled_from("ABCD")), min_size=1, max_size=30)


@given(ROWS, st.integers(1, 5), st.sampled_from(Sets))
@settings(max_examples=25, deadline=None)
def test_no_question_comes_twice_and_none_is_lost(rows, sets, how):
    items = [card(n, level, topic) for n, (level, topic) in enumerate(rows)]
    deck = stations(items, rounds=sets, sets=how)
    asked = [one.item for one in deck.cards]
    assert sorted(item.prompt for item in asked) == sorted(item.prompt for item in items)
    sizes = [len(hand) for hand in deck.hands]
    assert sizes == sorted(sizes, reverse=True)
    assert max(sizes) - min(sizes) <= 1


@given(ROWS, st.integers(1, 5))
@settings(max_examples=25, deadline=None)
def test_a_label_is_the_number_of_the_base(rows, sets):
    items = [card(n, level, topic) for n, (level, topic) in enumerate(rows)]
    deck = stations(items, rounds=sets)
    for hand, laid in zip(deck.hands, deck.lesson.sets, strict=True):
        assert [one.label for one in hand] == [str(n) for n in range(1, len(hand) + 1)]
        assert [one.item for one in hand] == list(laid)


def test_no_set_is_printed_on_black_paper():
    items = [card(n, 1, "A") for n in range(24)]
    for sets in range(1, MOST_TEAMS + 1):
        owners = stations(items, rounds=sets, ink=Ink.STOCK).owners
        assert "black" not in {stock_name(owner) for owner in owners}
