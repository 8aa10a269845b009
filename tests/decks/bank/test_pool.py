"""A large unit offers a part some of its words, and enough of those that are near."""

import random

from strategies import card

from cards.item import folded
from decks.bank.extras import word_of
from decks.bank.pool import LOOKED_AT, Pool


def items(count, topics):
    return [card(n, answer=f"word {n}", topic=f"Topic {n % topics}") for n in range(count)]


def looked_at(unit, blanks, seed="shore"):
    return Pool(unit).look_at([word_of(blank) for blank in blanks], random.Random(seed))


def test_a_small_unit_offers_all_its_words():
    unit = items(LOOKED_AT, 3)
    assert [word.text for word in looked_at(unit, unit[:5])] == [item.answer for item in unit]


def test_a_large_unit_offers_so_many_words_and_not_more():
    unit = items(10 * LOOKED_AT, 7)
    offered = [word.text for word in looked_at(unit, unit[:5])]
    assert LOOKED_AT * 0.9 < len(offered) <= LOOKED_AT
    assert len(set(offered)) == len(offered)


def test_half_of_them_are_of_the_topics_of_the_blanks():
    unit = items(10 * LOOKED_AT, 60)
    near = [word for word in looked_at(unit, unit[:3]) if word.topic in {"topic 0", "topic 1"}]
    assert len(near) >= 2 * 10 * LOOKED_AT // 60


def test_a_word_that_many_rows_have_is_offered_once():
    unit = [*items(2 * LOOKED_AT, 7), *(card(n, answer="Tide") for n in range(9000, 9999))]
    offered = [folded(word.text) for word in looked_at(unit, unit[:5])]
    assert offered.count("tide") <= 1


def test_all_words_of_a_small_topic_are_offered_to_its_blanks():
    rare = [card(n, answer=f"rare {n}", topic="Rare") for n in range(90_001, 90_004)]
    offered = [word.text for word in looked_at([*items(10 * LOOKED_AT, 7), *rare], rare[:1])]
    assert {item.answer for item in rare} <= set(offered)
