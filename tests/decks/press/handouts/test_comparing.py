"""The comparison sheets, as frames before any PDF."""

import pytest
from strategies import TEAMS
from support.flown import is_on_page, things
from support.texts import MARSH, SHORE, TEXTS, headed, organizer_deck

from decks.layout.frame import Box, Placed, Ribbon, Text
from decks.press.handouts.comparing import comparing_pages
from decks.recipe import Dealing, PaperName, Support


def words(page):
    return " ".join(text.text for text, _x, _y in things(page, Text))


def ticks(page):
    return sum(box.width == box.height == 13 for box, _x, _y in things(page, Box))


def one(texts, **more):
    return organizer_deck({"Shore": texts}, **more)


def test_groups_with_the_same_text_tick_who_has_which_detail():
    (page,) = comparing_pages(one(SHORE))
    # three headings, each with three details and a line more, for four groups
    assert ticks(page) == 3 * 4 * 4
    assert [ribbon.team for ribbon, _x, _y in things(page, Ribbon)] == [0, 1, 2, 3]
    assert "Heron Otter Samphire Curlew" in " ".join(
        text.text for text, _x, _y in things(page, Text) if text.text in TEAMS
    )


@pytest.mark.parametrize("support", list(Support))
def test_no_detail_is_told_and_headings_only_where_they_are_a_bank(support):
    told = " ".join(words(page) for page in comparing_pages(one(SHORE, support=support)))
    assert not any(detail in told for details in SHORE.values() for detail in details)
    assert all((heading in told) is (support is Support.BANK) for heading in SHORE)


def test_headings_are_to_be_written_only_where_they_are_not_printed():
    def told(support):
        (page,) = comparing_pages(one(SHORE, support=support))
        return words(page)

    assert "Under each heading write its supporting details" in told(Support.BANK)
    for support in (Support.HINTS, Support.NONE):
        assert "Write a heading and its supporting details" in told(support)


def test_headings_with_nearly_as_many_details_cannot_be_told_by_their_lines():
    (page,) = comparing_pages(one(headed(A=1, B=3, C=2), teams=2))
    assert ticks(page) == 3 * 4 * 2


def test_groups_with_different_texts_write_what_both_have():
    *same, last = comparing_pages(organizer_deck(deal=Dealing.SHARES))
    # of three texts for four groups one is had by two
    assert [ticks(page) > 0 for page in same] == [True]
    assert [ribbon.team for ribbon, _x, _y in things(same[0], Ribbon)] == [0, 3]
    assert all(label in words(last) for label in ("Only in our text", "In both", "Only in the"))


def test_texts_that_all_groups_have_need_no_sheet_for_what_both_have():
    told = " ".join(words(page) for page in comparing_pages(organizer_deck()))
    assert all(topic in told for topic in TEXTS)
    assert "In both" not in told


def test_one_group_compares_its_texts_if_it_has_several():
    assert comparing_pages(one(SHORE, teams=1)) == []
    (page,) = comparing_pages(organizer_deck(teams=1))
    assert "In both" in words(page)


def test_of_more_than_two_texts_two_are_chosen():
    def told(texts):
        *_same, last = comparing_pages(organizer_deck(texts, teams=2, deal=Dealing.SHARES))
        return words(last)

    assert "Choose two texts and write their titles." in told(TEXTS)
    assert "Write the titles of the two texts." in told({"Shore": SHORE, "Marsh": MARSH})


@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
@pytest.mark.parametrize("large_print", [False, True])
@pytest.mark.parametrize("teams", [2, 12])
def test_everything_is_on_its_page_and_every_page_says_whose_columns_are_whose(
    paper, large_print, teams
):
    text = headed(Weed=30, Shells=2)
    pages = comparing_pages(one(text, teams=teams, paper=paper, large_print=large_print))
    assert len(pages) > 1
    for page in pages:
        assert is_on_page(page)
        named = [text.text for text, _x, _y in things(page, Text) if text.text in TEAMS]
        assert named == list(TEAMS[:teams]) * (len(named) // teams)
        assert bool(named) is bool(ticks(page))


def test_narrow_columns_have_upright_names():
    def turned(frame):
        return any(
            isinstance(thing, Placed) and (thing.rotation == 90 or turned(thing.frame))
            for thing in frame.things
        )

    assert not turned(comparing_pages(one(MARSH, teams=3))[0])
    assert turned(comparing_pages(one(MARSH, teams=12))[0])
