"""Teams sheets that are class lists: the teams are read, and no student."""

import pytest

from cards.checking import check

FACTS = [["Prompt", "Answer"], ["Tides a day", 2], ["Legs of a crab", 10]]


def teams(content):
    return [(row.name.text, row.colour and row.colour.text) for row in content.teams]


def found(content):
    return [(one.code, str(one.severity), str(one.place)) for one in check(content, ())]


@pytest.mark.parametrize("students", ["Name", "Student", "Students", "First name", "Élève"])
def test_the_teams_of_a_class_list_come_once_each_in_order(read_sheets, students) -> None:
    rows = [[students, "Team"], ["Ann", "Otters"], ["Bob", "Herons"], ["Cy", "otters"]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert teams(content) == [("Otters", None), ("Herons", None)]
    assert found(content) == [("class-list", "note", "Teams A1")]
    assert "students’ names are not read" in content.findings[0].wrong


def test_the_team_has_the_first_colour_beside_it(read_sheets) -> None:
    rows = [
        ["Team", "Student", "Colour"],
        ["Otters", "Ann", None],
        ["Herons", "Bob", "red"],
        ["Otters", "Cy", "blue"],
        ["Herons", "Dee", "green"],
        [None, "Eve", None],
    ]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert teams(content) == [("Otters", "blue"), ("Herons", "red")]
    assert found(content) == [("class-list", "note", "Teams B1")]


@pytest.mark.parametrize("sheet", ["Teams", "Group", "Groups"])
def test_numbers_are_teams_called_by_them(read_sheets, sheet) -> None:
    rows = [["Student", "Group"], ["Ann", 1], ["Bob", 2], ["Cy", 1], ["Dee", 2]]
    content = read_sheets({"Facts": FACTS, sheet: rows})
    assert teams(content) == [("1", None), ("2", None)]
    assert found(content) == [("class-list", "note", f"{sheet} A1")]


def test_names_are_teams_where_nothing_else_is(read_sheets) -> None:
    rows = [["Name", "Colour"], ["Otters", "blue"], ["Herons", None]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert teams(content) == [("Otters", "blue"), ("Herons", None)]
    assert found(content) == []


def test_a_team_twice_without_students_stays_twice(read_sheets) -> None:
    rows = [["Team", "Colour"], ["Otters", "blue"], ["Otters", "red"]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert teams(content) == [("Otters", "blue"), ("Otters", "red")]


def test_a_number_of_students_is_no_list_of_them(read_sheets) -> None:
    rows = [["Team", "Colour", "Students"], ["Otters", "blue", 6], ["Otters", "red", 7]]
    content = read_sheets({"Facts": FACTS, "Teams": rows})
    assert len(content.teams) == 2
    assert found(content) == []
