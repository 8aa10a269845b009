"""The base plan, the rotation and the set list, as pages before any PDF."""

import re

import pytest
from strategies import TEAMS, card
from support.flown import flown, is_on_page, things

from decks.activities import make_deck
from decks.layout.frame import Ribbon, Text
from decks.press.teacher.base_words import how_hard, most_get
from decks.press.teacher.bases import base_plan, set_list
from decks.press.teacher.rotation import rotation
from decks.recipe import Activity, PaperName, Recipe, Sets, Sides
from decks.team import make_teams


def stations(count=24, *, teams=4, topics="ABCD", **more):
    items = [
        card(n, n % 3 + 1, topics[n % len(topics)] if topics else "", also_right=(f"also {n}",))
        for n in range(count)
    ]
    recipe = Recipe(
        title="Shore",
        teams=make_teams(TEAMS[:teams], [None] * teams),
        activity=Activity.STATIONS,
        **more,
    )
    return make_deck(recipe, items, number=1, seed="s")


def pages_of(deck, chapter):
    return flown(deck, lambda width: chapter(deck, deck.lesson, width))


def texts(pages):
    return [text.text for page in pages for text, _x, _y in things(page, Text)]


def said(deck, chapter):
    return " ".join(texts(pages_of(deck, chapter)))


def test_the_set_list_has_every_question_at_its_base_with_all_answers():
    deck = stations(rounds=3)
    told = said(deck, set_list)
    ends = [told.index(f"Set {n} 8 cards") for n in (1, 2, 3)] + [len(told)]
    for hand, start, end in zip(deck.hands, ends, ends[1:], strict=False):
        part = told[start:end]
        for one in hand:
            item = one.item
            assert f"{one.label} {item.prompt} {item.answer} also: {item.also_right[0]}" in part
            assert f"{item.topic} {item.level.name.lower()}" in part
    assert "Set 2 takes its place." in told[ends[0] : ends[1]]
    assert "It is the last." in told[ends[2] :]


def test_an_only_set_is_called_no_last_one():
    told = said(stations(count=6, rounds=1), set_list)
    assert not [part for part in ("It is the last", "sets", "set by set") if part in told]


def test_cards_without_a_base_of_their_own_are_not_told_as_bases():
    # 24 students want nine bases
    told = said(stations(24, rounds=1), set_list)
    assert "Set 1 24 cards: " in told
    assert "; cards 1 to 9 have the number of their base, the others wait" in told
    assert "; the number on a card is that of its base" in said(stations(24), set_list)


def test_cards_that_wait_have_lists_of_answers_with_them_where_they_have_no_backs():
    few = stations(24, rounds=3, students=16, sides=Sides.FRONTS)
    assert "all 8 cards of the set lie out, each with a list of answers." in said(few, rotation)


def test_every_set_has_its_ribbon_and_says_how_hard_it_is():
    deck = stations(9, rounds=3, sets=Sets.RISING)
    pages = pages_of(deck, set_list)
    told = " ".join(texts(pages))
    assert [ribbon.team for page in pages for ribbon, _x, _y in things(page, Ribbon)] == [0, 1, 2]
    # levels 1, 2, 3 with shares .90, .75, .60, three items of each
    assert "3 cards: all easy. About 9 of 10 should get a question right." in told
    assert "3 cards: all medium. About 3 of 4 should get a question right." in told
    assert "3 cards: all hard. About 3 of 5 should get a question right." in told


@pytest.mark.parametrize(
    ("share", "words"),
    [
        *((0.75, "3 of 4"), (0.76, "3 of 4"), (0.9, "9 of 10"), (0.97, "9 of 10")),
        *((0.6, "3 of 5"), (0.67, "2 of 3"), (0.3, "1 of 2"), (0.81, "4 of 5")),
    ],
)
def test_a_share_is_told_as_a_plain_fraction(share, words):
    assert f"About {words} should" in most_get(share)


def test_levels_are_counted_in_words():
    assert how_hard([card(1, 1), card(2, 1), card(3, 3)]) == "2 easy and 1 hard"


@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
@pytest.mark.parametrize("students", [1, 4, 24, 60])
@pytest.mark.parametrize("rounds", [1, 3, 12])
def test_the_base_plan_is_one_page(paper, students, rounds):
    deck = stations(25, paper=paper, students=students, rounds=rounds)
    (page,) = pages_of(deck, base_plan)
    assert is_on_page(page)


def test_the_class_has_its_own_row_with_fewer_and_more():
    # as in test_crowd.py: 24 students, eight cards a set
    told = said(stations(rounds=3), base_plan)
    assert "24, your class 2 8 4" in told
    assert re.search(r" 16 1 \d+ \d+ 20 1 \d+ \d+ 24, your class", told)
    assert "Our own judgement" in told


def test_the_plan_says_where_no_base_may_stand():
    told = said(stations(), base_plan)
    assert "Along the walls" in told
    assert "Never in a doorway, on a way out, on the floor" in told
    assert "The school’s rules come first." in told


def test_the_minutes_are_divided_over_the_sets():
    # 20 minutes for three sets: six each, so that there is time to change
    assert "After 6 and 12 minutes: stop signal" in said(stations(rounds=3), base_plan)
    assert "Change the set" not in said(stations(rounds=1), base_plan)


def test_sets_for_which_there_is_no_time_are_kept_for_another_day():
    told = said(stations(rounds=6, minutes=9), base_plan)
    assert "The time is for 2 sets of 6; keep the others for another day." in told


def test_a_base_that_later_sets_have_no_card_for_is_explained():
    told = said(stations(25, rounds=3), base_plan)
    assert "From set 2 on there is no card for base 9" in told
    assert "there is no card" not in said(stations(24, rounds=3), base_plan)


def test_a_base_that_goes_with_the_next_set_is_not_said_to_stay():
    # 32 students stand at all six bases, at first as at last; the second set has five cards
    told = said(stations(11, rounds=2, students=32), base_plan)
    assert "With 6 bases none is taken away before set 2. " in told
    assert "From set 2 on there is no card for base 6" in told
    assert "taken away before set 3. " in said(stations(17, rounds=3, students=32), base_plan)


def test_a_base_that_is_not_laid_out_is_not_taken_away():
    # six students want two bases of five
    deck = stations(9, rounds=2, students=6)
    assert "lay out cards 1 and 2" in said(deck, base_plan)
    assert "there is no card" not in said(deck, base_plan)
    assert "With 2 bases none is taken away. " in said(deck, base_plan)
    assert "there is no card for base 5: whoever comes there waits" in said(deck, rotation)


def test_cards_that_are_more_than_the_class_needs_wait():
    told = said(stations(24, rounds=1), base_plan)
    assert "lay out cards 1 to 9" in told
    assert "Cards 10 to 24 wait with you" in told
    assert "that everyone knows by now; the base keeps its number." in told


def test_cards_that_wait_are_told_to_have_no_base_of_their_number():
    # 16 students want six bases of eight
    few = said(stations(24, rounds=3, students=16), base_plan)
    assert "lay out cards 1 to 6, each at the base of its number, in the order" in few
    assert "the old one at the base of its number; the others wait with you. " in few
    assert "number on a card" not in few
    all_laid = said(stations(24, rounds=3), base_plan)
    assert "the number on a card is that of its base. For your class lay out all its" in all_laid
    assert "the old one with the same number. " in all_laid


def test_topics_are_said_to_change_only_where_they_do():
    assert "asks something else, from another topic." in said(stations(rounds=3), base_plan)
    assert "asks something else. " in said(stations(25, rounds=3, topics=""), base_plan)
    one_topic = said(stations(25, rounds=3, topics="A"), base_plan)
    assert "another topic" not in one_topic


def test_tents_are_put_before_one_another():
    assert "in front of the old one" in said(stations(rounds=3, sides=Sides.TENT), base_plan)


def grid(told, names, stops):
    """Return the rows of a grid: after each name as many numbers as there are stops."""
    figures = " ".join([r"(\d+)"] * stops)
    rows = [re.findall(f"{name} {figures}", told) for name in names]
    return [[tuple(map(int, row)) for row in found] for found in rows]


@pytest.mark.parametrize(("bases", "teams"), [(8, 8), (7, 7), (9, 4), (6, 2)])
def test_the_grid_sends_no_two_groups_to_one_base_and_every_group_to_all(bases, teams):
    told = said(stations(bases, teams=teams, rounds=1), rotation)
    rows = grid(told, TEAMS[:teams], bases)
    lessons = 2 if bases % 2 else 1
    assert all(len(found) == lessons for found in rows)
    for lesson in range(lessons):
        orders = [found[lesson] for found in rows]
        assert all(sorted(order) == list(range(1, bases + 1)) for order in orders)
        assert all(len(set(moment)) == teams for moment in zip(*orders, strict=True))


@pytest.mark.parametrize("bases", [7, 8])
def test_it_is_claimed_that_all_is_even_only_where_it_is(bases):
    whole = said(stations(bases, teams=bases, rounds=1), rotation)
    part = said(stations(bases, teams=4, rounds=1), rotation)
    assert "every base follows every other equally often" in whole
    assert f"with {bases} groups every base would follow" in part
    assert "With 4 no base follows another more than" in part


def test_groups_share_where_there_are_fewer_bases():
    told = said(stations(4, teams=6, rounds=1), rotation)
    assert "Heron and Limpet 1" in told
    assert "Otter and Dunlin 2" in told
    assert "groups in one row go together" in told
    assert "go together" not in said(stations(8, teams=4, rounds=1), rotation)


def test_more_than_twelve_stops_are_not_shown_and_how_to_have_fewer_is_said():
    told = said(stations(30, rounds=1), rotation)
    assert "The first 12 of 30 stops are shown." in told


def test_one_base_needs_no_rotation():
    deck = stations(1, rounds=1)
    assert rotation(deck, deck.lesson, 500) == []


def test_the_time_at_a_stop_is_told():
    # 20 minutes for eight stops are 150 seconds each, a third of it with all three sets
    told = said(stations(rounds=3), rotation)
    assert "8 stops in 20 minutes are about 2½ minutes each" in told
    assert "For all 3 sets go round 3 times, about 50 seconds a stop" in told
    both = said(stations(16, rounds=2), rotation)
    assert (
        "For both sets go round twice, about 75 seconds a stop, or keep the other for another day."
        in both
    )


def test_nobody_goes_round_where_there_is_no_time_to_stop():
    # six sets of four: 1200 / 4 / 6 are 50 seconds; with 8 minutes 20
    enough = stations(24, rounds=6)
    assert "For all 6 sets go round 6 times" in said(enough, rotation)
    hurried = said(stations(24, rounds=6, minutes=8), rotation)
    assert "go round 6 times" not in hurried
    assert "That is one set; keep the others for another day." in hurried


def test_cards_that_wait_in_the_game_are_told_to_lie_out_for_the_rotation():
    # 16 students want six bases of eight
    few = stations(24, rounds=3, students=16)
    assert "Cards 7 and 8 wait with you" in said(few, base_plan)
    assert "For this all 8 cards of the set lie out." in said(few, rotation)
    assert "For this" not in said(stations(24, rounds=3), rotation)


def test_who_goes_round_is_told_what_a_base_without_a_card_is_for():
    told = said(stations(25, rounds=3), rotation)
    assert "From set 2 on there is no card for base 9: whoever comes there waits" in told
    assert "there is no card" not in said(stations(24, rounds=3), rotation)


@pytest.mark.parametrize(
    ("sides", "checked"),
    [
        (Sides.FRONTS, "then look at the list that lies there; at the signal"),
        (Sides.TENT, "then look at the other side; at the signal"),
        (Sides.DUPLEX, "then turn the card and look; at the signal"),
    ],
)
def test_who_goes_round_is_told_where_the_answer_is(sides, checked):
    assert checked in said(stations(rounds=3, sides=sides), rotation)


def test_one_group_goes_round_by_itself():
    told = said(stations(8, teams=1, rounds=1), rotation)
    assert "1 group goes round 8 bases" in told
    assert "The group starts at the base in the first column." in told
    assert "Each group" not in told
    assert "Williams" not in told
    assert "Williams" in said(stations(8, teams=2, rounds=1), rotation)


def test_no_base_is_told_to_go_where_none_does():
    # 60 students at the three bases of a set, at first as at last
    told = said(stations(9, rounds=3, students=60), base_plan)
    assert "With 3 bases none is taken away." in told
    assert "When a base goes" not in told
    assert "When a base goes, whoever stood at it walks on first" in said(stations(), base_plan)


@pytest.mark.parametrize("teams", [1, 5, 12])
@pytest.mark.parametrize("paper", [PaperName.LETTER, PaperName.A4])
def test_the_rotation_is_one_page(teams, paper):
    for bases in (2, 7, 12, 30):
        deck = stations(bases, teams=teams, rounds=1, paper=paper)
        (page,) = pages_of(deck, rotation)
        assert is_on_page(page)
