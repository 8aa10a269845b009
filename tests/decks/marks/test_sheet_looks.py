"""How the marks workbook looks on the screen and on paper, as a teacher sees it."""

import io

import pytest
from coloraide import Color
from openpyxl import load_workbook
from support.marking import TEAMS, deck, for_class, in_rounds, items

from decks.activities import make_deck
from decks.marks.sheet import marks_workbook
from decks.recipe import Dealing, Recipe

SUMS, HEADS = 4, 5
# 22 cards from row 6 on, in piles of 5, 5, 6 and 6
PILES, ROWS = {"Heron": 6, "Otter": 11, "Samphire": 16, "Curlew": 22}, range(6, 28)
# 24 students, six in each team, below its row of means: the first row, the last, its blanks
PAPERS = {"Heron": (7, 12, 5), "Otter": (14, 19, 5), "Samphire": (21, 26, 6), "Curlew": (28, 33, 6)}
HEADINGS = {"Tally": 5, "Study guides": 5, "Score": 3}


def written(made):
    return load_workbook(io.BytesIO(marks_workbook(made)))


@pytest.fixture(scope="module")
def by_team():
    return written(deck(22, students=24))


@pytest.fixture(scope="module")
def tally(by_team):
    return by_team["Tally"]


@pytest.fixture(scope="module")
def guides(by_team):
    return by_team["Study guides"]


@pytest.fixture(scope="module", params=HEADINGS)
def sheet(by_team, request):
    return (by_team if request.param in by_team else written(in_rounds(6)))[request.param]


def widths(sheet):
    """Return the widths of the columns, in digits, by their numbers; those set and no others."""
    told = [each for each in sheet.column_dimensions.values() if each.min]
    return {n: each.width for each in told for n in range(each.min, each.max + 1)}


def texts(cells):
    return [cell.value for cell in cells]


def ground(cell):
    return f"#{cell.fill.fgColor.rgb[2:]}" if cell.fill.patternType else "#FFFFFF"


def light(cells):
    """Return the luminance of the one ground that all of these have."""
    (tone,) = {ground(cell) for cell in cells}
    return Color(tone).luminance()


def edges(cell):
    border = cell.border
    return [line.style for line in (border.top, border.bottom, border.left, border.right)]


def dark_above(cells):
    """Say of each whether the line above is seen at once (WCAG 2.1, success criterion 1.4.11)."""
    tones = [f"#{one.border.top.color.rgb[2:]}" if edges(one)[0] else "white" for one in cells]
    return [Color(tone).contrast("white", method="wcag21") >= 3 for tone in tones]


def looks(cells):
    """Return how cells are written: bold or not, the format of numbers, and where they stand."""
    return {(cell.font.b, cell.number_format, cell.alignment.horizontal) for cell in cells}


def test_sheets_are_printed_across_one_page_with_their_name_and_page_at_the_foot(sheet):
    setup, margins = sheet.page_setup, sheet.page_margins
    assert (setup.orientation, sheet.sheet_properties.pageSetUpPr.fitToPage) == ("landscape", True)
    # ECMA-376, part 1, 18.3.1.63: left out means 1, and 0 means as many pages as there are
    assert (setup.fitToWidth or 1, setup.fitToHeight) == (1, 0)
    assert (sheet.oddFooter.left.text, sheet.oddFooter.right.text) == ("&A", "&P / &N")
    # in the middle of the inch that is left above and below
    assert (margins.top, margins.bottom, margins.header, margins.footer) == (1, 1, 0.5, 0.5)


def test_headings_come_again_on_every_page_and_no_grid_is_shown(sheet):
    row = HEADINGS[sheet.title]
    assert sheet.print_title_rows == f"${row}:${row}"
    assert sheet.sheet_view.showGridLines is False


def test_every_text_can_be_read_in_one_font_and_every_line_is_thin(sheet):
    cells = [cell for row in sheet.iter_rows() for cell in row if cell.has_style]
    assert {cell.font.name for cell in cells} == {"Calibri"}
    assert {style for cell in cells for style in edges(cell)} == {None, "thin"}
    for ink, tone in {(cell.font.color.rgb, ground(cell)) for cell in cells}:
        # WCAG 2.1, success criterion 1.4.3
        assert Color(f"#{ink[2:]}").contrast(tone, method="wcag21") >= 4.5


def test_columns_are_wide_enough_for_their_headings_and_none_is_set_beyond_the_last(sheet):
    heads, wide = sheet[HEADINGS[sheet.title]], widths(sheet)
    assert list(wide) == list(range(1, len(heads) + 1))
    assert all(wide[cell.column] >= len(str(cell.value)) + 2 for cell in heads)


def test_the_tally_needs_not_be_made_smaller_to_fit_the_paper(tally):
    # a digit is 7 pixels wide (ECMA-376, part 1, 18.3.1.13), an inch 96; Letter, less its margins
    assert sum(widths(tally).values()) * 7 / 96 <= 11 - 2 * 0.75
    # up to 64 letters are shown of what a card says
    assert widths(tally)[3] >= 64


def test_the_title_is_the_first_cell_and_stands_out_and_no_row_cuts_its_letters(sheet):
    for row in range(1, sheet.max_row + 1):
        # 1.2 times the size of letters: common practice; 15 points where no height is told
        height = sheet.row_dimensions[row].height or 15
        assert height >= 1.2 * sheet.cell(row, 1).font.size
    assert sheet["A1"].value.endswith(": Shore · deck 1")
    assert sheet["A1"].font.b
    assert sheet["A1"].font.size >= 1.5 * sheet["A2"].font.size


def test_rows_to_write_in_are_airy_that_of_sums_is_higher_and_that_of_the_title_highest(tally):
    heights = [tally.row_dimensions[row].height for row in (2, 3, *ROWS)]
    assert min(heights) >= 1.5 * tally["A6"].font.size
    assert tally.row_dimensions[1].height > tally.row_dimensions[SUMS].height > max(heights)


def test_headings_stand_in_order_and_those_of_columns_to_fill_in_are_darker(tally, guides):
    told = ["Card", "Team", "On the card", "Tries", "Right", "Share right"]
    assert texts(tally[HEADS]) == told
    assert texts(guides[HEADS]) == ["Team", "Paper", "Right", 1, 2, 3, 4, 5, 6]
    assert light(tally[HEADS][3:5]) < light([*tally[HEADS][:3], tally["F5"]]) < 1
    assert light(guides[HEADS][3:]) < light(guides[HEADS][:3]) < 1
    assert looks(guides[HEADS][3:]) == {(True, "General", "center")}


@pytest.mark.parametrize(
    ("teams", "heads"), [(1, ["Card", "Team", "On the card"]), (2, ["Card", "On the card"])]
)
def test_two_teams_with_the_same_cards_share_the_rows(teams, heads):
    recipe = Recipe("Shore", TEAMS[:teams], deal=Dealing.COPIES)
    sheet = written(make_deck(recipe, items(4), number=1, seed="s"))["Tally"]
    assert texts(sheet[HEADS]) == [*heads, "Tries", "Right", "Share right"]
    assert sheet.max_row == HEADS + 4


def test_sums_of_the_tally_stand_above_their_columns_in_bold(tally):
    share = '=IF(N(D{0})>0,N(E{0})/D{0},"")'
    sums = ["=SUM(D6:D27)", "=SUM(E6:E27)", share.format(SUMS)]
    assert texts(tally[SUMS]) == [None, None, "All together", *sums]
    assert looks([tally["C4"]]) == {(True, "@", "right")}
    assert looks(tally["D4:E4"][0]) == {(True, "0", "center")}
    assert looks([tally["F4"]]) == {(True, "0%", "center")}
    below = [tally.cell(row, 6) for row in ROWS]
    assert texts(below) == [share.format(row) for row in ROWS]
    assert looks(below) == {(False, "0%", "center")}


def test_a_dark_line_runs_above_each_pile_but_the_first(tally):
    assert [tally.cell(row, 2).value for row in PILES.values()] == list(PILES)
    for row in ROWS:
        assert dark_above(tally[row]) == [row in {11, 16, 22}] * 6


def test_cells_for_counts_are_framed_and_the_others_underlined(tally):
    for row in ROWS:
        *told, tries, right, share = tally[row]
        assert [edges(cell) for cell in (tries, right)] == [["thin"] * 4] * 2
        assert looks([tries, right]) == {(False, "General", "center")}
        assert [edges(cell)[1:] for cell in (*told, share)] == [["thin", None, None]] * 4


def test_only_counts_are_taken_and_more_right_than_tries_is_tinted(tally):
    (taken,) = tally.data_validations.dataValidation
    assert (str(taken.sqref), taken.type) == ("D6:E27", "whole")
    assert (taken.operator, taken.formula1) == ("greaterThanOrEqual", "0")
    (area,) = tally.conditional_formatting
    (rule,) = area.rules
    assert (str(area.sqref), rule.formula) == ("D6:E27", ["N($E6)>N($D6)"])
    tint = Color(f"#{rule.dxf.fill.bgColor.rgb[2:]}")
    # a red, and light enough for letters: WCAG 2.1, success criterion 1.4.3
    assert tint["red"] > max(tint["green"], tint["blue"]) + 0.1
    assert tint.contrast("black", method="wcag21") >= 4.5


def test_columns_of_blanks_are_narrow_and_their_row_is_low_where_no_parts_are_told(guides):
    parted = written(for_class(12))["Study guides"]
    assert parted["C5"].value == "Part 1\n1"
    assert widths(guides)[4] < widths(parted)[3]
    assert guides.row_dimensions[HEADS].height < parted.row_dimensions[HEADS].height


def test_marks_are_taken_for_the_blanks_that_a_guide_has_and_the_rest_is_greyed(guides):
    (taken,) = guides.data_validations.dataValidation
    assert str(taken.sqref).split() == ["D7:H12", "D14:H19", "D21:I26", "D28:I33"]
    for team, (first, last, own) in PAPERS.items():
        for number, row in enumerate(range(first, last + 1), start=1):
            _team, paper, score, *marks = guides[row]
            has = [n < own for n in range(6)]
            assert texts(guides[row][:2]) == [team, number]
            assert [edges(cell) == ["thin"] * 4 for cell in marks] == has
            assert [ground(cell) == "#FFFFFF" for cell in marks] == has
            assert looks([score]) == {(False, "0", "center")}
            assert (edges(paper), paper.font.size) == ([None, "thin", None, None], 12)


def test_means_stand_above_the_papers_in_bold_those_of_blanks_in_per_cent(guides):
    for team, (first, last, own) in PAPERS.items():
        row = guides[first - 1]
        means = [
            f'=IF(COUNT({letter}{first}:{letter}{last})=0,"",AVERAGE({letter}{first}:{letter}{last}))'
            for letter in "CDEFGHI"[: own + 1]
        ]
        assert texts(row) == [team, "all", *means, *[None] * (6 - own)]
        assert looks(row[2:3]) == {(True, "0.0", "center")}
        assert looks(row[3 : 3 + own]) == {(True, "0%", "center")}
        assert dark_above(row) == [True] * 9


def test_a_blank_that_a_team_lacks_in_the_middle_leaves_those_after_it_their_means():
    # 50 cards: hands of 12, in parts of 6 and 6, and of 13, in parts of 7 and 6
    sheet = written(deck(50, students=4))["Study guides"]
    assert texts(sheet[HEADS])[9:11] == ["Part 1\n7", "Part 2\n1"]
    sums = [row for row in sheet.iter_rows(min_row=6) if row[1].value == "all"]
    bare = [[cell.column for cell in row if cell.value is None] for row in sums]
    assert sorted(bare) == [[], [], [10], [10]]


def test_rows_of_the_score_sheet_that_hold_sums_have_one_ground_from_end_to_end():
    sheet = written(in_rounds(6))["Score"]
    # Total, Place, and the sum below six questions
    assert all(light(sheet[row]) < 1 for row in (4, 5, 12))


def test_the_file_names_the_program_and_nobody_else(by_team):
    told = by_team.properties
    assert (told.creator, told.lastModifiedBy) == ("Fairdeal", "Fairdeal")
