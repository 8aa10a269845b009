"""How the score sheet looks: what stands where, on which ground, and that nothing is cut off."""

import io
import math

import openpyxl
import pytest
from coloraide import Color
from msgspec.structs import replace
from strategies import TEAMS, card

from decks.activities import make_deck
from decks.marks.sheet import marks_workbook
from decks.recipe import Activity, Recipe
from decks.team import make_teams

TITLE, DIRECTIONS, NAMES, TOTAL, PLACE, FIRST = range(1, 7)
LONG = "Which of these lives " + "under stones and weed, " * 6 + "and why?"
PROMPTS = ("What is a neap tide?", LONG, "First line\nsecond line\nthird line")


@pytest.fixture(scope="module")
def deck():
    recipe = Recipe("Shore", make_teams(list(TEAMS[:3]), [None] * 3), activity=Activity.ROUNDS)
    items = [replace(card(n), prompt=prompt) for n, prompt in enumerate(PROMPTS)]
    return make_deck(recipe, items, number=1, seed="s")


@pytest.fixture(scope="module")
def sheet(deck):
    return openpyxl.load_workbook(io.BytesIO(marks_workbook(deck)))["Score"]


def values(sheet, row):
    return [cell.value for cell in sheet[row]]


def test_the_head_says_what_the_rows_and_columns_are(sheet):
    assert values(sheet, TITLE)[0] == "Score: Shore · deck 1"
    assert values(sheet, NAMES) == ["Round", "Card", "Question", *TEAMS[:3]]
    assert values(sheet, TOTAL)[:3] == ["Total", None, None]
    assert values(sheet, PLACE)[:3] == ["Place", None, None]


def test_the_directions_name_the_points_there_are_and_what_follows_by_itself(sheet):
    # one each for right, first and together: three
    directions = values(sheet, DIRECTIONS)[0]
    assert "0 to 3" in directions
    assert directions.endswith(".")


def test_teams_stand_on_their_colours_and_can_be_read(deck, sheet):
    for team, cell in zip(deck.recipe.teams, sheet[NAMES][3:], strict=True):
        ground, ink = (f"#{tone.rgb[2:]}" for tone in (cell.fill.fgColor, cell.font.color))
        assert ground == team.colour
        # WCAG 2.1, success criterion 1.4.3
        assert Color(ink).contrast(ground, method="wcag21") >= 4.5
        assert (cell.font.bold, cell.alignment.horizontal) == (True, "center")


def test_the_first_place_for_points_is_the_one_that_is_typed_into_first(sheet):
    (typed,) = {one.activeCell for one in sheet.sheet_view.selection if one.pane == "bottomRight"}
    assert typed == sheet.cell(FIRST, 4).coordinate


def test_no_question_is_cut_off(sheet):
    width = sheet.column_dimensions["C"].width
    heights = {}
    for row in range(FIRST, FIRST + len(PROMPTS)):
        prompt = sheet.cell(row, 3).value
        # a column's width counts digits, and letters are narrower in the mean: common practice
        lines = sum(math.ceil(len(line) / width) or 1 for line in prompt.split("\n"))
        heights[lines] = sheet.row_dimensions[row].height
        # from line to line 1.2 times the size of the letters: common practice
        assert heights[lines] >= lines * 1.2 * sheet.cell(row, 3).font.size
    assert sorted(heights) == [1, 3, 4]
    assert heights[1] < heights[3] < heights[4]


def test_every_row_of_the_head_is_high_enough_for_its_letters(sheet):
    for row in (TITLE, DIRECTIONS, NAMES, TOTAL, PLACE):
        assert sheet.row_dimensions[row].height >= 1.2 * sheet.cell(row, 1).font.size


def test_columns_hold_the_names_of_the_teams_and_their_heads(sheet):
    for cell in sheet[NAMES]:
        assert sheet.column_dimensions[cell.column_letter].width >= len(cell.value) + 2


def test_the_question_stands_out_from_what_tells_where_it_belongs(sheet):
    called, number, question = (sheet.cell(FIRST, column).font.color.rgb for column in (1, 2, 3))
    assert called == number != question
