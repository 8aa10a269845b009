"""The study guide: every blank has its word in the bank, and nothing is given away."""

from collections import Counter

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from strategies import card, decks

from cards.item import Kind, folded
from cards.style import Span, TextStyle
from decks.bank import Pool, is_sound, make_guide


def guide_of(items, pool=None, *, team="Otter", **choices):
    pool = items if pool is None else pool
    return make_guide(team, items, Pool(pool), **{"extra_words": 2, "seed": "shore"} | choices)


@settings(deadline=None)
@given(decks(), st.integers(0, 4), st.integers(1, 10))
def test_every_item_is_one_blank_and_every_answer_is_in_its_bank(deck, extra_words, most):
    items, _teams = deck
    guide = guide_of(items[::2], items, extra_words=extra_words, most=most)
    assert Counter(blank for part in guide.parts for blank in part.blanks) == Counter(items[::2])
    for part in guide.parts:
        assert 1 <= len(part.blanks) <= most
        assert set(part.bank) == {blank.answer for blank in part.blanks} | set(part.extra_words)
        assert len(part.bank) == len(set(map(folded, part.bank)))
        assert len(part.extra_words) <= extra_words


@pytest.mark.parametrize(
    ("count", "sizes"),
    [
        (0, []),
        (1, [1]),
        (10, [10]),
        (11, [6, 5]),
        (16, [8, 8]),
        (21, [7, 7, 7]),
        (311, [10] * 23 + [9] * 9),
    ],
)
def test_parts_are_as_equal_as_can_be(count, sizes):
    guide = guide_of([card(number) for number in range(count)])
    assert guide.team == "Otter"
    assert [len(part.blanks) for part in guide.parts] == sizes
    assert guide.second == ()


def test_a_kind_of_four_items_or_more_has_a_bank_of_its_own():
    kinds = [Kind.FACT] * 5 + [Kind.VOCABULARY] * 7 + [Kind.QUESTION] * 4
    guide = guide_of([card(number, kind=kind) for number, kind in enumerate(kinds)])
    assert [{blank.kind for blank in part.blanks} for part in guide.parts] == [
        {Kind.VOCABULARY},
        {Kind.QUESTION},
        {Kind.FACT},
    ]


def test_a_kind_of_fewer_items_stands_behind_the_kind_before_it():
    kinds = [Kind.QUESTION] * 2 + [Kind.VOCABULARY] * 6
    (part,) = guide_of([card(number, kind=kind) for number, kind in enumerate(kinds)]).parts
    assert [blank.kind for blank in part.blanks] == sorted(kinds, reverse=True)


def test_and_so_it_does_in_every_part_of_a_few_blanks():
    kinds = [Kind.QUESTION] * 2 + [Kind.VOCABULARY] * 8
    guide = guide_of([card(number, kind=kind) for number, kind in enumerate(kinds)], most=4)
    shown = [blank.kind for part in guide.parts for blank in part.blanks]
    assert shown == sorted(kinds, reverse=True)


def test_a_small_kind_at_the_end_leaves_the_other_kinds_their_own_banks():
    kinds = [Kind.VOCABULARY] * 5 + [Kind.QUESTION] * 5 + [Kind.FACT] * 3
    guide = guide_of([card(number, kind=kind) for number, kind in enumerate(kinds)])
    assert [{blank.kind for blank in part.blanks} for part in guide.parts] == [
        {Kind.VOCABULARY},
        {Kind.QUESTION, Kind.FACT},
    ]


@pytest.mark.parametrize("pair", ["Co|CO", "mW|MW", "a|A"])
def test_symbols_that_part_in_their_capitals_have_each_a_word_in_the_bank(pair):
    items = [card(number, answer=answer) for number, answer in enumerate(pair.split("|"))]
    (part,) = guide_of(items, extra_words=0).parts
    assert sorted(part.bank) == sorted(pair.split("|"))
    assert not part.reusable
    assert part.guess_mean == 1


def test_a_power_and_a_number_of_the_same_figures_have_each_a_word_in_the_bank():
    power = card(0, answer="102", answer_spans=(Span(2, 3, TextStyle.RAISED),))
    (part,) = guide_of([power, card(1, answer="102")], extra_words=0).parts
    assert sorted(part.bank) == ["102", "10²"]
    assert is_sound(part)
    # and each may be an extra word for the other
    (part,) = guide_of([card(1, answer="102")], [power], extra_words=1).parts
    assert part.extra_words == ("10²",)


def test_items_with_the_same_answer_stand_in_different_parts():
    items = [card(number) for number in range(10)]
    twins = [card(number, answer="Lugworm" if number % 2 else "lugworm") for number in (10, 11)]
    for seed in range(20):
        guide = guide_of(items + twins, seed=str(seed))
        assert [len(part.blanks) for part in guide.parts] == [6, 6]
        assert not any(part.reusable for part in guide.parts)


def test_items_that_could_answer_each_other_stand_in_different_parts():
    items = [card(number) for number in range(10)]
    rivals = [card(10, answer="wrack"), card(11, answer="seaweed", also_right=("Wrack",))]
    for seed in range(20):
        guide = guide_of(items + rivals, seed=str(seed))
        assert all(len(set(rivals) & set(part.blanks)) == 1 for part in guide.parts)


def test_a_word_that_two_blanks_need_stands_once_and_may_be_used_again():
    items = [card(0, answer="ebb  tide"), card(1, answer="Ebb\ntide"), card(2, answer="flood")]
    (part,) = guide_of(items, extra_words=0).parts
    assert part.reusable
    assert [word.casefold() for word in part.bank] == ["ebb tide", "flood"]
    assert part.guess_mean == pytest.approx(3 / 2)  # three blanks, each right once in two


def test_guessing_earns_the_share_of_blanks_in_words():
    items = [card(number) for number in range(20)]
    (part,) = guide_of(items[:8], items).parts
    assert len(part.bank) == 10
    assert part.guess_mean == pytest.approx(0.8)


def test_the_bank_is_in_the_order_of_a_dictionary():
    words = ["wrack", "Zostera", "écume", "eel", "Ebb", "ångström", "anemone"]
    (part,) = guide_of([card(n, answer=w) for n, w in enumerate(words)], extra_words=0).parts
    assert part.bank == ("anemone", "ångström", "Ebb", "écume", "eel", "wrack", "Zostera")


def test_numbers_stand_by_size():
    (part,) = guide_of([card(n, answer=a) for n, a in enumerate(["12", "9 m", "144", "2"])]).parts
    assert part.bank == ("2", "9 m", "12", "144")


def test_the_order_is_the_seeds_and_each_teams_own():
    items = [card(number) for number in range(10)]
    orders = [guide_of(items, seed=s, team=t) for s, t in (("a", "Otter"), ("b", "Otter"))]
    orders += [guide_of(items, seed="a", team=team) for team in ("Heron", None)]
    assert len({guide.parts[0].blanks for guide in orders}) == 4
    assert guide_of(items, seed="a") == guide_of(items, seed="a") == orders[0]
