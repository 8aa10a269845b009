"""Telling inks apart and choosing them."""

from itertools import combinations

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from decks.colour import apart, apart_in_grey, choose

CODES = st.from_regex(r"#[0-9A-F]{6}", fullmatch=True)


@given(CODES, CODES)
def test_telling_apart_is_the_same_in_either_order(one, other):
    assert apart(one, other) == pytest.approx(apart(other, one))
    assert apart_in_grey(one, other) == pytest.approx(apart_in_grey(other, one))


@given(CODES)
def test_an_ink_is_not_told_from_itself(code):
    assert apart(code, code) == 0
    assert apart_in_grey(code, code) == 0


def test_black_and_white_are_told_by_everybody_and_on_every_copier():
    # lightness 100 in steps of 15; ΔE00 of black and white is 100, of the 20 that are asked
    assert apart("#000000", "#FFFFFF") == pytest.approx(5, abs=0.01)
    assert apart_in_grey("#000000", "#FFFFFF") == pytest.approx(100 / 15, abs=0.01)


def test_two_inks_that_only_differ_in_red_and_green_are_close_for_somebody():
    # olive and a brick of the same lightness, plainly two colours to ordinary eyes
    assert apart("#7A6A00", "#A05040") < 1


@settings(deadline=None)
@given(
    palette=st.lists(CODES, unique=True, min_size=1, max_size=7),
    given_inks=st.lists(CODES, max_size=2),
    share=st.floats(0, 1),
)
def test_no_other_set_of_the_palette_is_better_and_no_earlier_one_as_good(
    palette, given_inks, share
):
    count = round(share * len(palette))
    in_grey = count + len(given_inks) <= 5

    def reached(inks):
        told = [1.0]
        for ink, other in (*combinations(inks, 2), *((i, g) for i in inks for g in given_inks)):
            told.append(apart(ink, other))
            if in_grey:
                told.append(apart_in_grey(ink, other))
        return min(told)

    # the sets come in the palette's order, and max takes the first of the best
    assert choose(count, palette, given_inks) == max(combinations(palette, count), key=reached)


def test_a_palette_that_is_too_short_is_refused():
    with pytest.raises(ValueError, match="3"):
        choose(3, ["#000000", "#FFFFFF"])
