"""What the score sheet says, and what else a teacher sees of it: sums, names, heights, lines."""

import io
import math

import openpyxl
import pytest
from coloraide import Color
from msgspec.structs import replace
from support.items import item
from support.marking import HEADED, Book, deck

from decks.activities import make_deck
from decks.marks.sheet import marks_workbook
from decks.recipe import Activity, Points, Recipe
from decks.team import make_teams

DIRECTIONS, NAMES, TOTAL, PLACE, FIRST = range(2, 7)
TEAM = 4
"""The column of the first team."""

LONG = "Which of these lives " + "under stones and weed, " * 6 + "and why?"


def score_sheet(prompts=("What digs?", "What clings?"), *, shown=False, **fields):
    teams = make_teams(["Oystercatchers of the bay", "Tern"], [None] * 2)
    recipe = Recipe("Shore", teams, activity=Activity.ROUNDS, **fields)
    chosen = [item(prompt, f"word{n}", row=n + 2) for n, prompt in enumerate(prompts)]
    data = marks_workbook(make_deck(recipe, chosen, number=1, seed="s"))
    return openpyxl.load_workbook(io.BytesIO(data), data_only=shown)["Score"]


def test_a_lone_team_earns_nothing_for_being_first():
    alone = make_teams(["Tern"], [None])
    recipe = Recipe("Shore", alone, activity=Activity.ROUNDS)
    deck = make_deck(recipe, [item("What digs?", "word")], number=1, seed="s")
    book = openpyxl.load_workbook(io.BytesIO(marks_workbook(deck)))
    assert "0 to 2" in book["Score"].cell(DIRECTIONS, 1).value
    deck = replace(deck, recipe=replace(recipe, points=Points(0, 1, 0)))
    assert "Score" not in openpyxl.load_workbook(io.BytesIO(marks_workbook(deck))).sheetnames


def test_a_lone_team_is_told_of_no_place_and_of_no_other_team():
    alone = Recipe("Shore", make_teams(["Tern"], [None]), activity=Activity.ROUNDS)
    chosen = [item("What digs?", "word")]
    made = make_deck(alone, chosen, number=1, seed="s")
    sheet = openpyxl.load_workbook(io.BytesIO(marks_workbook(made)))["Score"]
    assert sheet.cell(DIRECTIONS, 1).value == (
        "Type the team’s points, 0 to 2, into the white cells. Sums follow by themselves. What is "
        "known is read from the sheet Tally."
    )
    rows = [[cell.value for cell in row] for row in sheet.iter_rows(min_row=NAMES)]
    assert rows == [
        ["Round", "Card", "Question", "Tern"],
        ["Total", None, None, "=SUM(D6)"],
        ["Round 1", "1", "What digs?", None],
        ["Round 1: sum", None, None, "=SUM(D5:D5)"],
    ]
    assert sheet.freeze_panes == "D5"


@pytest.mark.parametrize(("points", "most"), [(Points(), 3), (Points(1, 0, 0), 1)])
def test_the_directions_and_what_is_said_of_other_points_name_the_most_there_is(points, most):
    sheet = score_sheet(points=points)
    assert sheet.cell(DIRECTIONS, 1).value == (
        f"Type each team’s points, 0 to {most}, into the white cells. Sums and places follow by "
        "themselves; teams with equal points share a place. What is known is read from the sheet "
        "Tally."
    )
    (validation,) = sheet.data_validations.dataValidation
    assert (validation.errorTitle, validation.error) == (
        "Points",
        f"A team earns 0 to {most} with one question.",
    )


def test_a_round_ends_with_its_sum_which_is_nought_at_first():
    row = score_sheet(shown=True)[FIRST + 2]
    assert [cell.value for cell in row] == ["Round 1: sum", None, None, 0, 0]
    assert row[0].parent.row_dimensions[FIRST + 2].height >= 1.2 * row[0].font.size


def test_a_long_name_of_a_team_has_room():
    sheet = score_sheet()
    for cell in sheet[NAMES][TEAM - 1 :]:
        assert sheet.column_dimensions[cell.column_letter].width >= len(cell.value) + 2


def test_totals_are_larger_than_the_points_they_come_from():
    sheet = score_sheet()
    sizes = [sheet.cell(row, TEAM).font.size for row in (TOTAL, FIRST, FIRST + 2)]
    assert sizes[0] > sizes[1] == sizes[2]


def test_the_question_is_darker_than_what_tells_where_it_belongs():
    sheet = score_sheet()
    inks = [f"#{sheet.cell(FIRST, column).font.color.rgb[2:]}" for column in (1, 2, 3)]
    called, number, question = (Color(ink).contrast("white", method="wcag21") for ink in inks)
    assert called == number < question


def test_a_row_is_no_higher_than_its_lines_and_one_more():
    prompts = ("What digs?", LONG, "First line\nsecond line\nthird line")
    sheet = score_sheet(prompts)
    width = sheet.column_dimensions["C"].width
    for row in range(FIRST, FIRST + len(prompts)):
        cell = sheet.cell(row, 3)
        lines = sum(math.ceil(len(line) / width) for line in cell.value.split("\n"))
        # from line to line a third more than the size of the letters: what a spreadsheet leaves
        assert sheet.row_dimensions[row].height <= (lines + 1) * 4 / 3 * cell.font.size


def test_the_line_above_a_pile_of_papers_runs_over_blanks_that_its_guide_does_not_have():
    made = deck(22)  # hands of 5, 5, 6 and 6
    sheet = Book(made).guides
    otter = next(row for row in range(HEADED + 2, 40) if sheet.cell(row, 1).value == "Otter")

    def lines(row):
        return {cell.border.top.color and cell.border.top.color.rgb for cell in sheet[row]}

    (drawn,) = lines(otter)
    assert drawn
    assert drawn not in lines(otter + 1)
