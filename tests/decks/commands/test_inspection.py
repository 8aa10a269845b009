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


def test_copies_give_every_team_all_items_however_few(tmp_path):
    assert codes(tmp_path, {"Facts": ROWS}, teams="3", deal="copies") == []


def test_a_grade_from_the_command_line_stands_for_the_one_on_the_deck_sheet(tmp_path):
    hard = "Which microscopic photosynthetic organisms constitute phytoplankton communities there?"
    sheets = {
        "Facts": [("Prompt", "Answer"), (hard, "diatoms"), ("What digs?", "lugworm")],
        "Deck": [("Setting", "Value"), ("Reading grade", "18")],
    }
    assert codes(tmp_path, sheets, teams="2", reading_grade="3") == [("hard-to-read", "Facts A2")]
