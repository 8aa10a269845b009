"""The page that shows how fair the deal is, as frames before any PDF."""

import re

import pytest
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.layout.flow import Block, flow
from decks.layout.frame import Line, Placed, Ribbon, Text
from decks.press.teacher.fairness import fairness
from decks.press.type.fonts import measure
from decks.press.type.pages import BOTTOM, TOP, page_paper
from decks.recipe import PaperName, Recipe
from decks.team import make_teams

WIDTH = 500
A4 = page_paper(PaperName.A4)


def page(items, teams, named=None, **settings):
    named = named or make_teams(TEAMS[:teams], [None] * teams)
    recipe = Recipe(title="Shore", teams=named, **settings)
    deck = make_deck(recipe, items, number=1, seed="s")
    return fairness(deck, deck.deal, WIDTH)


def things(frame, kind, x=0.0):
    for thing in frame.things:
        if isinstance(thing, kind):
            yield thing, x
        if isinstance(thing, Placed):
            yield from things(thing.frame, kind, x + thing.x)


def words(blocks):
    return " ".join(thing.text for block in blocks for thing, _x in things(block.frame, Text))


def picture(blocks):
    (frame,) = [block.frame for block in blocks if "equal chance: " in words([block])]
    return frame


ITEMS = [card(n, n % 3 + 1, f"Topic {n % 4}", answer=f"{n} tide") for n in range(25)]


@pytest.mark.parametrize("teams", [2, 4, 12])
def test_bars_are_as_long_as_chances_and_the_mark_stands_at_the_equal_one(teams):
    frame = picture(page(ITEMS, teams))
    ends = {}
    for ribbon, x in things(frame, Ribbon):
        ends[ribbon.team] = max(ends.get(ribbon.team, 0), x + ribbon.x + ribbon.width)
    start = min(x + ribbon.x for ribbon, x in things(frame, Ribbon))
    ((mark, _x),) = things(frame, Line)
    said = [text.text for text, _x in things(frame, Text)]
    shown = [float(text[:-2]) for text in said if text.endswith(" %") and "equal" not in text]
    assert len(ends) == teams
    per_cent = (mark.x - start) * teams / 100
    for team, chance in enumerate(shown[:teams]):
        assert ends[team] - start == pytest.approx(chance * per_cent, abs=1)


@pytest.mark.parametrize("teams", range(1, 13))
def test_names_of_ours_stand_whole_over_their_columns(teams):
    named = make_teams([None] * teams, [None] * teams)
    blocks = page(ITEMS, teams, named=named)
    said = words(blocks)
    assert "…" not in said
    # five tables: cards, levels, topics, what is weighed, and the picture of a race
    tables = 4 + (teams > 1)
    assert all(len(re.findall(rf"\b{team.name}\b", said)) >= tables for team in named)


def test_names_stand_upright_only_where_columns_are_narrow_and_one_is_too_long():
    def turned(teams):
        return [
            thing
            for block in page(ITEMS, teams)
            for thing, _x in things(block.frame, Placed)
            if thing.rotation
        ]

    assert not turned(4)
    assert len(turned(12)) == 12 * 4


@pytest.mark.parametrize("teams", range(2, 13))
@pytest.mark.parametrize("count", [24, 25])
def test_no_figure_is_crossed_by_the_mark_nor_printed_over_its_bar(teams, count):
    frame = picture(page(ITEMS[:count], teams))
    ((mark, _x),) = things(frame, Line)
    bars = {}
    for ribbon, _x in things(frame, Ribbon):
        bars[ribbon.y] = max(bars.get(ribbon.y, 0), ribbon.x + ribbon.width)
    figures = [text for text, _x in things(frame, Text) if re.fullmatch(r"[\d.]+ %", text.text)]
    assert len(figures) == teams
    for figure in figures:
        width = measure(figure.text, False) * figure.size
        assert not figure.x - 2 < mark.x < figure.x + width + 2
        assert figure.x + width <= WIDTH
        (end,) = [x for y, x in bars.items() if abs(y - figure.y) < 8]
        assert figure.x > end


def test_points_and_words_have_a_row_with_what_is_proven():
    said = words(page(ITEMS[:24], 4))
    # eight cards of each level, two a team: 2 x 0.9 + 2 x 0.75 + 2 x 0.6 = 4.5 points a hand
    assert "Points to expect 4.5 4.5 4.5 4.5 0" in said
    assert "Words to read 24 24 24 24 0" in said
    assert "Clashes" not in said


def test_cards_that_could_answer_each_other_are_told_where_there_are_any():
    said = words(page([card(n, answer="ebb") for n in range(3)], 2))
    assert "Pairs in one hand that could answer each other’s blank: 1." in said
    assert "No deal as even has fewer." in said


def test_a_smaller_hand_is_said_to_win_less_often():
    assert "a team with fewer cards wins less often" in words(page(ITEMS, 2))
    assert "a team with fewer cards wins less often" not in words(page(ITEMS[:24], 2))


def test_without_a_race_there_is_no_picture():
    assert "equal chance" not in words(page(ITEMS, 1))


def test_the_last_table_stands_alone_on_no_page():
    alone = 0
    for topics in range(2, 20):
        items = [card(n, n % 3 + 1, f"Topic {n % topics}", answer=f"{n} tide") for n in range(40)]
        blocks = page(items, 4)
        pages = flow(blocks, x=0, top=A4.height - TOP, bottom=BOTTOM)
        if len(pages) > 1:
            last = " ".join(words([Block(placed.frame)]) for placed in pages[-1])
            alone += last.startswith("In a whole hand")
    assert not alone


def test_a_table_of_a_few_topics_is_not_torn():
    for topics in range(2, 9):
        items = [card(n, n % 3 + 1, f"Topic {n % topics}", answer=f"{n} tide") for n in range(40)]
        pages = flow(page(items, 4), x=0, top=A4.height - TOP, bottom=BOTTOM)
        said = [" ".join(words([Block(placed.frame)]) for placed in each) for each in pages]
        (held,) = [each for each in said if "Topic 0" in each]
        assert f"Topic {topics - 1}" in held
