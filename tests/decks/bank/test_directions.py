"""The directions are true of the bank they stand over."""

import pytest
from strategies import card

from decks.bank import directions, make_guide


def said(answers, extra=(), **more):
    blanks = [card(number, answer=answer) for number, answer in enumerate(answers)]
    pool = [card(100 + number, answer=word) for number, word in enumerate(extra)]
    guide = make_guide(None, blanks, pool, extra_words=len(extra), seed="shore", **more)
    return directions(guide.parts[0])


EACH = "Write one word from the bank on each line."


@pytest.mark.parametrize(
    ("extra", "use"),
    [
        ([], "Each word is used once."),
        (["eel"], "Each is used once at most; one is left over."),
        (["eel", "goby"], "Each is used once at most; two are left over."),
        (
            [f"fish {'i' * n}" for n in range(11)],
            "Each is used once at most; 11 are left over.",
        ),
    ],
)
def test_how_many_words_are_left_over(extra, use):
    assert said(["crab", "whelk"], extra) == f"{EACH} {use}"


def test_a_word_that_two_lines_need_may_be_used_again():
    assert said(["crab", "Crab", "whelk"]) == f"{EACH} A word may be used more than once."
    assert said(["crab", "Crab"], ["eel"]) == (
        f"{EACH} A word may be used more than once; one is left over."
    )


def test_one_line_needs_one_word():
    assert said(["crab"]) == "Write one word from the bank on the line."
    assert said(["crab"], ["eel", "goby"]) == (
        "Write one word from the bank on the line. Two are left over."
    )


@pytest.mark.parametrize("answer", ["the sea going out again", "144", "1.5 m", "−5"])
def test_sentences_and_numbers_are_called_answers(answer):
    assert said([answer, "crab"]) == (
        "Write one answer from the bank on each line. Each answer is used once."
    )


def test_an_answer_may_be_used_again():
    assert said(["144", "144", "12"]).endswith("An answer may be used more than once.")
