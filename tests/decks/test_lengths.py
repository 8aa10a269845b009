import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.lengths import (
    CardMeasure,
    Margins,
    read_bleed,
    read_distance,
    read_margins,
    read_measure,
)

# 1 in = 25.4 mm and 1 ft = 304.8 mm: exact by the international yard and pound agreement of 1959


@pytest.mark.parametrize(
    ("text", "mm"),
    [
        ("40 cm", 400),
        ("1.5 m", 1500),
        ("1,5 m", 1500),
        ("5 ft", 1524),
        ("5'", 1524),
        ("5′", 1524),
        ("60 in", 1524),
        ('60"', 1524),
        ("  2M ", 2000),
        ("10 m", 10_000),
    ],
)
def test_a_distance_is_read_in_any_usual_unit(text, mm):
    assert read_distance(text) == pytest.approx(mm)


@pytest.mark.parametrize(
    "text", ["", "40", "far", "-1 m", "1 km", "10 cm", "11 m", "1.5.2 m", "1e3 mm"]
)
def test_what_is_no_distance_between_20_cm_and_10_m_is_refused(text):
    assert read_distance(text) is None


@pytest.mark.parametrize(
    ("text", "width", "height"),
    [
        ("90 x 60 mm", 90, 60),
        ("90mm x 60mm", 90, 60),
        ("90 × 60 mm", 90, 60),
        ("9 x 6 cm", 90, 60),
        ("9 cm x 60 mm", 90, 60),
        ("3.5 x 2.5 in", 88.9, 63.5),
        ('3.5" X 2.5"', 88.9, 63.5),
        ("63,5 x 88,9 mm", 63.5, 88.9),
    ],
)
def test_a_card_is_measured_width_by_height(text, width, height):
    measure = read_measure(text)
    assert (measure.width, measure.height) == pytest.approx((width, height))


@pytest.mark.parametrize(
    "text",
    ["", "90 mm", "90 x 60", "90 by 60 mm", "10 x 60 mm", "90 x 600 mm", "x mm", "9 x 6 x 3 cm"],
)
def test_what_is_no_measure_of_a_card_is_refused(text):
    assert read_measure(text) is None


@pytest.mark.parametrize(
    ("text", "margins"),
    [
        ("5 mm", Margins(5, 5, 5, 5)),
        ("0 mm", Margins(0, 0, 0, 0)),
        ("1/4 in", Margins(6.35, 6.35, 6.35, 6.35)),
        ("0.25 in", Margins(6.35, 6.35, 6.35, 6.35)),
        ("5, 5, 6.7, 4 mm", Margins(5, 5, 6.7, 4)),
        ("5; 5; 6,7; 4 mm", Margins(5, 5, 6.7, 4)),
        ("5 mm, 4 mm, 7 mm, 6 mm", Margins(5, 4, 7, 6)),
    ],
)
def test_margins_are_one_length_or_four_from_the_top_clockwise(text, margins):
    assert read_margins(text) == margins


@pytest.mark.parametrize(
    "text", ["", "5", "5, 5 mm", "5, 5, 5, 5", "50 mm", "5, 5, 5, 5, 5 mm", "-1 mm"]
)
def test_what_is_no_set_of_margins_is_refused(text):
    assert read_margins(text) is None


@pytest.mark.parametrize(
    ("text", "mm"),
    [("0", 0), ("none", 0), ("0 mm", 0), ("3 mm", 3), ("1/8 in", 3.175), ("6 mm", None)],
)
def test_a_bleed_is_none_or_up_to_five_millimetres(text, mm):
    assert read_bleed(text) == mm


@given(st.text(max_size=30))
def test_any_text_is_a_length_or_none(text):
    for read in (read_distance, read_measure, read_margins, read_bleed):
        read(text)


@given(st.floats(25, 430), st.floats(25, 430))
def test_a_measure_reads_back_as_it_is_told(width, height):
    measure = CardMeasure(round(width, 1), round(height, 1))
    assert read_measure(str(measure)) == measure


def test_margins_of_thousands_of_letters_are_refused_at_once():
    # a search that begins anew at each letter would take the square of the time: many minutes
    assert read_margins("a" * 400_000 + "1") is None
