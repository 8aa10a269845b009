"""The blank workbook, opened with the library that wrote it."""

import io

import pytest
from openpyxl import load_workbook

from cards.reading import read
from cards.workbook.blank import blank_workbook
from cards.workbook.offers import Offers, SettingOffer

OFFERS = Offers(
    settings=(
        SettingOffer("Paper", "a4", "The paper", "letter or a4", ("letter", "a4")),
        SettingOffer("Title", "", "The name on every page", "a text", ()),
    ),
    colours={"blue": "#0072B2", "yellow": "#E0B000"},
    most_teams=12,
)
CONTENT = ("Vocabulary", "Facts", "Questions", "Details")


@pytest.fixture(scope="module")
def blank():
    return load_workbook(io.BytesIO(blank_workbook("Shore.xlsx", OFFERS)))


@pytest.fixture(scope="module")
def example():
    return load_workbook(io.BytesIO(blank_workbook("Shore.xlsx", OFFERS, example=True)))


def lists_of(sheet):
    return {
        str(offered.sqref): offered.formula1.strip('"').split(",")
        for offered in sheet.data_validations.dataValidation
    }


def test_the_sheets_stand_in_the_order_of_work_with_the_explanation_in_front(blank):
    assert blank.sheetnames == ["Start here", *CONTENT, "Teams", "Exercises", "Deck"]
    assert blank.active.title == "Start here"


@pytest.mark.parametrize(
    ("sheet", "headings"),
    [
        ("Vocabulary", ["Word", "Meaning", "Topic", "Level", "Also right", "Team", "Picture"]),
        ("Facts", ["Prompt", "Answer", "Topic", "Level", "Also right", "Team", "Picture"]),
        (
            "Questions",
            [
                "Question",
                "Answer",
                "Wrong answers",
                "Topic",
                "Level",
                "Also right",
                "Team",
                "Picture",
            ],
        ),
        ("Details", ["Topic", "Heading", "Detail"]),
        ("Teams", ["Team", "Colour"]),
        ("Exercises", ["Exercise", "How many", "Gentler option", "Effort"]),
        ("Deck", ["Setting", "Value", "What it does"]),
    ],
)
def test_every_heading_has_a_note_and_stays_in_sight(blank, sheet, headings):
    sheet = blank[sheet]
    assert [cell.value for cell in sheet[1]] == headings
    assert all(cell.comment and cell.comment.text for cell in sheet[1])
    assert all(cell.font.bold for cell in sheet[1])
    assert sheet.freeze_panes == "A2"
    assert sheet.print_title_rows == "$1:$1"


@pytest.mark.parametrize("sheet", [*CONTENT, "Teams", "Exercises", "Deck"])
def test_what_is_typed_stays_as_it_is_because_every_column_holds_text(blank, sheet):
    sheet = blank[sheet]
    formats = {column: sheet.column_dimensions[column].number_format for column in "AB"}
    assert formats == {"A": "@", "B": "@"}
    assert {cell.number_format for row in sheet for cell in row} == {"@"}


def test_levels_colours_efforts_and_choices_can_be_picked_from_lists(blank):
    assert lists_of(blank["Vocabulary"]) == {"D2:D501": ["easy", "medium", "hard"]}
    assert lists_of(blank["Questions"]) == {"E2:E501": ["easy", "medium", "hard"]}
    assert lists_of(blank["Teams"]) == {"B2:B13": ["blue", "yellow"]}
    assert lists_of(blank["Exercises"]) == {"D2:D501": ["gentle", "moderate", "strong"]}
    assert lists_of(blank["Deck"]) == {"B2": ["letter", "a4"]}


def test_the_settings_stand_on_the_deck_sheet_with_what_they_are_for(blank):
    rows = [tuple(cell.value for cell in row) for row in blank["Deck"].iter_rows(min_row=2)]
    assert rows == [("Paper", "a4", "The paper."), ("Title", None, "The name on every page.")]


def test_the_explanation_has_ten_lines_that_name_the_file_and_link_to_the_sheets(blank):
    sheet = blank["Start here"]
    assert sheet.max_row == 2 + 10
    assert 'fairdeal check "Shore.xlsx"' in sheet["B11"].value
    linked = {cell.value: cell.hyperlink.location for cell in sheet["A"] if cell.hyperlink}
    assert linked == {name: f"'{name}'!A2" for name in blank.sheetnames[1:]}


def test_every_exercise_can_be_done_sitting_and_has_an_effort_from_the_list(blank):
    rows = list(blank["Exercises"].iter_rows(min_row=2, values_only=True))
    assert 8 <= len(rows) <= 10
    assert all("sitting" in gentler for _, _, gentler, _ in rows)
    assert {effort for *_, effort in rows} == {"gentle", "moderate", "strong"}


def test_the_example_fills_every_sheet_and_the_blank_one_none(blank, example):
    for name in (*CONTENT, "Teams"):
        assert blank[name].max_row == 1
        assert example[name].max_row > 3


def test_the_filled_example_reads_without_a_finding(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.write_bytes(blank_workbook(path.name, OFFERS, example=True))
    content = read(path)
    assert content.findings == ()
    assert len(content.items) == 18
    assert [row.name.text for row in content.teams] == ["Heron", "Otter", "Samphire", "Curlew"]
    assert "1/2" in [item.answer for item in content.items]


def test_one_row_typed_into_the_blank_workbook_makes_one_item_and_no_finding(tmp_path):
    path = tmp_path / "Shore.xlsx"
    path.write_bytes(blank_workbook(path.name, OFFERS))
    book = load_workbook(path)
    book["Facts"]["A2"], book["Facts"]["B2"] = "Mussels are tied to rock by …", "threads"
    book.save(path)
    content = read(path)
    assert [item.answer for item in content.items] == ["threads"]
    assert content.findings == ()


def test_the_file_is_small_and_holds_no_rows_that_are_blank(blank):
    assert len(blank_workbook("Shore.xlsx", OFFERS)) < 40_000
    assert blank["Vocabulary"].max_row == 1
