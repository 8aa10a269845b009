"""Cells of the Teams, Deck and Exercises sheets that do not say what their teacher meant."""

from datetime import date
from pathlib import Path

import pytest
from openpyxl.styles import Font
from support.workbooks import fill

from cards.checking import check
from cards.reading import read
from decks.settings import resolve

FACTS = [["Prompt", "Answer"], ["Tides a day", 2], ["Legs of a crab", 10]]
DECK = ["Setting", "Value"]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


def test_formulas_without_a_value_are_errors_and_not_read(read_sheets) -> None:
    content = read_sheets(
        {
            "Facts": FACTS,
            "Teams": [["Team", "Colour"], ["=Names!A1", "blue"], ["Otters", "=Names!B2"]],
            "Deck": [DECK, ["Title", '=A9&" review"'], ["Paper", "a4"]],
            "Exercises": [
                ["Exercise", "How many", "Gentler option"],
                ["=Names!C1", "3", "step"],
                ["Hop", "=Names!D1", "step"],
            ],
        }
    )
    places = ["Deck B2", "Exercises A2", "Exercises B3", "Teams A2", "Teams B3"]
    assert found(content) == [("formula-without-value", "error", place) for place in places]
    assert [(row.name.text, row.colour) for row in content.teams] == [("Otters", None)]
    assert [row.name.text for row in content.settings] == ["Paper"]
    assert [(row.name.text, row.how_many) for row in content.exercises] == [("Hop", None)]


@pytest.mark.parametrize(("sheet", "cell"), [("Teams", "A2"), ("Deck", "B2"), ("Exercises", "A2")])
def test_what_does_not_work_out_is_an_error(tmp_path: Path, sheet: str, cell: str) -> None:
    rows = {
        "Teams": [["Team"], ["Otters"]],
        "Deck": [DECK, ["Title", "Shore"]],
        "Exercises": [["Exercise", "Gentler option"], ["Hop", "step"]],
    }
    book = fill({"Facts": FACTS, **rows})
    book[sheet][cell].value = "#REF!"
    book[sheet][cell].data_type = "e"
    book.save(tmp_path / "Shore.xlsx")
    content = read(tmp_path / "Shore.xlsx")
    assert found(content)[0] == ("error-value", "error", f"{sheet} {cell}")
    texts = [row.name.text for row in (*content.teams, *content.exercises)]
    assert "#REF!" not in [*texts, *(row.value.text for row in content.settings)]


def test_what_is_struck_out_is_read_and_told_of(tmp_path: Path) -> None:
    exercises = [["Exercise", "Gentler option"], ["Hop", "step"]]
    deck = [DECK, ["Paper", "A4"], ["Cards", 2], ["Shuffle", None]]
    book = fill({"Facts": FACTS, "Deck": deck, "Exercises": exercises})
    for sheet, cell in (("Deck", "A2"), ("Deck", "B2"), ("Deck", "A4"), ("Exercises", "B2")):
        book[sheet][cell].font = Font(strike=True)
    book.save(tmp_path / "Shore.xlsx")
    content = read(tmp_path / "Shore.xlsx")
    assert [row.name.text for row in content.settings] == ["Paper", "Cards"]
    places = ["Deck A2", "Deck B2", "Exercises B2"]
    assert found(content) == [("struck-out", "warning", place) for place in places]


def test_what_is_not_read_may_come_to_nothing(read_sheets) -> None:
    teams = [["Team", "Colour", "Points"], ["Otters", "blue", "=SUM(D:D)"], ["Herons", "red"]]
    deck = [[*DECK, "Remark"], ["Paper", "a4", "=1/0"]]
    assert found(read_sheets({"Facts": FACTS, "Teams": teams, "Deck": deck})) == []


def test_a_date_among_exercises_is_told_of_as_on_a_content_sheet(read_sheets) -> None:
    rows = [["Exercise", "How many", "Gentler option"], ["Hop", date(2026, 10, 8), "step"]]
    content = read_sheets({"Facts": FACTS, "Exercises": rows})
    assert found(content) == [("turned-into-date", "warning", "Exercises B2")]


# so a US spreadsheet stores what is typed as 5/3/2, 1/1/1, 8/10 and 10-12
@pytest.mark.parametrize(
    ("setting", "day"),
    [
        ("Mix", date(2002, 5, 3)),
        ("Points", date(2001, 1, 1)),
        ("Target", date(2026, 8, 10)),
        ("Cards", date(2026, 10, 12)),
    ],
)
def test_a_setting_that_was_turned_into_a_date_is_an_error(tmp_path, setting, day) -> None:
    book = fill({"Facts": FACTS, "Deck": [DECK, [setting, day]]})
    book["Deck"]["B2"].number_format = "mm-dd-yy"
    book.save(tmp_path / "Shore.xlsx")
    _recipe, (finding,) = resolve(read(tmp_path / "Shore.xlsx"), {})
    assert (finding.code, str(finding.severity), str(finding.place)) == (
        *("turned-into-date", "error"),
        "Deck B2",
    )
    assert finding.mend.startswith("Format the cell as text first, then write ")


def test_a_mix_that_was_turned_into_a_date_can_be_written_with_semicolons(read_sheets) -> None:
    deck = [DECK, ["Mix", date(2002, 5, 3)]]
    _recipe, (finding,) = resolve(read_sheets({"Facts": FACTS, "Deck": deck}), {})
    assert "as 40/40/20 or 5; 3; 2" in finding.mend
    deck = [DECK, ["Mix", "5; 3; 2"]]
    recipe, findings = resolve(read_sheets({"Facts": FACTS, "Deck": deck}), {})
    assert (recipe.mix, findings) == ((5, 3, 2), ())


def test_a_title_may_be_a_date(read_sheets) -> None:
    deck = [DECK, ["Title", date(2026, 5, 3)]]
    assert resolve(read_sheets({"Facts": FACTS, "Deck": deck}), {})[1] == ()
