"""The key to the details and the checking grid, as pages before any PDF."""

import re

import pytest
from support.flown import flown, is_on_page, things
from support.texts import SHORE, TEXTS, headed, organizer_deck

from decks.layout.frame import Box, Ribbon, Text
from decks.press.teacher.checking_grid import checking_grid
from decks.press.teacher.organizing import organizing_key
from decks.recipe import Dealing, PaperName


def pages_of(deck, chapter):
    return flown(deck, lambda width: chapter(deck, deck.lesson, width))


def words(pages):
    return " ".join(text.text for page in pages for text, _x, _y in things(page, Text))


def test_the_key_gives_every_detail_under_its_heading_with_the_label_of_its_card():
    deck = organizer_deck({"Shore": SHORE})
    said = words(pages_of(deck, organizing_key))
    labels = {card.item.prompt: card.label for card in deck.hands[0]}
    starts = [said.index(f"{heading} cards") for heading in SHORE]
    assert starts == sorted(starts)
    for (heading, details), start, end in zip(
        SHORE.items(), starts, [*starts[1:], len(said)], strict=True
    ):
        told = said[start:end]
        assert heading in told
        assert all(f"{labels[detail]} {detail}" in told for detail in details)
        numbers = re.match(rf"{heading} cards ([\d, and]+?) \d+ [A-Z]", told)[1]
        assert sorted(map(int, re.findall(r"\d+", numbers))) == sorted(
            int(labels[detail]) for detail in details
        )


def test_a_text_says_which_groups_have_it():
    pages = pages_of(organizer_deck(deal=Dealing.SHARES), organizing_key)
    said = words(pages)
    assert "Between the tides for Heron and Curlew" in said
    assert "A saltmarsh for Otter" in said
    assert [ribbon.team for page in pages for ribbon, _x, _y in things(page, Ribbon)] == [
        *(0, 3),
        1,
        2,
    ]
    assert "for every group" in words(pages_of(organizer_deck(), organizing_key))


def test_numbers_are_said_to_be_the_same_only_where_groups_share_a_text():
    same = "in every group a text’s cards have the same numbers"
    assert same in words(pages_of(organizer_deck(), organizing_key))
    assert same in words(pages_of(organizer_deck(deal=Dealing.SHARES), organizing_key))
    for teams in (1, 3):
        alone = organizer_deck(teams=teams, deal=Dealing.SHARES)
        assert same not in words(pages_of(alone, organizing_key))


def test_the_labels_are_those_of_the_hand_also_where_a_group_has_several_texts():
    deck = organizer_deck(teams=2, deal=Dealing.SHARES)
    said = words(pages_of(deck, organizing_key))
    for card in deck.cards:
        assert f"{card.label} {card.item.prompt}" in said


def test_a_text_without_a_name_is_told_as_such():
    deck = organizer_deck({"": SHORE})
    assert "A text without a name for every group" in words(pages_of(deck, organizing_key))


def test_details_that_go_on_to_another_page_have_their_heading_again():
    deck = organizer_deck({"Shore": headed(Weed=60)})
    pages = pages_of(deck, organizing_key)
    assert len(pages) > 1
    assert all("Shore · Weed continued" in words([page]) for page in pages[1:])
    assert all(is_on_page(page) for page in pages)


def test_details_that_go_on_say_of_which_text_and_whose_they_are():
    many = {f"Text {n}": headed(Weed=60 + n) for n in range(4)}
    pages = pages_of(organizer_deck(many, deal=Dealing.SHARES), organizing_key)
    tops = [[text.text for text, _x, _y in things(page, Text)][:2] for page in pages]
    assert ["Otter · Text 1 · Weed", "continued"] in tops
    assert ["Heron · Text 0 · Weed", "continued"] in tops
    shared = organizer_deck({"": headed(Weed=60)}, deal=Dealing.SHARES)
    assert "A text without a name · Weed continued" in words(pages_of(shared, organizing_key))


@pytest.mark.parametrize("count", range(30, 50))
def test_the_last_detail_of_a_heading_has_another_before_it(count):
    pages = pages_of(organizer_deck({"Shore": headed(Weed=count)}), organizing_key)
    assert all(words([page]).count("Weed says") != 1 for page in pages)


@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
def test_the_grid_has_a_box_for_each_thing_and_the_sum_in_a_row_for_each_group(paper):
    deck = organizer_deck({"Shore": SHORE}, teams=12, paper=paper)
    (page,) = pages_of(deck, checking_grid)
    said = words([page])
    assert sum(box.stroke == "frame" for box, _x, _y in things(page, Box)) == 12 * 5
    assert all(
        name in said for name in ("Main idea", "Details", "Organisation", "Symbols explained")
    )
    assert "0 to 3 for each, 12 at the most" in said
    assert all(team.name in said for team in deck.owners)


def test_a_group_with_several_texts_has_a_row_for_each():
    deck = organizer_deck(teams=2)
    (page,) = pages_of(deck, checking_grid)
    said = words([page])
    assert [said.count(topic) for topic in TEXTS] == [2, 2, 2]
