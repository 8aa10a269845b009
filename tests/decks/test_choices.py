"""A question with its choices."""

import pytest
from support.items import item

from cards.item import Kind
from cards.place import Place
from cards.style import Span, TextStyle
from decks.choices import about_hidden, choices_of, lettered
from decks.press.cards.arranging import with_choices
from decks.recipe import Fractions


@pytest.mark.parametrize(
    ("answer", "wrong", "order"),
    [
        # in an order of their own, numbers by size (Haladyna, Downing & Rodriguez 2002)
        ("six", ("one", "twelve"), ("one", "six", "twelve")),
        ("9", ("12", "100"), ("9", "12", "100")),
        ("−5 °C", ("3 °C", "−10 °C"), ("−10 °C", "−5 °C", "3 °C")),
        ("1,5 m", ("1,25 m", "2 m"), ("1,25 m", "1,5 m", "2 m")),
        ("1,500", ("250", "12,000", "900"), ("250", "900", "1,500", "12,000")),
        ("12 000", ("9 500", "100"), ("100", "9 500", "12 000")),
        ("0,500", ("0,25", "1,500,000"), ("0,25", "0,500", "1,500,000")),
        ("5/6", ("7/9", "1 1/12", "−3/4"), ("−3/4", "7/9", "5/6", "1 1/12")),
        ("Zebra", ("ant", "Bee"), ("ant", "Bee", "Zebra")),
        ("all of the above", ("cod", "eel"), ("cod", "eel", "all of the above")),
        ("eel", ("None of these", "ray"), ("eel", "ray", "None of these")),
        ("eel", ("Eel", "cod"), ("cod", "eel")),
        ("Co", ("co", "CO"), ("CO", "Co", "co")),
        ("eel", (), ()),
        ("eel", ("EEL",), ()),
    ],
)
def test_their_order_does_not_tell_which_is_right(answer, wrong, order):
    assert choices_of(item("Which?", answer, wrong=wrong)) == order


def test_a_raised_figure_makes_another_choice():
    power = item(
        "Which is a hundred?",
        "102",
        wrong=("10³", "102"),
        answer_spans=(Span(2, 3, TextStyle.RAISED),),
    )
    assert choices_of(power) == ("10²", "10³", "102")
    assert with_choices(power, back=False).text.endswith("A.\u00a010²\nB.\u00a010³\nC.\u00a0102")
    back = with_choices(power, back=True)
    assert (back.text, back.spans) == ("A.\u00a0102", (Span(5, 6, TextStyle.RAISED),))


def test_fractions_are_built_in_the_question_its_choices_and_the_answer():
    half = item("Which is half of 3/2?", "3/4", wrong=("1 1/4", "2/3"))
    front, back = (
        with_choices(half, back=back, fractions=Fractions.BUILT).text for back in (False, True)
    )
    assert front == "Which is half of 3⁄2?\nA.\u00a02⁄3\nB.\u00a03⁄4\nC.\u00a01\u00a01⁄4"
    assert back == "B.\u00a03⁄4"


def test_each_has_its_letter():
    assert lettered(("cod", "eel")) == "A.\u00a0cod\nB.\u00a0eel"


@pytest.mark.parametrize(
    "prompt",
    [
        "Which of these lives on land?",
        "Which one of the following is a bird?",
        "The following live in the sea, but for …",
        "Pick from the choices below: it lays eggs.",
    ],
)
def test_a_question_that_points_at_choices_is_told_of(prompt):
    asked = item(
        prompt, "horse", wrong=("cod",), kind=Kind.QUESTION, wrong_places=(Place("Q", 2, 3),)
    )
    (finding,) = about_hidden([asked])
    assert (finding.code, finding.severity.value) == ("choices-not-printed", "warning")
    assert "Choices on the Deck sheet" in finding.mend


def test_choices_in_columns_of_their_own_are_told_of_once():
    places = (Place("Q", 2, 3), Place("Q", 2, 4))
    asked = [item(f"Which is {n}?", "x", wrong=("y", "z"), wrong_places=places) for n in range(3)]
    (finding,) = about_hidden(asked)
    assert (finding.severity.value, str(finding.place)) == ("note", "Q C2")


def test_wrong_answers_in_one_cell_are_for_checking_and_need_no_word():
    asked = item("Which?", "x", wrong=("y", "z"), wrong_places=(Place("Q", 2, 3),) * 2)
    assert list(about_hidden([asked])) == []
