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


@pytest.mark.parametrize(
    "above",
    [
        [["Team", "Colour"]],
        [["Teams"], ["Team", "Colour"]],
        [["Teams"], ["Team", "Paint"]],
        [["Teams"], ["Group", "Color"]],
        [["Teams"]],
        [["Team", "Paint"]],
    ],
)
def test_teams_have_their_colours_whatever_stands_above_them(read_sheets, above) -> None:
    rows = [*above, ["Otters", "red"], ["Herons", "green"]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    teams = [(row.name.text, row.colour and row.colour.text) for row in content.teams]
    assert teams == [("Otters", "red"), ("Herons", "green")]
    assert found(content) == []


def test_what_stands_beside_teams_under_another_heading_is_no_colour(read_sheets) -> None:
    rows = [["Team", "Points"], ["Otters", 3], ["Herons", 4]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert [(row.name.text, row.colour) for row in content.teams] == [
        ("Otters", None),
        ("Herons", None),
    ]


def test_no_student_is_read_below_a_title_either(read_sheets) -> None:
    rows = [["Teams"], ["Student", "Team"], ["Ann", "Otters"], ["Bob", "Herons"]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert [row.name.text for row in content.teams] == ["Otters", "Herons"]
    assert found(content) == [("class-list", "note", "Teams A2")]


@pytest.mark.parametrize(
    "above",
    [
        [["Exercise", "How many", "Gentler option"]],
        [["Exercises"], ["Exercise", "How many", "Gentler option"]],
        [["Exercises"], ["Move", "Reps", "Easier"]],
        [["Exercises"]],
        [["Move", "Reps", "Easier"]],
        [["Stretch", "Times", "Easier option"]],
        [],
    ],
)
def test_exercises_keep_what_stands_beside_them_below_a_title(read_sheets, above) -> None:
    rows = [*above, ["Wade on the spot", "20 steps", "slowly; sitting"], ["Preen", 5, "once; sit"]]
    content = read_sheets({"Facts": FACTS, "Exercises": rows})
    assert [
        (row.name.text, row.how_many and row.how_many.text, row.gentler and row.gentler.text)
        for row in content.exercises
    ] == [("Wade on the spot", "20 steps", "slowly; sitting"), ("Preen", "5", "once; sit")]
    assert found(content) == []


def test_a_title_above_plain_teams_is_no_team(read_sheets) -> None:
    teams = [["Teams of 4C"], ["Otter", "blue"], ["Heron", "red"]]
    content = read_sheets({"Facts": FACTS, "Teams": teams})
    assert [row.name.text for row in content.teams] == ["Otter", "Heron"]
    content = read_sheets({"Facts": FACTS, "Teams": [["Tern"], ["Otter"], ["Heron", "red"]]})
    assert [row.name.text for row in content.teams] == ["Tern", "Otter", "Heron"]
