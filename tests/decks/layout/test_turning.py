"""Turning: what must hold for every page. The published map is checked in tests/outside."""

from hypothesis import given
from hypothesis import strategies as st

from decks.layout.turning import duplex, fold
from decks.recipe import Flip

lengths = st.floats(min_value=100, max_value=2000)
points = st.floats(min_value=0, max_value=2000)


@given(width=lengths, height=lengths, flip=st.sampled_from(Flip), x=points, y=points)
def test_turning_twice_is_doing_nothing(width, height, flip, x, y):
    turning = duplex(width=width, height=height, flip=flip)
    twice = turning.point(*turning.point(x, y))
    assert abs(twice[0] - x) < 1e-9
    assert abs(twice[1] - y) < 1e-9


@given(width=lengths, height=lengths, flip=st.sampled_from(Flip), x=points, y=points)
def test_a_rectangle_lies_behind_itself_with_all_its_corners(width, height, flip, x, y):
    turning = duplex(width=width, height=height, flip=flip)
    left, bottom = turning.corner(x, y, width=30, height=20)
    corners = {turning.point(x + dx, y + dy) for dx in (0, 30) for dy in (0, 20)}
    assert abs(min(corner[0] for corner in corners) - left) < 1e-9
    assert abs(min(corner[1] for corner in corners) - bottom) < 1e-9


@given(width=lengths, height=lengths, x=points, y=points)
def test_the_other_flip_lands_in_the_opposite_corner(width, height, x, y):
    long = duplex(width=width, height=height, flip=Flip.LONG).point(x, y)
    short = duplex(width=width, height=height, flip=Flip.SHORT).point(x, y)
    assert abs(long[0] + short[0] - width) < 1e-9
    assert abs(long[1] + short[1] - height) < 1e-9


def test_a_fold_mirrors_at_its_line_and_nowhere_else():
    assert fold(x=100).point(30, 50) == (170, 50)  # 2 * 100 - 30
    assert fold(y=100).point(30, 50) == (30, 150)  # 2 * 100 - 50


def test_only_a_level_fold_puts_the_back_on_its_head():
    assert not fold(x=100).half_turn
    assert fold(y=100).half_turn
