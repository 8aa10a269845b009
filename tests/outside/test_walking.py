"""How many words a team brings home, against figures worked out by hand."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.lesson.walking import WALKING_SPEED, Amount, metres_for, reckon


def test_the_walk_is_the_compendiums_two_and_a_half_miles_an_hour():
    """Youth Compendium of Physical Activities (Butte et al. 2018), row 80180X; a mile is exactly
    1609.344 m and an hour 3600 s."""
    assert pytest.approx(2.5 * 1609.344 / 3600, abs=1e-4) == WALKING_SPEED


def test_trips_are_the_time_over_the_way_there_and_back():
    """10 m there and 10 m back at 1 m/s are 20 s, with 4 s at the ends 24: 25 trips in 10 min."""
    reckoned = reckon(metres=10, minutes=10, cards=100, blanks=10, speed=1, handling=4)
    assert reckoned.seconds_a_trip == 24
    assert (reckoned.trips, reckoned.words, reckoned.rounds) == (25, 25, 2.5)


def test_a_lesson_as_it_is_usually_set():
    """20 m at 2.5 miles an hour take 17.895 s, with 8 s at the ends 25.895: in 1200 s 46 trips
    (1191.2 s), and 18 cards are home after 466.1 s, 7.77 minutes, three walks for each of six."""
    reckoned = reckon(metres=10, minutes=20, cards=18, blanks=18, students=6)
    assert reckoned.seconds_a_trip == pytest.approx(25.895, abs=1e-3)
    assert (reckoned.trips, reckoned.words, reckoned.walks) == (46, 18, (3, 3))
    assert reckoned.minutes_for_all == pytest.approx(7.77, abs=0.005)
    assert reckoned.amount is Amount.TOO_FEW


def test_a_team_brings_home_no_more_words_than_there_are():
    assert reckon(metres=10, minutes=10, cards=18, blanks=18, speed=1, handling=4).words == 18


def test_who_is_caught_walks_for_nothing():
    """Of 25 trips in 10 minutes (as above) one in five is for nothing: 20 words. For 16 words
    20 trips are needed, 480 s; of seven students six walk three times and one twice."""
    figures = {"metres": 10, "minutes": 10, "blanks": 10, "speed": 1, "handling": 4}
    many = reckon(cards=100, caught=0.2, **figures)
    assert (many.words, many.rounds) == (20, 2)
    few = reckon(cards=16, caught=0.2, students=7, **figures)
    assert (few.words, few.minutes_for_all, few.walks) == (16, 8, (2, 3))


@pytest.mark.parametrize(
    ("cards", "amount"),
    # 25 trips in 10 minutes: 12 cards are home after 4.8 minutes, 13 after 5.2
    [(12, Amount.TOO_FEW), (13, Amount.ENOUGH), (25, Amount.ENOUGH), (26, Amount.TOO_MANY)],
)
def test_cards_are_enough_that_last_half_the_time_and_not_beyond_it(cards, amount):
    reckoned = reckon(metres=10, minutes=10, cards=cards, blanks=1, speed=1, handling=4)
    assert reckoned.amount is amount


def test_the_way_can_be_chosen_so_that_cards_last():
    """20 cards in 10 minutes are 30 s a trip, 26 of them walking: 13 m out and 13 m back."""
    assert metres_for(minutes=10, cards=20, speed=1, handling=4) == 13
    assert metres_for(minutes=1, cards=60, speed=1, handling=4) == 0


@given(st.integers(1, 200), st.integers(1, 90), st.integers(1, 200), st.integers(1, 60))
def test_everyone_of_a_team_walks_about_equally_often(metres, minutes, cards, students):
    reckoned = reckon(
        metres=metres, minutes=minutes, cards=cards, blanks=cards, students=students, caught=0.25
    )
    least, most = reckoned.walks
    assert most - least <= 1
    assert least * students <= reckoned.trips
    assert reckoned.words <= min(reckoned.trips, most * students, cards)


def test_blanks_for_the_words_of_other_teams_stay_open():
    """25 trips in 10 minutes, but of the words for 40 blanks only 10 lie there for the team."""
    figures = {"metres": 10, "minutes": 10, "speed": 1, "handling": 4}
    assert reckon(cards=10, blanks=40, **figures).rounds == 0.25
    assert reckon(cards=40, blanks=40, **figures).rounds == 25 / 40


def test_a_guide_without_blanks_is_filled_no_times():
    assert reckon(metres=10, minutes=10, cards=5, blanks=0).rounds == 0


@pytest.mark.parametrize(("metres", "speed"), [(10, 0), (-1, 1)])
def test_a_walk_of_no_speed_or_less_than_no_length_is_refused(metres, speed):
    with pytest.raises(ValueError, match=str(metres)):
        reckon(metres=metres, minutes=10, cards=5, blanks=5, speed=speed)


@pytest.mark.parametrize(("students", "caught"), [(0, 0), (4, 1)])
def test_a_team_of_nobody_and_a_catcher_who_stops_all_are_refused(students, caught):
    with pytest.raises(ValueError, match=str(caught)):
        reckon(metres=10, minutes=10, cards=5, blanks=5, students=students, caught=caught)
