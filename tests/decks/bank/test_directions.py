"""The directions are true of the bank they stand over."""

import pytest
from strategies import card

from decks.bank import Pool, directions, make_guide
from decks.recipe import Support


def said(answers, extra=(), **more):
    blanks = [card(number, answer=answer) for number, answer in enumerate(answers)]
    pool = [card(100 + number, answer=word) for number, word in enumerate(extra)]
    guide = make_guide(None, blanks, Pool(pool), extra_words=len(extra), seed="shore", **more)
    return directions(guide.parts[0])


EACH = "Write one word from the bank for each clue."


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


def test_a_word_that_two_clues_need_may_be_used_again():
    assert said(["crab", "Crab", "whelk"]) == f"{EACH} A word may be used more than once."
    assert said(["crab", "Crab"], ["eel"]) == (
        f"{EACH} A word may be used more than once; one is left over."
    )


def test_one_clue_needs_one_word():
    assert said(["crab"]) == "Write one word from the bank for the clue."
    assert said(["crab"], ["eel", "goby"]) == (
        "Write one word from the bank for the clue. Two are left over."
    )


@pytest.mark.parametrize("answer", ["the sea going out again", "144", "1.5 m", "−5"])
def test_sentences_and_numbers_are_called_answers(answer):
    assert said([answer, "crab"]) == (
        "Write one answer from the bank for each clue. Each answer is used once."
    )


def test_a_name_of_up_to_three_words_is_called_a_word():
    assert said(["low spring tide", "crab"]).startswith("Write one word from")
    assert said(["a low spring tide", "crab"]).startswith("Write one answer from")


def test_an_answer_may_be_used_again():
    assert said(["144", "144", "12"]).endswith("An answer may be used more than once.")


def part_of(*answers, extra=()):
    blanks = [card(number, answer=answer) for number, answer in enumerate(answers)]
    pool = [card(100 + number, answer=word) for number, word in enumerate(extra)]
    return make_guide(None, blanks, Pool(pool), extra_words=len(extra), seed="shore").parts[0]


HINTS = (
    "The hints below the clues give first letters; a dash stands for any other letter or figure."
)


@pytest.mark.parametrize(
    ("answers", "support", "told"),
    [
        (("crab", "eel"), Support.NONE, "Write one word for each clue."),
        (("crab",), Support.NONE, "Write one word for the clue."),
        (("144", "12"), Support.NONE, "Write one answer for each clue."),
        (("crab", "eel"), Support.HINTS, f"Write one word for each clue. {HINTS}"),
        (
            ("crab",),
            Support.HINTS,
            (
                "Write one word for the clue. The hint below the clue gives first letters; a dash "
                "stands for any other letter or figure."
            ),
        ),
    ],
)
def test_without_a_bank_no_bank_is_spoken_of(answers, support, told):
    assert directions(part_of(*answers), support) == told


GATHERED = "Your team’s word cards are the word bank. Write one word for each clue."


@pytest.mark.parametrize(
    ("answers", "support", "told"),
    [
        (("crab", "eel"), Support.NONE, f"{GATHERED} Each card is used once at most."),
        (("crab",), Support.NONE, GATHERED.replace("each", "the")),
        (("crab", "Crab"), Support.NONE, f"{GATHERED} A word may be used more than once."),
        (("crab", "eel"), Support.HINTS, f"{GATHERED} Each card is used once at most. {HINTS}"),
        (
            ("crab", "eel"),
            Support.BANK,
            (
                "The words are on your team’s cards and in the bank. Write one word from the bank "
                "for each clue. Each word is used once."
            ),
        ),
    ],
)
def test_gathered_cards_are_the_bank_or_go_with_it(answers, support, told):
    assert directions(part_of(*answers), support, gathered=True) == told
