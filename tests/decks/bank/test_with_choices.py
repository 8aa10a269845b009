"""A blank that is printed with its choices takes a letter: it has no part in the bank."""

from fractions import Fraction

import pytest
from strategies import card

from cards.item import Kind
from decks.bank import Pool, directions, has_one_word_each, is_sound, make_guide
from decks.bank.telling import about_guessing, about_last_blank, about_solutions
from decks.recipe import Support

LETTER = "Where choices stand below a question, write the letter of the right one."
QUESTIONS = [
    card(1, answer="horse", wrong=("cod", "newt", "eel"), kind=Kind.QUESTION),
    card(2, answer="10", wrong=("8", "6"), kind=Kind.QUESTION),
]
WORDS = [card(n, answer=word) for n, word in enumerate(["crab", "limpet", "wrack"], 10)]


def part_of(items, pool=(), extra_words=0, **more):
    guide = make_guide(
        None, items, Pool(pool), extra_words=extra_words, seed="s", **{"choices": True} | more
    )
    (part,) = guide.parts
    return part


def test_its_answer_is_not_in_the_bank():
    part = part_of([*WORDS, *QUESTIONS])
    assert part.bank == ("crab", "limpet", "wrack")
    assert set(part.blanks) == {*WORDS, *QUESTIONS}
    assert set(part.worded) == set(WORDS)
    assert is_sound(part)
    assert has_one_word_each(part)


def test_where_choices_are_not_printed_it_is():
    part = part_of([*WORDS, *QUESTIONS], choices=False)
    assert part.bank == ("10", "crab", "horse", "limpet", "wrack")
    assert part.worded == part.blanks


def test_a_wrong_answer_that_says_the_same_is_no_choice():
    item = card(1, answer="horse", wrong=("Horse",))
    assert part_of([item]).bank == ("horse",)


@pytest.mark.parametrize("second", [False, True])
def test_nor_is_it_an_extra_word_in_any_part_of_the_guide(second):
    items = [*WORDS, *(card(n, answer=f"horse {n}", wrong=("cod",)) for n in range(20, 30))]
    pool = [*items, card(50, answer="tern")]
    guide = make_guide(
        None, items, Pool(pool), extra_words=9, seed="s", most=4, second=second, choices=True
    )
    for part in guide.second if second else guide.parts:
        assert set(part.extra_words) <= {"tern", "crab", "limpet", "wrack"}
        assert bool(part.extra_words) == bool(part.worded)


def test_without_another_blank_there_is_no_bank():
    part = part_of(QUESTIONS, [*WORDS, *QUESTIONS], extra_words=2)
    assert part.bank == part.extra_words == ()
    for support in Support:
        assert directions(part, support) == LETTER


@pytest.mark.parametrize(
    ("support", "says"),
    [
        (Support.BANK, ["from the bank", "Each is used once at most; one is left over."]),
        (Support.HINTS, ["The hints below the clues"]),
        (Support.NONE, ["Write one word"]),
    ],
)
def test_the_directions_say_to_write_the_letter(support, says):
    part = part_of([*WORDS, *QUESTIONS], [card(30, answer="tern")], extra_words=1)
    told = directions(part, support)
    assert all(text in told for text in says)
    assert told.endswith(f" {LETTER}")
    assert LETTER not in directions(part_of(WORDS), support)


def test_how_many_words_are_left_over_is_told_of_the_bank_alone():
    part = part_of([WORDS[0], *QUESTIONS], [card(30, answer="tern")], extra_words=1)
    assert " One is left over. " in directions(part)
    assert "The hint below the clue gives" in directions(part, Support.HINTS)
    assert "once" not in directions(part, Support.NONE, gathered=True)


def test_guessing_takes_a_word_from_the_bank_or_one_of_the_choices():
    part = part_of([*WORDS, *QUESTIONS], [card(30, answer="tern")], extra_words=1)
    # 3 blanks of 4 words: 3/4; then 1/4 and 1/3
    assert part.guess_mean == pytest.approx(3 / 4 + 1 / 4 + 1 / 3)
    # 4!/1! = 24 ways to fill three blanks with four words, 4 · 3 ways to choose two letters
    assert part.guess_all == pytest.approx(float(Fraction(1, 24 * 4 * 3)))
    assert about_guessing(part) == (
        "Guessing alone earns 1.3 of 5 on average; all right by luck: 1 time in 288."
    )
    assert about_guessing(part_of(QUESTIONS)) == (
        "Guessing alone earns 0.6 of 2 on average; all right by luck: 1 time in 12."
    )


def test_a_word_that_two_blanks_need_is_guessed_each_for_itself():
    part = part_of([WORDS[0], card(20, answer="crab"), WORDS[1], QUESTIONS[1]])
    assert part.reusable
    assert part.guess_mean == pytest.approx(3 / 2 + 1 / 3)
    assert part.guess_all == pytest.approx(1 / 8 / 3)


def test_the_key_tells_of_the_blanks_that_take_a_word():
    part = part_of([*WORDS, *QUESTIONS])
    assert about_solutions(part) == "Each clue without choices has one fitting word."
    assert about_last_blank(part, asked=0).startswith(
        "A student who knows 2 of the 3 without choices gets the last for nothing"
    )
    for alone in (part_of(QUESTIONS), part_of([WORDS[0], *QUESTIONS])):
        assert about_solutions(alone) == about_last_blank(alone, asked=2) == ""


def test_blanks_are_named_by_their_numbers_on_the_page():
    swapped = [
        card(20, answer="ebb", also_right=("falling tide",), kind=Kind.FACT),
        card(21, answer="falling tide", also_right=("ebb",), kind=Kind.FACT),
    ]
    part = part_of([*QUESTIONS, *swapped])
    # questions stand before facts
    assert part.blanks[2:] == part.worded
    assert about_solutions(part) == "Blanks 3 and 4: accept their answers either way round."
    one_way = [swapped[0], card(21, answer="falling tide", kind=Kind.FACT)]
    part = part_of([*QUESTIONS, *one_way])
    number = part.blanks.index(swapped[0]) + 1
    assert about_solutions(part).startswith(f"Blank {number} has more than one right word")
