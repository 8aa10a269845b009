"""Numbers are compared by their worth, so that what is said of a bank of numbers is true."""

import pytest
from msgspec.structs import replace
from strategies import card

from cards.style import Span, TextStyle
from decks.bank import Pool, has_one_word_each, is_sound, make_guide, swappable
from decks.bank.telling import about_solutions


def asking(prompt, answer, **more):
    return replace(card(len(prompt), answer=answer, **more), prompt=prompt)


def parts_of(items, pool=(), extra_words=0, most=10):
    return make_guide(None, items, Pool(pool), extra_words=extra_words, seed="s", most=most).parts


@pytest.mark.parametrize(
    ("answer", "other"),
    [
        ("0.6", "3/5"),
        ("0,6", "3/5"),
        ("60%", "0.6"),
        ("1 1/2", "1.5"),
        ("½", "0.5"),
        ("−0.5", "-1/2"),
        ("1,200", "1200"),
        ("12.0", "12"),
        ("10²", "100"),
        ("= 7", "7."),
    ],
)
def test_a_number_of_the_worth_of_an_answer_is_no_extra_word(answer, other):
    for one, two in ((answer, other), (other, answer)):
        (part,) = parts_of([card(0, answer=one)], [card(9, answer=two)], extra_words=1)
        assert part.extra_words == ()
        (part,) = parts_of(
            [card(0, answer="many", also_right=(one,))], [card(9, answer=two)], extra_words=1
        )
        assert part.extra_words == ()


@pytest.mark.parametrize(
    ("answer", "other"),
    [
        ("0.6", "5/3"),
        ("1,200", "1.2"),
        ("3 m", "3"),
        ("05", "5"),
        ("3:4", "3/4"),
        ("2/0", "0"),
        ("-5", "5"),
        ("chapter 5", "5"),
    ],
)
def test_a_number_of_another_worth_may_be_one(answer, other):
    (part,) = parts_of([card(0, answer=answer)], [card(9, answer=other)], extra_words=1)
    assert part.extra_words == (other,)


def test_a_raised_figure_is_read_as_a_power():
    power = card(1, answer="102", answer_spans=(Span(2, 3, TextStyle.RAISED),))
    (part,) = parts_of([card(0, answer="100")], [power, card(2, answer="102")], extra_words=2)
    assert part.extra_words == ("102",)


SUMS = ["0.5 + 0.25", "What is half of 1.5?", "1/2 of 1 1/2", "□ + 0.25 = 1", "0.25 × 3 = ___"]


@pytest.mark.parametrize("prompt", SUMS)
def test_a_sum_accepts_its_result_however_it_is_written(prompt):
    items = [asking(prompt, "3/4"), card(900, answer="0.75"), card(901, answer="5/8")]
    (part,) = parts_of(items)
    assert is_sound(part)  # 0.75 is needed by the other clue
    assert not has_one_word_each(part)
    number = part.blanks.index(items[0]) + 1
    assert about_solutions(part).startswith(f"Blank {number} has more than one right word")


def test_two_sums_of_the_same_result_can_be_swapped():
    items = [asking("0.5 + 0.25", "3/4"), asking("0.25 × 3", "0.75"), asking("1 + 1", "2")]
    (part,) = parts_of(items)
    (swap,) = swappable(part)
    assert set(swap.items) == set(items[:2])
    assert "accept their answers either way round" in about_solutions(part)


def test_they_stand_in_different_parts_where_there_are_some():
    words = [asking(f"{n} + {n}", str(2 * n)) for n in range(10, 20)]
    items = [asking("0.5 + 0.25", "3/4"), asking("0.25 × 3", "0.75"), *words]
    parts = parts_of(items)
    assert len(parts) == 2
    assert all(len(set(items[:2]) & set(part.blanks)) == 1 for part in parts)
    assert all(map(has_one_word_each, parts))


@pytest.mark.parametrize(
    "prompt",
    [
        "Write 0.75 as a fraction",
        "0.75 as a fraction",
        "Simplify 6/8",
        "The share of the shore that is rock",
    ],
)
def test_where_a_number_is_to_be_written_in_one_way_the_others_are_not_right(prompt):
    items = [asking(prompt, "3/4"), asking("Write 3/4 as a decimal", "0.75")]
    (part,) = parts_of(items)
    assert has_one_word_each(part)
    assert swappable(part) == []
