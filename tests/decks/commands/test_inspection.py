"""What is found in a file beside what stands in its rows."""

import pytest
from support.workbooks import fill

from decks.commands.inspection import inspect

ROWS = [("Prompt", "Answer"), ("What digs?", "lugworm"), ("What clings?", "limpet")]


def codes(tmp_path, sheets, **options):
    path = tmp_path / "shore.xlsx"
    fill(sheets).save(path)
    return [(one.code, str(one.place)) for one in inspect(path, options).findings]


def test_as_many_items_as_teams_are_enough(tmp_path):
    assert codes(tmp_path, {"Facts": ROWS}, teams="2") == []


@pytest.mark.parametrize(
    ("sheets", "place"),
    [
        ({"Facts": ROWS}, "Facts"),
        ({"Facts": ROWS, "Teams": [("Team",), ("Heron",), ("Otter",), ("Curlew",)]}, "Teams"),
    ],
)
def test_fewer_items_than_teams_are_found_before_any_deck_is_made(tmp_path, sheets, place):
    options = {} if "Teams" in sheets else {"teams": "3"}
    assert codes(tmp_path, sheets, **options) == [("fewer-items-than-teams", place)]


def test_where_there_is_nothing_to_ask_nothing_is_said_of_teams(tmp_path):
    details = [("Heading", "Detail"), ("Plants of the marsh", "Samphire stores salt")]
    assert "fewer-items-than-teams" not in dict(codes(tmp_path, {"Details": details}, teams="3"))


def test_copies_give_every_team_all_items_however_few(tmp_path):
    assert codes(tmp_path, {"Facts": ROWS}, teams="3", deal="copies") == []


@pytest.mark.parametrize("name", ["Reading grade", "Reading-grade", "READING  GRADE"])
def test_a_grade_is_heeded_however_its_setting_is_written(tmp_path, name):
    hard = "Which microscopic photosynthetic organisms constitute phytoplankton communities there?"
    sheets = {
        "Facts": [("Prompt", "Answer"), (hard, "diatoms"), ("What digs?", "lugworm")],
        "Deck": [("Setting", "Value"), (name, "3")],
    }
    assert codes(tmp_path, sheets, teams="2") == [("hard-to-read", "Facts A2")]


def test_a_grade_from_the_command_line_stands_for_the_one_on_the_deck_sheet(tmp_path):
    hard = "Which microscopic photosynthetic organisms constitute phytoplankton communities there?"
    sheets = {
        "Facts": [("Prompt", "Answer"), (hard, "diatoms"), ("What digs?", "lugworm")],
        "Deck": [("Setting", "Value"), ("Reading grade", "18")],
    }
    assert codes(tmp_path, sheets, teams="2", reading_grade="3") == [("hard-to-read", "Facts A2")]


@pytest.mark.parametrize(
    ("deck", "options", "place"),
    [
        ([("Card size", "medium"), ("Paper", "index-3x5")], {}, "Deck B2"),
        ([("Card size", "40 x 5 cm")], {}, "Deck B2"),
        ([("Card size", "400 x 100 mm")], {}, "Deck B2"),
        ([("Card size", "small"), ("Paper", "a4")], {"card_size": "430 x 30 mm"}, "--size"),
        ([("Paper", "index-3x5"), ("Margins", "40 mm")], {}, "Deck B3"),
        ([("Sides", "fold")], {"paper": "index-4x6", "card_size": "small"}, "--size"),
        ([], {"paper": "index-3x5", "margins": "40 mm"}, "--margins"),
    ],
)
def test_a_card_that_its_paper_cannot_hold_is_an_error_where_its_size_stands(
    tmp_path, deck, options, place
):
    sheets = {"Facts": ROWS, "Deck": [("Setting", "Value"), *deck]}
    assert codes(tmp_path, sheets, teams="2", **options) == [("card-too-large", place)]


@pytest.mark.parametrize(
    ("options", "wrong", "mend"),
    [
        (
            {"paper": "index-4x6", "card_size": "medium"},
            "A medium card of at least 120 × 85 mm does not fit on 4 × 6 in card.",
            "Small or full would fit, or a card of at most 131 × 73 mm; or take larger paper.",
        ),
        (
            {"card_size": "400 x 100 mm"},
            "A card of 400 × 100 mm does not fit on Letter.",
            # Letter on its side: 279.4 - 2 * 10.5 by 215.9 - 2 * 14, in whole millimetres
            (
                "Small, medium, large or full would fit, or a card of at most 258 × 187 mm; "
                "or take larger paper."
            ),
        ),
        (
            {"paper": "index-3x5", "margins": "40 mm"},
            "A full card does not fit on 3 × 5 in card.",
            "Take smaller margins, or larger paper.",
        ),
    ],
)
def test_a_card_that_is_too_large_is_told_what_would_fit(tmp_path, options, wrong, mend):
    path = tmp_path / "shore.xlsx"
    fill({"Facts": ROWS}).save(path)
    (found,) = inspect(path, {"teams": "2", **options}).deck_errors
    assert (found.wrong, found.mend) == (wrong, mend)


@pytest.mark.parametrize("paper", ["index-3x5", "a3", "a5", "tabloid", "legal"])
def test_a_paper_alone_is_enough(tmp_path, paper):
    assert codes(tmp_path, {"Facts": ROWS}, teams="2", paper=paper) == []
