"""Arithmetic: what is wrong is found, what is right or not understood is left."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cards.checking.sums import wrong_sum
from cards.content import Content
from cards.item import Item, Kind, Level
from cards.place import Place
from cards.style import Span, TextStyle


def remarks(prompt, answer, also_right=(), **more):
    places = {"prompt_place": Place("Facts", 2, 1), "answer_place": Place("Facts", 2, 2)}
    item = Item(
        prompt, answer, Kind.FACT, Level.EASY, "", **places, also_right=tuple(also_right), **more
    )
    return list(wrong_sum(Content("Sums", (item,), (), (), (), "")))


# worked by hand
WRONG = [
    *[("12 × 15", "170"), ("12 x 15 =", "170"), ("12x15", "170"), ("12·15", "170")],
    *[("12*15 = ?", "170"), ("What is 7 + 8?", "16"), ("3/4 + 1/8", "5/8"), ("25% of 80", "25")],
    *[("2^5", "30"), ("5²", "10"), ("3³", "9"), ("√49", "8"), ("∛27", "9"), ("half of 30", "16")],
    *[("1,5 + 1,5", "4"), ("1.000 + 500", "1.600"), ("10 000 + 5", "10 006")],
    *[("1 500 × 2", "3,100"), ("17 ÷ 5", "3 r 3"), ("17 ÷ 5 =", "3"), ("0.1 × 0.2", "0.2")],
    *[("144 : 12 =", "11"), ("144/12", "11"), ("20 – 7", "14"), ("20 − 7", "12")],
    *[("7 + __ = 15", "9"), ("? × 4 = 20", "6"), ("_____ = 6 × 9", "56"), ("10 - 4 = ____", "7")],
    *[("Calculate 6 × 7.", "43"), ("Work out: 12 − 5", "6"), ("½ + ¼", "2/4"), ("2½ + 1", "4")],
    *[("(3 + 4) × 2", "11"), ("2 + 3 × 4", "20"), ("−3 + 5", "8"), ("-3 × -4", "-12")],
    *[("10 ÷ 4 rounded to 1 decimal place", "2.4"), ("Round 3.47 to 1 decimal place", "3.4")],
    *[("9 squared", "18"), ("12 times 12", "146"), ("double 14", "24"), ("20% of 50", "20%")],
    *[("product of 6 and 7", "43"), ("1/3 + 1/3", "0.66"), ("5 × 0", "5"), ("3/4 =", "0.7")],
    *[("¿Cuánto es 7 × 8?", "54"), ("Wie viel ist 7 · 8?", "54"), ("50% of 1/2", "1/2")],
]
RIGHT = [
    *[("2 + 3!", "8"), ("What is 4 × 3!?", "24"), ("5! =", "120"), ("(1 + 2)!", "6")],
    *[("How much is 10:15 - 9:45?", "30"), ("What is 9:45 + 0:30?", "10:15")],
    *[("12 × 15", "180"), ("10 ÷ 4", "2.5"), ("10 ÷ 3", "3.33"), ("2/3 =", "0.67")],
    *[("17 ÷ 5", "3 r 2"), ("17 ÷ 5", "3 2/5"), ("17 ÷ 5", "3 remainder 2"), ("25% of 80", "20")],
    *[("1/4 × 100", "25%"), ("1/4 =", "25%"), ("1.500 + 500", "2.000"), ("1,500 + 500", "2,000")],
    *[("1 500 + 500", "2000"), ("½ + ¼", "¾"), ("10 ÷ 4 to the nearest whole number", "3")],
    *[("10 ÷ 4 (1 dp)", "2.5"), ("4 × 4", "2^4"), ("18 = 2 × 3 × __", "3"), ("3 + ? = 7", "4")],
    *[("What is 3/4 of 12?", "9"), ("7 · 8", "= 56"), ("0,5 × 3", "1,5"), ("1/2", "2/4")],
]
NOT_UNDERSTOOD = [
    *[
        ("1914–1918", "4"),
        ("2026-11-25", "5"),
        ("25/11/2026 + 3", "28"),
        ("3/4", "4"),
        ("9/11", "12"),
        ("05 + 1", "7"),
        ("24/7", "3"),
    ],
    *[("2x - 3", "5"), ("x + 5 = 12", "9"), ("12:30", "42"), ("60 =", "1"), ("7", "8")],
    *[("about 12 × 15", "200"), ("Estimate 12 × 15", "200"), ("5 kg + 3 kg", "9")],
    *[("3 × 4 cm", "13"), ("2 + 2", "four"), ("√2", "1.41"), ("80 + 10%", "88"), ("-3^2", "9")],
    *[("H2 + O2", "5"), ("1_ + 5 = 20", "5"), ("3 + 4 = 7", "7"), ("10–20", "15")],
    *[("2 : 3", "4 : 6"), ("6:8", "3:4"), ("12 ÷ 0", "5"), ("5!", "121"), ("|−5|", "6")],
    *[("How many sides has a 3-4-5 triangle?", "3"), ("36 ÷ 6(2)", "5"), ("99 + 1", "1e2")],
    *[("9^9^9^9", "3"), ("9^65", "3"), ("(" * 60 + "1 + 1", "3"), ("1 + " * 60 + "1", "3")],
    *[("__import__('os')", "1"), ("3 + 4 if 1 else 2", "5"), ("=1+1", "3=4")],
]


@pytest.mark.parametrize(("prompt", "answer"), WRONG)
def test_a_wrong_answer_is_found_in_its_cell(prompt, answer) -> None:
    [remark] = remarks(prompt, answer)
    assert str(remark.place) == "Facts B2"
    assert remark.found == answer


@pytest.mark.parametrize(("prompt", "answer"), RIGHT)
def test_a_right_answer_is_left(prompt, answer) -> None:
    assert remarks(prompt, answer) == []


@pytest.mark.parametrize(("prompt", "answer"), NOT_UNDERSTOOD)
def test_what_is_not_plain_arithmetic_is_left(prompt, answer) -> None:
    assert remarks(prompt, answer) == []


def test_an_answer_is_left_when_the_right_one_stands_under_also_right() -> None:
    assert remarks("10 ÷ 4", "2", also_right=["2.5"]) == []


def test_a_raised_figure_is_a_power_and_a_lowered_one_no_arithmetic() -> None:
    raised = (Span(5, 6, TextStyle.RAISED),)
    assert remarks("3 × 52", "75", prompt_spans=raised) == []
    assert len(remarks("3 × 52", "156", prompt_spans=raised)) == 1
    assert remarks("3 × 52", "75", prompt_spans=(Span(5, 6, TextStyle.LOWERED),)) == []


def test_the_message_says_what_it_comes_to() -> None:
    [remark] = remarks("1/3 + 1/2", "2/5")
    assert remark.wrong == "This comes to 5/6, not “2/5”."


OPERATIONS = {"×": int.__mul__, "+": int.__add__, "−": int.__sub__}
NUMBERS = st.integers(0, 9999)


@given(NUMBERS, st.sampled_from(sorted(OPERATIONS)), NUMBERS, st.integers(1, 50), st.booleans())
def test_every_sum_is_right_by_its_value_and_wrong_beside_it(a, sign, b, off, spaced) -> None:
    space = " " if spaced else ""
    prompt = f"What is {a}{space}{sign}{space}{b}?"
    value = OPERATIONS[sign](a, b)
    assert remarks(prompt, str(value)) == []
    assert len(remarks(prompt, str(value + off))) == 1


@given(
    st.text("0123456789+-−×÷/^√()%.,:=?_ x½²\u00a0", max_size=40),
    st.text("0123456789/.,%r ", max_size=9),
)
def test_no_text_of_signs_is_too_much(prompt, answer) -> None:
    assert len(remarks(prompt, answer)) <= 1


def test_the_message_says_of_what_is_to_be_rounded_that_it_does_not_come_to_the_answer() -> None:
    [remark] = remarks("Round 3.46 to one decimal place.", "3.4")
    assert remark.wrong == "This comes to 3.46, and that does not round to “3.4”."
    assert remarks("Round 3.46 to one decimal place.", "3.5") == []
