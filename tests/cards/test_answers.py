"""When two answers are the same answer, and two prompts the same prompt."""

from itertools import combinations

import pytest
from strategies import card

from cards.answers import accepted, answered, as_meant, asked
from cards.style import Span, TextStyle

SAME = [
    "photosynthesis|Photosynthesis|PHOTOSYNTHESIS",
    "Sun|sun|SUN",
    "DNA|dna",
    "no|No|NO",
    "in|In",
    "the Red Sea|The red sea|THE RED SEA",
    "a crab|A crab",
    "is it an ox|Is it an ox",
    "half  past\nnine|half past nine",
    "H2O|h2o",
    "3D|3d",
    # composed and decomposed (Unicode Standard Annex 15)
    "caf\u00e9|cafe\u0301",
]
# symbols and units by the International System of Units (9th brochure) and IUPAC; the last two
# are how genes and the degrees of a scale are written
OTHERS = [
    "Co|CO",
    "mW|MW",
    "5 mW|5 MW",
    "m/s|M/s",
    "kPa|KPA",
    "(Mg)|(mg)",
    "Hf|HF",
    "pH|Ph|PH",
    "g|G",
    "a|A",
    "Aa|aa|AA",
    "allele a|allele A",
]


@pytest.mark.parametrize("texts", SAME)
def test_one_answer_written_differently_is_one(texts):
    assert len({as_meant(text) for text in texts.split("|")}) == 1


@pytest.mark.parametrize("texts", OTHERS)
def test_capitals_tell_symbols_apart(texts):
    for one, other in combinations(texts.split("|"), 2):
        assert as_meant(one) != as_meant(other)


def raised(start, end, style=TextStyle.RAISED):
    return (Span(start, end, style),)


def test_a_raised_figure_makes_another_answer_and_another_prompt():
    power, number = card(1, answer="102", answer_spans=raised(2, 3)), card(2, answer="102")
    assert answered(power) != answered(number)
    low = card(3, answer="102", answer_spans=raised(2, 3, TextStyle.LOWERED))
    assert len({answered(power), answered(number), answered(low)}) == 3
    prompt = card(1)
    assert prompt.prompt == "clue 1"
    squared = card(1, prompt_spans=raised(5, 6))
    assert asked(prompt) != asked(squared)
    assert asked(squared) == asked(card(1, prompt_spans=raised(5, 6)))


def test_bold_letters_make_no_other_answer():
    assert answered(card(1, answer="ebb")) == answered(
        card(2, answer="ebb", answer_spans=raised(0, 1, TextStyle.BOLD))
    )


def test_a_raised_figure_is_the_one_that_has_a_sign_of_its_own():
    assert answered(card(1, answer="10²")) == answered(
        card(2, answer="102", answer_spans=raised(2, 3))
    )
    assert "10²" in accepted(card(1, answer="102", answer_spans=raised(2, 3)))


def test_a_long_text_of_short_words_is_read_in_a_moment():
    # each would be a second if every word looked at all that follow
    for text in ("a " * 16_000, "A! " * 10_000, "!" * 32_000, "!" * 16_000 + "x" + "!" * 16_000):
        assert as_meant(text)
