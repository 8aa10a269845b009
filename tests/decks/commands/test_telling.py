"""What the terminal says where nothing can be built."""

import pytest
from support.workbooks import fill

from decks.commands.production import ContentError, make

FACTS = {"Facts": [("Prompt", "Answer"), ("What digs?", "lugworm")]}
DETAILS = {"Details": [("Topic", "Heading", "Detail"), ("Tides", "How often", "Twice a day")]}


@pytest.mark.parametrize(
    ("sheets", "activity", "needed"),
    [
        (FACTS, "organizer", "a Details sheet with the headings Topic, Heading and Detail"),
        (DETAILS, "review", "on a Vocabulary, Facts or Questions sheet"),
        (DETAILS, "stations", "set Activity to organizer"),
    ],
)
def test_the_sheet_that_an_activity_needs_is_named(tmp_path, sheets, activity, needed):
    path = tmp_path / "shore.xlsx"
    fill(sheets).save(path)
    with pytest.raises(ContentError, match="nothing was built") as refused:
        make(path, {"activity": activity, "teams": "1"}, out=tmp_path, skip_errors=False)
    assert needed in str(refused.value)
    assert [file.name for file in tmp_path.iterdir()] == ["shore.xlsx"]


def test_rows_set_to_a_team_are_told_of_where_all_teams_have_the_cards(tmp_path):
    rows = [
        ("Prompt", "Answer", "Team"),
        ("What digs?", "lugworm", "Heron"),
        ("Wades?", "heron", ""),
    ]
    path = tmp_path / "shore.xlsx"
    fill({"Facts": rows, "Teams": [("Team",), ("Heron",), ("Otter",)]}).save(path)
    said = "\n".join(make(path, {"activity": "rounds"}, out=tmp_path, skip_errors=False))
    assert "the Team column has no effect" in said
    assert "Every team gets every card" not in said
