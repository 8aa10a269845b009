"""The workbook that marks are written into."""

import csv
import io
import os
import re
import subprocess
import sys
import zipfile
from pathlib import Path

import pytest
from openpyxl import load_workbook
from support.items import item
from support.marking import TEAMS, Book, deck, for_class, in_rounds, items
from support.office import AS_SHOWN, converted, needs_office

from decks.activities import make_deck
from decks.marks.forms import blanks_of
from decks.marks.sheet import marks_workbook
from decks.recipe import Activity, Dealing, GuideFor, Recipe

ALL = "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true,false,false,false,-1"


def sheets_of(deck):
    return load_workbook(io.BytesIO(marks_workbook(deck)))


def column(sheet, heading):
    heads = [str(cell.value) for cell in sheet[5]]
    return [row[heads.index(heading)].value for row in sheet.iter_rows(min_row=6)]


def test_a_dealt_deck_has_a_row_for_each_card_with_its_team():
    made = deck()
    sheet = sheets_of(made)["Tally"]
    assert column(sheet, "Card") == [int(card.label) for card in made.cards]
    assert column(sheet, "Team") == [made.owners[card.owner].name for card in made.cards]
    assert column(sheet, "On the card") == [card.item.prompt for card in made.cards]


def test_where_every_team_has_the_same_cards_an_item_has_one_row():
    sheet = sheets_of(for_class())["Tally"]
    assert column(sheet, "Card") == list(range(1, 25))
    assert "Team" not in [cell.value for cell in sheet[5]]


@pytest.mark.parametrize(
    ("activity", "word"), [(Activity.ROUNDS, "Round"), (Activity.STATIONS, "Set")]
)
def test_where_cards_are_nobodys_the_round_or_set_is_told(activity, word):
    sheet = sheets_of(deck(activity=activity))["Tally"]
    assert {name.split()[0] for name in column(sheet, word)} == {word}


def test_a_gathered_card_is_told_by_its_word():
    made = deck(activity=Activity.COLLECT)
    sheet = sheets_of(made)["Tally"]
    assert column(sheet, "On the card") == [card.item.answer for card in made.cards]


def test_the_class_guide_has_a_row_for_every_student_and_a_column_for_every_blank():
    made = for_class(students=28)
    sheet = sheets_of(made)["Study guides"]
    assert column(sheet, "Paper") == ["all", *range(1, 29)]
    heads = [cell.value for cell in sheet[5]][2:]
    numbers = [f"Part {blank.part}\n{blank.number}" for blank in blanks_of(made.guides[0])]
    assert heads == numbers


@pytest.mark.parametrize("made", [for_class(students=28), deck(6)], ids=["parts", "one part"])
def test_headings_say_by_their_ground_what_is_to_be_filled_in_and_none_is_cut_off(made):
    sheet = sheets_of(made)["Study guides"]
    told = [cell for cell in sheet[5] if cell.value in {"Team", "Paper", "Right"}]
    filled_in = [cell for cell in sheet[5] if cell not in told]
    grounds = [{cell.fill.fgColor.rgb for cell in cells} for cells in (told, filled_in)]
    assert [len(each) for each in grounds] == [1, 1]
    assert grounds[0] != grounds[1]
    for cell in sheet[5]:
        lines = str(cell.value).split("\n")
        # a column's width counts digits; from line to line 1.2 times the size: common practice
        assert sheet.column_dimensions[cell.column_letter].width >= max(map(len, lines)) + 1
        assert sheet.row_dimensions[5].height >= len(lines) * 1.2 * cell.font.size


def test_each_team_has_rows_for_its_share_of_the_students():
    sheet = sheets_of(deck(students=26))["Study guides"]
    # 26 students in 4 teams: up to 7 in a team
    assert column(sheet, "Paper") == ["all", *range(1, 8)] * 4
    assert column(sheet, "Team") == [team.name for team in TEAMS for _ in range(8)]


def test_a_blank_that_a_team_does_not_have_takes_no_mark():
    made = deck(22)  # hands of 6 and 5
    sheet = sheets_of(made)["Study guides"]
    (rule,) = sheet.data_validations.dataValidation
    short = next(guide for guide in made.guides if len(blanks_of(guide)) == 5)
    row = Book(made).row_of(sheet, short.team, 1)
    assert f"H{row}" in rule.sqref  # its fifth blank
    assert f"I{row}" not in rule.sqref
    assert (rule.type, rule.formula1) == ("list", '"1,0"')


def test_there_is_no_sheet_for_guides_where_there_are_none():
    assert sheets_of(in_rounds()).sheetnames == ["Tally", "Score"]
    assert sheets_of(deck(activity=Activity.STATIONS)).sheetnames == ["Tally"]


def test_no_name_is_asked_for_and_the_sheet_says_why():
    sheet = sheets_of(deck())["Study guides"]
    assert "no names" in sheet["A3"].value
    assert not any("name" in str(cell.value).lower() for cell in sheet[5])


def test_headings_stay_in_sight():
    book = sheets_of(for_class())
    assert book["Tally"].freeze_panes == "A6"
    assert book["Study guides"].freeze_panes == "C6"
    assert sheets_of(deck())["Study guides"].freeze_panes == "D6"


@pytest.mark.parametrize("start", ["=", "+", "-", "@"])
def test_text_that_looks_like_a_formula_stays_text(start):
    odd = [item(f"{start}1+1", f"{start}SUM(A1:A9)", row=n) for n in (2, 3)]
    sheet = sheets_of(for_class(chosen=odd))["Tally"]
    cells = [sheet.cell(row, 2) for row in (6, 7)]
    assert [(cell.value, cell.data_type) for cell in cells] == [(f"{start}1+1", "s")] * 2


@pytest.mark.parametrize(
    "text",
    ["<r><t>a</t></r>", "<r>a&b</r>", "{=SUM(A1)}", "https://example.org/x", "internal:Tally!A1"],
)
def test_text_that_looks_like_markup_or_a_link_stays_text(text):
    data = marks_workbook(for_class(chosen=[item(text, f"{text} ", row=n) for n in (2, 3)]))
    sheet = load_workbook(io.BytesIO(data))["Tally"]
    cells = [sheet.cell(row, 2) for row in (5, 6, 7)]
    assert [cell.value for cell in cells] == ["On the card", text, text]
    assert {(cell.data_type, cell.hyperlink) for cell in cells} == {("s", None)}
    with zipfile.ZipFile(io.BytesIO(data)) as archive:
        assert not any(b"External" in archive.read(name) for name in archive.namelist())


def test_the_sums_reach_over_all_rows_and_no_further():
    book = sheets_of(deck(22, students=24))
    tally, guides = book["Tally"], book["Study guides"]
    # 22 cards below row 5
    assert (tally["D4"].value, tally["E4"].value) == ("=SUM(D6:D27)", "=SUM(E6:E27)")
    # 6 papers below the row of sums
    assert guides["D6"].value == '=IF(COUNT(D7:D12)=0,"",AVERAGE(D7:D12))'
    assert guides["C7"].value == '=IF(COUNT(D7:I7)=0,"",SUM(D7:I7))'
    formulas = [cell for sheet in book for row in sheet.iter_rows() for cell in row]
    ours = re.compile(r"=(SUM|IF)\([A-Z0-9:(),\"=>/ ]+\)(/[A-Z0-9]+)?")
    assert all(ours.fullmatch(cell.value) for cell in formulas if cell.data_type == "f")


def test_the_same_deck_gives_the_same_bytes_whatever_the_hash_seed():
    code = (
        "import sys, hashlib; sys.path[:0] = ['tests', '.']; from support.marking import deck;"
        "from decks.marks.sheet import marks_workbook;"
        "print(hashlib.sha256(marks_workbook(deck())).hexdigest())"
    )
    root = Path(__file__).parents[3]
    digests = {
        subprocess.run(
            [sys.executable, "-c", code],
            cwd=root,
            env=os.environ | {"PYTHONHASHSEED": seed},
            capture_output=True,
            text=True,
            check=True,
        ).stdout
        for seed in ("0", "7")
    }
    assert len(digests) == 1


def test_what_formulas_come_to_is_there_for_programs_that_do_not_reckon():
    book = load_workbook(io.BytesIO(marks_workbook(deck())), data_only=True)
    assert book["Tally"]["D4"].value == 0
    assert book["Tally"]["F6"].value in {"", None}
    assert book["Study guides"]["D6"].value in {"", None}


@needs_office
def test_a_spreadsheet_program_reckons_what_is_filled_in(tmp_path):
    made = for_class(6)
    book = Book(made)
    book.count(1, 5, 4)
    book.count(2, 3, 0)
    book.paper([1, 0, 1, 1, 0, 1], 1)
    book.paper([1, 1, 1, 0, 0, None], 2)
    path = book.saved(tmp_path / "marks.xlsx")
    converted(path, ALL, tmp_path)
    tally, guides = (
        list(csv.reader(io.StringIO((tmp_path / f"marks-{name}.csv").read_text("utf-8"))))
        for name in ("Tally", "Study guides")
    )
    assert tally[3][2:] == ["8", "4", "50%"]
    assert tally[5][-1] == "80%"
    assert tally[6][-1] == "0%"
    assert tally[7][-1] == ""
    # means of 4 and 3 points; of the last blank only one paper was marked
    assert guides[5] == ["all", "3.5", "100%", "50%", "100%", "50%", "0%", "100%"]
    assert [row[1] for row in guides[6:9]] == ["4", "3", ""]


@needs_office
def test_another_program_opens_it_blank(tmp_path):
    path = tmp_path / "marks.xlsx"
    path.write_bytes(marks_workbook(deck()))
    shown = converted(path, AS_SHOWN, tmp_path).read_text(encoding="utf-8")
    assert "Err:" not in shown
    assert "#" not in shown


def test_a_deck_of_one_team_still_tells_the_team():
    recipe = Recipe("Shore", TEAMS[:1], deal=Dealing.COPIES, guide=GuideFor.CLASS)
    made = make_deck(recipe, items(4), number=1, seed="s")
    assert column(sheets_of(made)["Tally"], "Team") == ["Heron"] * 4
