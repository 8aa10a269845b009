"""Fitting, measured with a typewriter's face: every letter is half an em wide."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.typewriter import typewriter

from decks.layout.fitting import LADDER, fit, height_at, shorten, words_that_fit
from decks.layout.runs import Styled, plain

texts = st.lists(st.text(alphabet="abc", min_size=1, max_size=8), min_size=1, max_size=40).map(
    " ".join
)


def test_a_word_takes_the_largest_size_that_the_width_allows():
    # 8 letters are 4 ems: 100 points hold 25 points, and 24 is the next size of the ladder
    setting = fit(Styled("bivalves"), width=100, height=500, measure=typewriter)
    assert (setting.size, [plain(line) for line in setting.lines]) == (24, ["bivalves"])
    assert setting.widths == (96,)  # 8 letters * half an em * 24 points


def test_the_height_bounds_the_size_as_well():
    # two lines are 2.22 ems high: 60 points hold 27, and 24 is the next size of the ladder
    assert fit(Styled("rock pools"), width=70, height=60, measure=typewriter).size == 24


def test_what_does_not_fit_at_the_smallest_size_is_not_set():
    assert fit(Styled("intertidal"), width=59, height=500, measure=typewriter) is None
    assert fit(Styled("intertidal"), width=60, height=500, measure=typewriter).size == 12


@given(text=texts, width=st.integers(50, 300), height=st.integers(12, 200))
def test_the_next_size_up_would_not_fit(text, width, height):
    setting = fit(Styled(text), width=width, height=height, measure=typewriter)
    if setting is None:
        assert words_that_fit(Styled(text), width=width, height=height, measure=typewriter) < len(
            text.split()
        )
        return
    assert max(setting.widths) <= width + 1e-9
    assert setting.height <= height
    larger = [size for size in LADDER if size > setting.size]
    if larger:
        lines = len(setting.lines)
        grown = larger[-1] * ((lines - 1) * 1.22 + 1)
        wider = max(setting.widths) * larger[-1] / setting.size
        assert wider > width or grown > height


def test_the_words_that_would_fit_are_counted():
    # 12 points: 6 a letter, so "abc abc" (42) fits 50 points; one line of 12 points fits 15
    assert words_that_fit(Styled("abc abc abc abc"), width=50, height=15, measure=typewriter) == 2


@pytest.mark.parametrize(
    ("text", "width", "strong", "words"),
    [
        ("bivalves", 20, False, 0),  # 8 letters * half an em * 12 points are 48
        ("abc abc", 42, False, 2),  # 7 letters * half an em * 12 points
        ("abc abc", 44, True, 1),  # in the strong weight they are 50.4
    ],
)
def test_none_or_all_of_the_words_may_fit(text, width, strong, words):
    # one line of 12 points is 12 points high
    room = {"width": width, "height": 12, "measure": typewriter}
    assert words_that_fit(Styled(text, strong), **room) == words


def counted(text, width, lines):
    # so many lines of 12 points with a leading of 1.22 ems, and not one more
    height = 12 * (1.22 * (lines - 1) + 1)
    return words_that_fit(Styled(text), width=width, height=height + 1, measure=typewriter)


def test_words_are_counted_line_by_line():
    # 12 points: 6 a letter, so 50 points hold "abc abc" (42) and not three of them
    assert counted("abc " * 9, 50, 2) == 4
    assert counted("abc\n" * 9, 50, 2) == 2
    assert counted("abc abc abc\nabc abc", 50, 3) == 5
    assert counted("abc\nabc abc bivalves abc", 42, 9) == 3  # eight letters are 48
    assert counted("bivalves\nabc", 42, 9) == 0


@given(text=texts, width=st.integers(48, 300), height=st.integers(12, 200))
def test_the_words_that_are_counted_fit_and_one_more_would_not(text, width, height):
    room = {"width": width, "measure": typewriter}
    words = text.split()
    fitting = words_that_fit(Styled(text), height=height, **room)
    if fitting:
        assert height_at(Styled(" ".join(words[:fitting])), 12, **room) <= height
    if fitting < len(words):
        assert height_at(Styled(" ".join(words[: fitting + 1])), 12, **room) > height


def test_a_text_that_fills_its_box_to_the_point_fits():
    setting = fit(Styled("abc abc"), width=42, height=12, measure=typewriter)
    assert (setting.size, len(setting.lines)) == (12, 1)


def test_a_blank_line_of_the_teachers_has_its_height_and_no_width():
    # "i" is half an em: 30 points hold 60, and 56 is the next size of the ladder
    setting = fit(Styled("i\n\ni"), width=30, height=500, measure=typewriter)
    assert [plain(line) for line in setting.lines] == ["i", "", "i"]
    assert (setting.size, setting.widths) == (56, (28, 0, 28))


def test_a_text_with_a_word_that_is_too_wide_has_no_height():
    room = {"width": 47, "measure": typewriter}
    assert height_at(Styled("bivalves"), 12, **room) is None
    assert height_at(Styled("bivalve"), 12, **room) == 12


def test_a_label_too_long_ends_with_an_ellipsis():
    assert shorten("Samphire", 4, measure=typewriter) == "Samphire"
    assert shorten("Samphire", 3, measure=typewriter) == "Samph…"  # six letters of half an em
    assert shorten("rock pool", 3, measure=typewriter) == "rock…"
    # in the strong weight eight letters are 4.8 ems, and seven with the ellipsis 4.2
    assert shorten("Samphire", 4, measure=typewriter, strong=True) == "Samph…"


@pytest.mark.parametrize(
    ("text", "letters", "cut"),
    [
        ("tides, and the moon", 19, "tides, and the moon"),
        ("tides, and the moon", 13, "tides, and…"),
        ("tides, and the moon", 11, "tides, and…"),
        ("tides, and the moon", 9, "tides…"),
        ("the tides · again", 12, "the tides…"),
        # too little would be left
        ("a saltmarsh week", 9, "a saltma…"),
        ("saltmarshes", 9, "saltmars…"),
    ],
)
def test_a_title_too_long_is_cut_between_words_where_most_of_it_is_left(text, letters, cut):
    assert shorten(text, letters / 2, measure=typewriter, between=True) == cut


@pytest.mark.parametrize("strong", [True, False])
def test_the_strong_weight_is_measured_by_its_own_widths(strong):
    width = 8 * (0.6 if strong else 0.5) * 40
    setting = fit(Styled("bivalves", strong), width=width, height=500, measure=typewriter)
    assert setting.size == 40


def test_no_text_is_larger_than_the_most_that_is_asked_for():
    def size(most):
        return fit(Styled("crab"), width=900, height=900, measure=typewriter, most=most).size

    assert [size(200), size(66), size(65)] == [150, 66, 56]


def lines_at(text, width, height=500):
    setting = fit(Styled(text), width=width, height=height, measure=typewriter, most=40)
    return setting.size, [plain(line) for line in setting.lines]


def test_a_formula_is_set_smaller_rather_than_broken():
    # 9 letters are 4.5 ems: 170 points hold 34 points on one line, 40 only on two
    assert lines_at("2 + 3 = 5", 170) == (34, ["2 + 3 = 5"])


def test_a_long_formula_is_broken_before_its_relation_where_letters_gain_by_half():
    # 25 letters are 12.5 ems: 160 points hold 12 points; 13 letters are 6.5 ems and hold 24
    assert lines_at("5 + 6 + 7 + 9 = 9 + 9 + 9", 160, 60) == (24, ["5 + 6 + 7 + 9", "= 9 + 9 + 9"])


def test_a_number_with_its_unit_is_parted_only_where_nothing_else_fits():
    # "1000 km" is 3.5 ems: 42 points hold 12 points, 40 points only "1000" alone
    assert lines_at("1000 km", 42) == (12, ["1000 km"])
    assert lines_at("1000 km", 40) == (20, ["1000", "km"])
