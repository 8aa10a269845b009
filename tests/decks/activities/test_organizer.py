"""Who gets which text."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from msgspec.structs import replace
from support.texts import TEXTS, details_of, headed, organizer_deck

from cards.style import Span, TextStyle
from decks.activities.organizer import stories_of
from decks.press.handouts.forms.plan import headings_of
from decks.recipe import Dealing, Support


def topics(deck):
    return [[story.topic for story in stories] for stories in deck.lesson.stories]


def labelled(deck, team):
    return {card.item.prompt: card.label for card in deck.hands[team]}


def test_in_copies_every_group_has_every_text_with_the_same_labels():
    deck = organizer_deck(deal=Dealing.COPIES)
    assert topics(deck) == [list(TEXTS)] * 4
    assert all(labelled(deck, team) == labelled(deck, 0) for team in range(4))


def test_three_texts_for_four_groups_give_two_groups_the_same_one_with_the_same_labels():
    deck = organizer_deck(deal=Dealing.SHARES)
    assert topics(deck) == [[topic] for topic in (*TEXTS, next(iter(TEXTS)))]
    assert labelled(deck, 0) == labelled(deck, 3)


@given(st.integers(1, 9), st.integers(1, 12))
def test_in_shares_every_text_has_a_group_and_every_group_a_text(count, teams):
    texts = {f"Text {n}": headed(One=2, Two=2) for n in range(count)}
    given_texts = topics(organizer_deck(texts, teams=teams, deal=Dealing.SHARES))
    assert {topic for mine in given_texts for topic in mine} == set(texts)
    assert all(given_texts)
    counts = [len(mine) for mine in given_texts]
    assert max(counts) - min(counts) <= 1


def test_details_without_a_topic_are_a_text_of_their_own():
    deck = organizer_deck({"": headed(One=2, Two=2), "Tides": headed(Three=2)}, teams=2)
    assert {topic for mine in topics(deck) for topic in mine} == {"", "Tides"}


def test_a_heading_is_one_however_it_is_written():
    deck = organizer_deck({"Tides": {"Holding on": ("One",), " holding ON": ("Two",)}})
    ((story,), *_others) = deck.lesson.stories
    assert [(heading, len(items)) for heading, items in story.headings] == [("Holding on", 2)]


@pytest.mark.parametrize("seed", ["a", "b", "c"])
def test_the_labels_do_not_follow_the_headings(seed):
    deck = organizer_deck({"Shore": headed(A=6, B=6, C=6)}, seed=seed)
    headings = [card.item.answer for card in deck.hands[0]]
    assert headings != sorted(headings)


def test_two_headings_that_are_written_alike_have_a_place_each():
    hundred, power = details_of({"Numbers": {"102": ["more than a hundred"], "10": ["ten tens"]}})
    power = replace(power, answer="102", answer_spans=(Span(2, 3, TextStyle.RAISED),))
    (story,) = stories_of([hundred, power])
    for support in Support:
        assert [place.number for place in headings_of(story, support)] == [1, 2]


def test_a_heading_is_spelt_as_it_is_even_where_a_text_is_called_the_same():
    (story,) = stories_of(details_of({"SALT MARSH": {"Salt marsh": ["Plants stand in the sea"]}}))
    assert (story.topic, story.headings[0][0]) == ("SALT MARSH", "Salt marsh")
