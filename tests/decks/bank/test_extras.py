"""Extra words are right for no blank, and look as if they could be."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from strategies import card

from cards.item import Kind, folded
from decks.bank import Pool, make_guide

WORDS = st.sampled_from(["ebb", "Ebb", "flood", "spring", "neap", "slack", "rip", "surge"])


def extras(blanks, pool, count=2, seed="shore"):
    (part,) = make_guide("Otter", blanks, Pool(pool), extra_words=count, seed=seed).parts
    return part.extra_words


@st.composite
def pools(draw):
    rows = draw(st.lists(st.tuples(WORDS, WORDS, WORDS), min_size=1, max_size=9))
    return [
        card(number, answer=answer, also_right=(also,), topic=topic)
        for number, (answer, also, topic) in enumerate(rows)
    ]


@given(pools(), st.integers(1, 4))
def test_no_extra_word_is_right_for_a_blank(pool, count):
    for part in make_guide(None, pool[:3], Pool(pool), extra_words=count, seed="x").parts:
        right = {folded(t) for blank in part.blanks for t in (blank.answer, *blank.also_right)}
        assert not right & set(map(folded, part.extra_words))


def test_a_word_for_the_same_thing_is_no_extra_word():
    blank = card(0, answer="ebb")
    synonym = card(1, answer="falling tide", also_right=("Ebb",))
    assert extras([blank], [blank, synonym]) == ()


def test_the_answer_of_another_item_with_the_same_prompt_is_no_extra_word():
    blank = card(0, answer="ebb")
    twin = card(0, answer="low water")
    assert extras([blank], [blank, twin]) == ()


def test_fewer_words_are_taken_where_the_unit_has_no_more():
    items = [card(0), card(1), card(2, answer="WORD 1")]
    assert [word.casefold() for word in extras(items[:1], items, count=5)] == ["word 1"]
    assert extras(items[:2], items, count=5) == ()


def test_none_are_taken_where_none_are_asked_for():
    assert extras([card(0)], [card(n) for n in range(9)], count=0) == ()


def test_the_kind_of_most_blanks_comes_first_then_the_form_then_the_topic():
    blanks = [card(n, topic="Tides") for n in range(3)] + [card(3, kind=Kind.FACT)]
    pool = [
        card(10, answer="fit one", topic="Tides"),
        card(11, answer="fit two", topic="Birds"),
        card(12, answer="a sentence of many words", topic="Tides"),
        card(13, answer="a fact", topic="Tides", kind=Kind.FACT),
    ]
    blanks = [*blanks, card(4, answer="rock pool")]
    for seed in map(str, range(10)):
        assert extras(blanks, pool[::-1], 1, seed) == ("fit one",)
        assert extras(blanks, pool[1:], 1, seed) == ("fit two",)
        assert extras(blanks, pool[2:], 1, seed) == ("a sentence of many words",)
        assert extras(blanks, pool[3:], 1, seed) == ("a fact",)


def test_a_number_is_not_mixed_among_words():
    blanks = [card(n, answer=word) for n, word in enumerate(["crab", "whelk", "goby"])]
    pool = [card(10, answer="1850"), card(11, answer="limpet", topic="Shells")]
    assert extras(blanks, pool, 1) == ("limpet",)


@pytest.mark.parametrize(
    ("answers", "like", "unlike"),
    [
        (["Heron", "Otter"], "Curlew", "gannet"),
        (["heron", "otter"], "gannet", "Curlew"),
        (["10 m", "25 m"], "40 m", "a km"),
        # two letters shorter than the shortest answer, or longer than the longest, and no more
        (["crab"], "limpet", "lugworm"),
        (["limpet"], "crab", "eel"),
        (["crab", "sandhopper"], "bladderwrack", "oystercatcher"),
        (["crab", "sandhopper"], "barnacle", "sea slug"),
        (["crab", "a small crab"], "sea slug", "one of a few"),
        (["sea slug", "rock pool"], "mud flat", "barnacle"),
    ],
)
def test_a_word_of_the_form_of_the_answers_comes_first(answers, like, unlike):
    blanks = [card(n, answer=answer) for n, answer in enumerate(answers)]
    pool = [card(10, answer=unlike), card(11, answer=like)]
    for seed in map(str, range(10)):
        assert extras(blanks, pool, 1, seed) == (like,)


def test_another_seed_takes_other_words():
    pool = [card(number) for number in range(40)]
    assert len({extras(pool[:1], pool, 2, str(seed)) for seed in range(10)}) > 5


def test_line_breaks_in_an_answer_are_spaces_in_the_bank():
    blank = card(0, answer="rock\n pool")
    (part,) = make_guide(
        None, [blank], Pool([card(1, answer="spring\r\ntide")]), extra_words=1, seed="x"
    ).parts
    assert part.bank == ("rock pool", "spring tide")
    assert part.extra_words == ("spring tide",)
