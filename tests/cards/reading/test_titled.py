"""Sheets beside the content with a title above their headings, or with other headings."""

import pytest

from cards.checking import check

FACTS = [["Prompt", "Answer"], ["Tides a day", 2], ["Legs of a crab", 10]]
SETTINGS = [["Teams", 2], ["Paper", "A4"]]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


def settings(content):
    return [(row.name.text, row.value.text) for row in content.settings]


@pytest.mark.parametrize(
    "above",
    [
        [["Setting", "Value"]],
        [["Settings"], ["Setting", "Value"]],
        [["Options"], ["Setting", "Value"]],
        [["Settings"], ["Setting", "Choice"]],
        [["Settings"]],
        [["Setting", "Choice"]],
        [["Setting", "My choice"]],
        [["Setting", None]],
        [["Option", "Setting"]],
        [["Name", "Setting"]],
        [["Einstellung", "Auswahl"]],
        [],
    ],
)
def test_settings_are_read_whatever_heads_their_values(read_sheets, above) -> None:
    content = read_sheets({"Facts": FACTS, "Deck": [*above, *SETTINGS]})
    assert settings(content) == [("Teams", "2"), ("Paper", "A4")]
    assert found(content) == []


def test_what_stands_between_a_setting_and_its_value_is_no_value(read_sheets) -> None:
    rows = [["Setting", "What it is for", "Value"], ["Paper", "printing", "A4"]]
    assert settings(read_sheets({"Facts": FACTS, "Deck": rows})) == [("Paper", "A4")]


@pytest.mark.parametrize(
    "rows",
    [
        [["Teams: 2"], ["Paper: A4"]],
        [["Settings"], ["Teams = 2"]],
        [["Setting", None, None], ["Teams", None, 2], ["Paper", None, "A4"]],
    ],
)
def test_a_sheet_of_settings_without_a_pair_is_told_of(read_sheets, rows) -> None:
    content = read_sheets({"Facts": FACTS, "Deck": rows})
    assert settings(content) == []
    assert found(content) == [("nothing-set", "warning", "Deck")]


@pytest.mark.parametrize("rows", [[["Setting", "Value"], ["Teams"], ["Paper"]], [["Deck"]]])
def test_a_form_without_values_is_not_told_of(read_sheets, rows) -> None:
    assert found(read_sheets({"Facts": FACTS, "Deck": rows})) == []
