"""The order of backs; tests/whole/test_two_passes.py prints them on a model of a printer."""

from hypothesis import given
from hypothesis import strategies as st

from decks.layout.passes import order_of_backs
from decks.recipe import ComesOut

runs_of = st.lists(st.lists(st.integers(), min_size=1, max_size=9), max_size=5)


def test_the_sheet_that_came_out_last_goes_in_first_where_the_pile_goes_in_as_it_lies():
    assert order_of_backs([[1, 2, 3]], ComesOut.FACE_DOWN) == [3, 2, 1]


def test_the_first_sheet_goes_in_first_where_the_pile_was_turned_over():
    assert order_of_backs([[1, 2, 3]], ComesOut.FACE_UP) == [1, 2, 3]


def test_every_load_of_paper_is_turned_round_by_itself():
    assert order_of_backs([[1, 2], [3], [4, 5]], ComesOut.FACE_DOWN) == [2, 1, 3, 5, 4]


@given(runs=runs_of)
def test_no_back_is_lost_or_doubled_and_each_stays_in_its_run(runs):
    for comes_out in ComesOut:
        ordered = order_of_backs(runs, comes_out)
        start = 0
        for run in runs:
            assert sorted(ordered[start : start + len(run)]) == sorted(run)
            start += len(run)
        assert start == len(ordered)
