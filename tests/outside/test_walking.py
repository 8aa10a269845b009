"""How many words a team brings home, against figures worked out by hand."""

import pytest

from decks.lesson.walking import WALKING_SPEED, reckon


def test_the_walk_is_the_compendiums_two_and_a_half_miles_an_hour():
    """Youth Compendium of Physical Activities (Butte et al. 2018), row 80180X; a mile is exactly
    1609.344 m and an hour 3600 s."""
    assert pytest.approx(2.5 * 1609.344 / 3600, abs=1e-4) == WALKING_SPEED


def test_trips_are_the_time_over_the_way_there_and_back():
    """10 m there and 10 m back at 1 m/s are 20 s, with 4 s at the ends 24: 25 trips in 10 min."""
    reckoned = reckon(metres=10, minutes=10, cards=100, blanks=10, speed=1, handling=4)
    assert reckoned.seconds_a_trip == 24
    assert (reckoned.trips, reckoned.words, reckoned.rounds) == (25, 25, 2.5)


def test_a_team_brings_home_no_more_words_than_there_are():
    assert reckon(metres=10, minutes=10, cards=18, blanks=18, speed=1, handling=4).words == 18


def test_a_guide_without_blanks_is_filled_no_times():
    assert reckon(metres=10, minutes=10, cards=5, blanks=0).rounds == 0


@pytest.mark.parametrize(("metres", "speed"), [(10, 0), (-1, 1)])
def test_a_walk_of_no_speed_or_less_than_no_length_is_refused(metres, speed):
    with pytest.raises(ValueError, match=str(metres)):
        reckon(metres=metres, minutes=10, cards=5, blanks=5, speed=speed)
