"""When an item counts as missed, as due to come back, and as known."""

import pytest

from decks.aims import Past, Result


def past(*results, decks=(1,), expected=0.75):
    return Past("key", decks, tuple(Result(*result) for result in results), expected)


@pytest.mark.parametrize(
    ("right", "tries", "missed"),
    [(0, 1, True), (1, 1, False), (3, 5, False), (2, 5, True), (17, 28, False), (16, 28, True)],
)
def test_an_item_is_missed_below_three_in_five(right, tries, missed):
    assert past((1, right, tries)).missed is missed  # 17 of 28 are 60.7 %, 16 are 57.1 %


def test_an_item_without_marks_is_neither_missed_nor_known_nor_back():
    assert not past(expected=0.95).known
    assert not past().missed
    assert not past(decks=(1, 2)).back_since


def test_the_last_marks_decide_whether_an_item_is_missed():
    assert not past((1, 0, 4), (2, 4, 4), decks=(1, 2)).missed
    assert past((1, 4, 4), (2, 0, 4), decks=(1, 2)).missed


def test_an_item_has_been_back_if_it_was_in_a_deck_after_its_marks():
    assert not past((1, 0, 4)).back_since
    assert past((1, 0, 4), decks=(1, 2)).back_since
    assert not past((2, 0, 4), decks=(1, 2)).back_since


def test_an_item_is_known_at_ninety_percent_after_four_tries():
    assert past((1, 4, 4), expected=0.90).known
    assert not past((1, 3, 3), expected=0.90).known
    assert not past((1, 4, 4), expected=0.89).known
    assert past((1, 2, 2), (2, 2, 2), decks=(1, 2), expected=0.93).known
