from itertools import pairwise
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace

from cards.content import Cell, ExerciseRow
from cards.place import Place
from decks.lesson.exercises import (
    ANYONE,
    Effort,
    Exercise,
    exercises_of,
    order_exercises,
    seconds_of,
    standard,
    ways,
)


@given(st.integers(0, 60), st.integers(0, 99))
def test_no_exercise_comes_twice_running(count, seed):
    ordered = order_exercises(standard(), count, Random(seed))
    assert len(ordered) == count
    assert all(a != b for a, b in pairwise(ordered))


@given(st.integers(0, 99))
def test_effort_rises_and_eases(seed):
    efforts = [exercise.effort for exercise in order_exercises(standard(), 8, Random(seed))]
    assert efforts == [1, 2, 3, 2, 1, 2, 3, 2]


@given(st.integers(0, 99))
def test_all_exercises_of_an_effort_come_before_any_comes_again(seed):
    gentle = [e for e in order_exercises(standard(), 12, Random(seed)) if e.effort is Effort.GENTLE]
    assert len(set(gentle)) == 3


def test_a_single_exercise_is_done_each_time():
    assert order_exercises(standard()[:1], 3, Random(1)) == [standard()[0]] * 3


def test_the_nearest_effort_stands_in_for_one_that_the_list_lacks():
    gentle = [e for e in standard() if e.effort is not Effort.STRONG]
    assert len(order_exercises(gentle, 9, Random(1))) == 9


@pytest.mark.parametrize(
    ("how_many", "seconds"),
    [
        ("10 times", 20),
        ("10 each way", 40),
        ("20 seconds", 20),
        ("10 seconds each leg", 20),
        ("1 min", 60),
        ("30 s", 30),
        ("a few", 20),
        ("10 slow reaches", 20),
        ("2 Minutes", 120),
        ("1.5 min", 90),
        ("0,5 min", 30),
    ],
)
def test_how_long_an_exercise_takes_comes_from_its_count(how_many, seconds):
    assert seconds_of(replace(standard()[0], how_many=how_many)) == seconds


def test_every_standard_exercise_has_a_gentler_and_a_seated_option():
    assert all(e.how_many and "sitting" in e.gentler for e in standard())


def test_exercises_come_from_the_teachers_sheet():
    place = Place("Exercises", 2, 1)
    row = ExerciseRow(
        Cell("Wade on the spot", place), Cell("10 s", place), None, Cell("strong", place)
    )
    assert exercises_of([row]) == (Exercise("Wade on the spot", "10 s", "", Effort.STRONG),)


def test_an_effort_that_is_blank_or_unknown_counts_as_moderate():
    place = Place("Exercises", 2, 1)
    rows = [
        ExerciseRow(Cell("Wade", place)),
        ExerciseRow(Cell("Dig", place), effort=Cell("?", place)),
    ]
    assert [e.effort for e in exercises_of(rows)] == [Effort.MODERATE] * 2


def test_an_exercise_with_two_counts_does_not_follow_itself():
    hops = [Exercise("Hop", count, "", Effort.MODERATE) for count in ("5 times", "10 times")]
    exercises = [*hops, Exercise("hop ", "20 times", "", Effort.STRONG), standard()[1]]
    names = [e.name.strip().lower() for e in order_exercises(exercises, 12, Random(1))]
    assert all(one != other for one, other in pairwise(names))


@pytest.mark.parametrize(("word", "effort"), [("light", 1), ("Medium", 2), ("vigorous", 3)])
def test_other_usual_words_for_an_effort_are_understood(word, effort):
    place = Place("Exercises", 2, 1)
    (exercise,) = exercises_of([ExerciseRow(Cell("Wade", place), effort=Cell(word, place))])
    assert exercise.effort == effort


def test_the_options_are_told_one_by_one_and_everyone_has_one():
    wade = replace(standard()[0], gentler="small steps; sitting: heels up;")
    assert ways(wade) == ("small steps", "sitting: heels up")
    assert ways(replace(wade, gentler=" ; ")) == ANYONE
    assert any("sitting" in way for way in ANYONE)
