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
