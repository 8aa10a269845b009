"""Sharing out one pile: what counting alone allows."""

from itertools import product

import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.dealing.even import evenest


@pytest.mark.parametrize(
    ("pinned", "free", "least", "most"),
    [
        ([0, 0, 0], 9, 3, 3),
        ([0, 0, 0], 10, 3, 4),
        ([5, 0, 0], 4, 2, 5),  # four cards to the two without: 2 each
        ([5, 0, 0], 5, 2, 5),  # 3 and 2
        ([5, 0, 0], 10, 5, 5),
        ([5, 0, 0], 11, 5, 6),
        ([0, 0], 1, 0, 1),
        ([7], 2, 9, 9),
        ([2, 6], 0, 2, 6),
    ],
)
def test_each_card_goes_to_a_team_that_has_fewest(pinned, free, least, most):
    assert evenest(pinned, free) == (least, most)


@given(st.lists(st.integers(0, 6), min_size=1, max_size=3), st.integers(0, 7))
def test_no_way_to_share_out_has_a_larger_least_or_a_smaller_most(pinned, free):
    ways = [
        [have + got for have, got in zip(pinned, gets, strict=True)]
        for gets in product(range(free + 1), repeat=len(pinned))
        if sum(gets) == free
    ]
    assert evenest(pinned, free) == (max(map(min, ways)), min(map(max, ways)))
