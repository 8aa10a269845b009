"""The roster of seats against its rule: equally often, never twice running, wherever it stops."""

from collections import Counter
from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from decks.lesson.writers import writers


@given(st.integers(1, 30), st.integers(0, 100))
def test_every_seat_writes_equally_often_within_one_wherever_the_lesson_stops(seats, questions):
    roster = writers(seats, questions)
    assert len(roster) == questions
    for end in range(1, questions + 1):
        times = Counter(roster[:end])
        assert set(times) <= set(range(1, seats + 1))
        counts = [times[seat] for seat in range(1, seats + 1)]
        assert max(counts) - min(counts) <= 1


@given(st.integers(2, 30), st.integers(0, 100))
def test_nobody_writes_twice_running(seats, questions):
    assert all(one != other for one, other in pairwise(writers(seats, questions)))


def test_a_team_of_one_writes_each_time():
    assert writers(1, 4) == (1, 1, 1, 1)


def test_in_rounds_as_long_as_the_team_is_large_the_first_question_goes_to_another_seat():
    roster = writers(6, 36)
    assert sorted(roster[::6]) == [1, 2, 3, 4, 5, 6]
