"""The second version of a guide: the same blanks in the same order, and a harder bank."""

from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import card, decks

from cards.item import Kind, folded
from decks.bank import Pool, has_one_word_each, is_sound, make_guide
from decks.bank.telling import about_cards


def both(items, pool, **choices):
    return make_guide(
        "Otter", items, Pool(pool), **{"extra_words": 2, "seed": "shore", "second": True} | choices
    )


@settings(deadline=None)
@given(decks(), st.integers(0, 6), st.integers(1, 10))
def test_all_versions_have_the_same_blanks_in_the_same_order(deck, extra_words, most):
    items, _teams = deck
    guide = both(items[::2], items, extra_words=extra_words, most=most)
    alone = both(items[::2], items, extra_words=0, most=most, second=False)
    if guide.second:
        assert [part.blanks for part in guide.second] == [part.blanks for part in guide.parts]
        assert [part.bank for part in guide.second] != [part.bank for part in guide.parts]
    assert [part.blanks for part in alone.parts] == [part.blanks for part in guide.parts]
    assert alone.second == ()


WORDS = st.sampled_from(["ebb", "Ebb", "flood", "spring", "neap", "slack", "rip", "surge"])


@st.composite
def pools(draw):
    rows = draw(st.lists(st.tuples(WORDS, WORDS), min_size=1, max_size=9))
    return [card(n, answer=word, also_right=(also,)) for n, (word, also) in enumerate(rows)]


@given(pools())
def test_the_second_version_has_a_solution_as_often_as_the_first(pool):
    guide = both(pool[:4], pool)
    for first, second in zip(guide.parts, guide.second or guide.parts, strict=True):
        right = {folded(t) for item in first.blanks for t in (item.answer, *item.also_right)}
        assert not right & set(map(folded, second.extra_words))
        assert is_sound(first) == is_sound(second)
        assert has_one_word_each(first) == has_one_word_each(second)


def test_there_are_as_many_extra_words_as_blanks_and_four_more_than_before_at_least():
    pool = [card(number) for number in range(60)]
    for blanks, extra, wanted in ((10, 2, 10), (3, 2, 6), (1, 0, 4), (10, 9, 13)):
        (part,) = both(pool[:blanks], pool, extra_words=extra).second
        assert len(part.extra_words) == wanted


def test_a_second_version_with_the_words_of_the_first_is_none():
    # ten blanks, and two words more, which are in the first version already
    pool = [card(number) for number in range(12)]
    assert len(both(pool[:10], pool).parts[0].extra_words) == 2
    assert both(pool[:10], pool).second == ()
    assert len(both(pool[:10], pool, extra_words=1).second[0].extra_words) == 2


def test_guessing_earns_half_where_there_are_as_many_extra_words_as_blanks():
    pool = [card(number) for number in range(40)]
    (part,) = both(pool[:10], pool).second
    assert part.guess_mean == 0.5  # k/n: 10 blanks, 20 words; 1 where n = k


def test_words_most_like_an_answer_come_first():
    blanks = [card(0, answer="limpet", topic="Shells"), card(1, answer="tern", topic="Birds")]
    near = [
        card(10, answer="winkle", topic="Shells"),
        card(11, answer="gull", topic="Birds"),
        card(12, answer="cockle", topic="Shells"),
        card(13, answer="dunlin", topic="Birds"),
    ]
    far = [
        card(20, answer="otters", topic="Birds"),
        card(21, answer="limpid", topic="Tides"),
        card(22, answer="1850", topic="Birds"),
        card(23, answer="gannet", topic="Birds", kind=Kind.FACT),
        card(24, answer="the grey heron", topic="Birds"),
    ]
    for seed in map(str, range(10)):
        (part,) = both(blanks, [*far, *near], extra_words=0, seed=seed).second
        assert set(part.extra_words) == {item.answer for item in near}


def test_a_word_of_the_length_of_an_answer_comes_before_a_longer_one():
    blank = card(0, answer="crab")
    like = ["goby", "wrack", "whelk", "tern"]
    unlike = ["sea squirt", "anemone", "cuttlefish", "the strandline"]
    pool = [card(n, answer=word) for n, word in enumerate([*unlike, *like], 10)]
    for seed in map(str, range(10)):
        (part,) = both([blank], pool, extra_words=0, seed=seed).second
        assert set(part.extra_words) == set(like)


SHORT_OR_LONG = {"goby", "tern", "cuttlebone", "periwinkle"}
BETWEEN = {"lugworm", "anemone", "barnacle", "dogwhelk"}
"""Words nearer to the length of no answer than three letters, for answers of 4 and 10 letters."""


def test_closer_words_are_near_to_one_answer_and_not_to_all_on_average():
    blanks = [card(0, answer="crab"), card(1, answer="sandhopper")]
    pool = [card(n, answer=word) for n, word in enumerate(sorted(SHORT_OR_LONG | BETWEEN), 10)]
    usual = set()
    for seed in map(str, range(10)):
        guide = both(blanks, pool, extra_words=0, seed=seed)
        assert set(guide.second[0].extra_words) == SHORT_OR_LONG
        closer = both(blanks, pool, extra_words=4, seed=seed, closer=True)
        assert set(closer.parts[0].extra_words) == SHORT_OR_LONG
        usual |= set(both(blanks, pool, extra_words=4, seed=seed).parts[0].extra_words)
    assert usual & BETWEEN


def test_closer_words_have_as_many_words_as_an_answer():
    blanks = [card(0, answer="rock pool")]
    pool = [card(1, answer="periwinkl"), card(2, answer="sea potato")]
    for seed in map(str, range(10)):
        guide = both(blanks, pool, extra_words=1, seed=seed, closer=True)
        assert guide.parts[0].extra_words == ("sea potato",)


def test_cards_are_one_bank_for_all_parts():
    items = [card(number) for number in range(10)]
    rivals = [
        card(10, answer="wrack", also_right=("seaweed",)),
        card(11, answer="seaweed", also_right=("wrack",)),
    ]
    guide = make_guide("Otter", items + rivals, Pool([]), extra_words=0, seed="shore")
    assert len(guide.parts) == 2
    told = about_cards(guide)
    assert told.startswith("Part 1, blank ")
    assert told.endswith(": accept their answers either way round.")
    for n, part in enumerate(guide.parts, start=1):
        (rival,) = set(rivals) & set(part.blanks)
        assert f"art {n}, blank {part.blanks.index(rival) + 1}" in told
    assert about_cards(replace(guide, parts=guide.parts[:1])) == ""
