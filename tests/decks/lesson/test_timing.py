"""How long the calls take; the sums stand beside the figures."""

import pytest
from support.items import item

from cards.item import Level
from decks.lesson import Call, Called
from decks.lesson.calling import seconds_to_allow
from decks.lesson.exercises import Effort, Exercise
from decks.lesson.timing import about_time, calls_told, calls_within, seconds_in_all, seconds_moving
from decks.recipe import Choices

WADE = Exercise("Wade", "20 seconds", "", Effort.MODERATE)


def called(*lengths, seconds=60):
    """Rounds of so many calls, each of some seconds, 20 of them moving."""
    return Called(
        tuple(tuple(Call("1", item(), WADE, seconds) for _ in range(length)) for length in lengths)
    )


def test_all_seconds_are_added_up_and_those_of_the_exercises_too():
    (calls,) = called(6).rounds
    assert seconds_in_all(calls) == 360  # 6 × 60
    assert seconds_moving(calls) == 120  # 6 × 20
    assert calls_told(calls) == "about 6 minutes, 2 of them moving"


def test_less_than_a_minute_of_moving_is_told_in_seconds():
    assert calls_told(called(2).rounds[0]) == "about 2 minutes, 40 seconds of them moving"
    assert calls_told(called(1).rounds[0]) == "about 1 minute, 20 seconds of it moving"


@pytest.mark.parametrize(
    ("rounds", "minutes", "advice"),
    [
        # a call a minute: 34 in all, and 4 rounds of 5 take the 20
        ((5, 5, 5, 5, 5, 5, 4), 20, "call rounds 1 to 4, or build with 20 cards."),
        # 3 rounds of 5 are 15 of 17
        ((5, 5, 5, 5), 17, "call rounds 1 to 3, or build with 17 cards."),
        # one round of 10 would leave 9 minutes of 19 unused
        ((10, 10), 19, "call questions 1 to 19, or build with 19 cards."),
        ((10, 10), 11, "call round 1, or build with 11 cards."),
        ((10,), 4, "call questions 1 to 4, or build with 4 cards."),
        ((5, 5, 5), 11, "call rounds 1 and 2, or build with 11 cards."),
        ((10,), 1, "call question 1, or build with 1 card."),
    ],
)
def test_what_to_call_is_told_where_there_are_more_calls_than_minutes(rounds, minutes, advice):
    said = about_time(called(*rounds), minutes)
    whole, moving = sum(rounds), round(sum(rounds) / 3)
    assert said == (
        f"About {whole} minutes, {moving} of them moving. With Minutes at {minutes}: {advice}"
    )


def test_a_first_call_that_takes_longer_than_there_is_time_is_made_all_the_same():
    assert "call question 1," in about_time(called(3, seconds=200), 2)


def test_nothing_is_advised_where_it_fits():
    assert about_time(called(9, 9), 20) == "About 18 minutes, 6 of them moving."


def test_time_that_is_left_is_told_in_questions_like_these():
    # 8 of 20 minutes: 12 more calls of one minute
    assert about_time(called(4, 4), 20).endswith("there is time for 12 more questions.")


@pytest.mark.parametrize(("minutes", "calls"), [(1, 1), (5, 5), (20, 12), (90, 12)])
def test_calls_are_counted_from_the_first_as_far_as_the_minutes_reach(minutes, calls):
    assert calls_within(called(6, 6), minutes) == calls


def test_choices_that_are_read_out_take_their_time():
    five = ("a worm in the sand", "a snail on a rock", "a crab in a pool")
    asked = item("Which digs?", five[0], level=Level.EASY, wrong=five[1:])
    # 20 to wade, 20 to huddle and 10 to show; 2 and 17 words at 150 a minute are 0.8 and 6.8
    assert seconds_to_allow(asked, WADE, Choices.HIDDEN) == 55
    assert seconds_to_allow(asked, WADE, Choices.SHOWN) == 60
