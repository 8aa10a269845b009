"""Hints tell how an answer begins and how long it is, and never the answer."""

import unicodedata

import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.bank import hint_of
from decks.bank.letters import letters_of


def hint(answer):
    return " ".join(hint_of(answer).replace("\u00a0", "").split())


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        ("limpet", "l_____"),
        ("rock pool", "r___ p___"),
        ("Arctic tern", "A_____ t___"),
        ("sea-lavender", "s__-________"),
        ("heron’s nest", "h____’_ n___"),
        ("“ebb”", "“e__”"),
        ("»ebb«", "»e__«"),
        ("(ebb) tide", "(e__) t___"),
        ("l’épicière", "_’é_______"),
        ("l'ail (m.)", "_'a__ (_.)"),
        ("un coup d’œil", "u_ c___ _’œ__"),
        ("(l’eau)", "(_’e__)"),
        ("L’Été", "_’É__"),
        ("aujourd’hui", "a______’___"),
        ("o’clock", "o’_____"),
        ("m’s", "m’_"),
        ("'ebb' \"tide\"", "'e__' \"t___\""),
        ("rock\npool", "r___ p___"),
    ],
)
def test_every_word_begins_with_its_first_letter(answer, told):
    assert hint(answer) == told


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        ("144", "___"),
        ("100,000", "___,___"),
        ("−5", "__"),
        ("-5", "__"),
        ("1.5 m", "_._ _"),
        ("10 %", "__ _"),
        ("½", "_"),
        ("3D", "__"),
        ("A", "_"),
        ("a tide", "_ t___"),
        ("?", "_"),
        ("H2O", "H__"),
    ],
)
def test_figures_signs_and_words_of_one_letter_are_not_given(answer, told):
    assert hint(answer) == told


@pytest.mark.parametrize(
    ("answer", "told"),
    [
        # an accent in two code points; a ligature is the letters that it joins
        ("e\u0301tang", "é____"),
        ("ﬁn", "f__"),
        # Hebrew with points: lamed, vet, he; a presentation form is its letter
        ("לַבָה", "לַ__"),
        ("\ufb2bה", "ש\u05c2_"),
        # Arabic with vowel signs: sin, mim, kaf, teh marbuta; lam-alef is two letters
        ("سَمَكَة", "سَ___"),
        ("لا", "ل_"),
        ("ســمك", "س__"),
        # Devanagari: kṣe-tra, vi-dyā-rthī, na-ma-ste, as they are spelt out
        ("क्षेत्र", "क्षे_"),
        ("विद्यार्थी", "वि__"),
        ("नमस्ते", "न__"),
    ],
)
def test_letters_are_counted_as_a_person_counts_them(answer, told):
    assert hint(answer) == unicodedata.normalize("NFC", told)


def test_it_shows_where_a_word_ends():
    within, between = hint_of("ab c").split(" ", 1)[0].strip("\u00a0"), hint_of("ab c")
    assert within == "a\u00a0_"
    assert between == "a\u00a0_\u00a0\u00a0 _"


def test_a_line_is_broken_between_words_alone():
    assert len(hint_of("a long answer").split(" ")) == 3


@given(st.text(min_size=1).filter(str.strip))
def test_no_hint_is_the_answer_nor_holds_a_figure(answer):
    told = hint_of(answer)
    assert "_" in told
    assert not any(sign.isnumeric() for sign in told)
    for word, told_word in zip(answer.split(), hint(answer).split(), strict=True):
        letters = [sign for sign in told_word if sign.isalpha()]
        assert len(letters) <= max(map(len, letters_of(word)))
        assert "_" in told_word


@given(st.from_regex(r"[a-z]{2,12}( [a-z]{2,12}){0,3}", fullmatch=True))
def test_there_is_a_sign_for_every_letter(answer):
    assert [len(word) for word in hint(answer).split()] == [len(word) for word in answer.split()]
    assert [word[0] for word in hint(answer).split()] == [word[0] for word in answer.split()]
