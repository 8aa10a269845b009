"""Two plain columns, without headings."""

from collections.abc import Callable

import pytest

from cards.checking import check
from cards.content import Content
from cards.item import Kind

ReadSheets = Callable[..., Content]
ReadCsv = Callable[..., Content]


def codes(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def test_column_a_is_the_front_and_column_b_the_back(read_csv: ReadCsv) -> None:
    content = read_csv("Tides a day,2\nLegs of a crab,10\n", "numbers.csv")
    assert [(item.prompt, item.answer) for item in content.items] == [
        ("Tides a day", "2"),
        ("Legs of a crab", "10"),
    ]
    assert {item.kind for item in content.items} == {Kind.FACT}
    assert str(content.items[1].answer_place) == "numbers.csv B2"
    assert content.name == "numbers"
    assert codes(content) == []


@pytest.mark.parametrize("name", ["Sheet1", "Teams", "Deck", "Tabelle1", "Week 3"])
def test_a_workbook_with_one_plain_sheet_works_whatever_its_name(
    read_sheets: ReadSheets, name: str
) -> None:
    content = read_sheets({name: [["Tides a day", 2], ["Legs of a crab", 10]], "Sheet2": []})
    assert [item.answer for item in content.items] == ["2", "10"]
    assert codes(content) == []


def test_on_a_vocabulary_sheet_column_a_holds_the_words(read_sheets: ReadSheets) -> None:
    content = read_sheets({"Vocabulary": [["limpet", "a shellfish that clamps itself to rock"]]})
    [item] = content.items
    assert (item.answer, item.kind) == ("limpet", Kind.VOCABULARY)
    assert codes(content) == []


@pytest.mark.parametrize("topic", [[], ["Shore"]])
def test_on_a_details_sheet_the_heading_comes_before_the_detail(
    read_sheets: ReadSheets, topic: list[str]
) -> None:
    content = read_sheets({"Details": [[*topic, "Upper shore", "Dry for most of the day"]]})
    [item] = content.items
    assert (item.answer, item.kind) == ("Upper shore", Kind.DETAIL)
    assert [item.topic] == (topic or [""])
    assert codes(content) == []


def test_a_table_need_not_begin_in_the_corner(read_sheets: ReadSheets) -> None:
    rows = [[], [], [None, None, "Tides a day", 2], [None, None, "Legs of a crab", 10]]
    content = read_sheets({"Sheet1": rows})
    assert [str(item.prompt_place) for item in content.items] == ["Sheet1 C3", "Sheet1 C4"]
    assert codes(content) == []


def test_one_column_has_no_answers(read_csv: ReadCsv) -> None:
    content = read_csv("limpet\n\nheron\n")
    assert codes(content) == [("no-answer", "words.csv B1"), ("no-answer", "words.csv B3")]


def test_answers_much_longer_than_prompts_are_noted(read_csv: ReadCsv) -> None:
    content = read_csv(
        "limpet,a shellfish that clamps itself to rock\n"
        "spring tide,the highest of all high tides\n"
        "heron,a tall grey bird that wades\n"
    )
    assert codes(content) == [("answers-longer-than-prompts", "words.csv")]
    assert "column A is the front" in content.findings[0].wrong


def test_a_field_too_many_is_told_of_in_its_cell(read_csv: ReadCsv) -> None:
    content = read_csv("Legs of a crab,10\nBirds here,heron, tern, gull\nTides a day,2\n")
    assert codes(content) == [("extra-cell", "words.csv C2")]
    assert "quotation marks" in content.findings[0].mend


def test_a_field_more_than_the_headings_is_told_of_in_its_cell(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer\nBirds here,heron, tern\nTides a day,2\n")
    assert codes(content) == [("extra-cell", "words.csv C2")]


def test_a_whole_column_more_is_told_of_once(read_csv: ReadCsv) -> None:
    content = read_csv("limpet,lapa,animal\nheron,garza,animal\ntide,marea,sea\n")
    assert codes(content) == [("columns-without-headings", "words.csv")]


def test_sheets_of_unknown_names_are_content_where_there_is_no_other(
    read_sheets: ReadSheets,
) -> None:
    content = read_sheets(
        {
            "Read me": [["Print these on Monday."], ["Cut on Tuesday."]],
            "Week 1": [["Tides a day", "2"]],
            "Week 2": [["Legs of a crab", "10"]],
            "Teams": [["Heron"], ["Otter"]],
        }
    )
    assert [item.answer for item in content.items] == ["2", "10"]
    assert [row.name.text for row in content.teams] == ["Heron", "Otter"]
    assert codes(content) == [("sheet-left-out", "Read me")]


@pytest.mark.parametrize("marks", ["{}", "{}.", "{})"])
@pytest.mark.parametrize("first", [1, 7])
def test_a_column_that_only_numbers_the_rows_is_no_side_of_a_card(
    read_sheets: ReadSheets, marks: str, first: int
) -> None:
    sides = [["What digs?", "lugworm"], ["What clings?", "limpet"], ["What wades?", "heron"]]
    rows = [[marks.format(first + n), *row] for n, row in enumerate(sides)]
    content = read_sheets({"Sheet1": rows})
    assert [[item.prompt, item.answer] for item in content.items] == sides
    assert codes(content) == [("row-numbers", "Sheet1")]


@pytest.mark.parametrize(
    ("numbers", "front"),
    [
        ("Q", "Clue"),
        ("Q", "Prompt"),
        ("Ask", "Prompt"),
        ("Problem", "Clue"),
        ("Problem", "Q"),
        ("Fact", "Definition"),
    ],
)
def test_headed_numbers_of_rows_are_no_front_where_another_is_headed(
    read_sheets: ReadSheets, numbers: str, front: str
) -> None:
    sides = [["What digs?", "lugworm"], ["What clings?", "limpet"], ["What wades?", "heron"]]
    rows = [[numbers, front, "Answer"], *([n, *row] for n, row in enumerate(sides, 1))]
    content = read_sheets({"Sheet1": rows})
    assert [[item.prompt, item.answer] for item in content.items] == sides
    assert codes(content) == [("row-numbers", "Sheet1 A1")]


def test_numbers_are_the_fronts_where_nothing_else_is(read_sheets: ReadSheets) -> None:
    rows = [["Q", "Answer", "Topic"], [1, "one", "odd"], [2, "two", "even"], [3, "three", "odd"]]
    assert [item.prompt for item in read_sheets({"Sheet1": rows}).items] == ["1", "2", "3"]


def test_numbers_that_count_nothing_are_a_side(read_sheets: ReadSheets) -> None:
    rows = [[8, "legs", "crab"], [10, "arms", "squid"], [5, "rays", "starfish"]]
    content = read_sheets({"Sheet1": rows})
    assert [item.prompt for item in content.items] == ["8", "10", "5"]
    assert codes(content) == [("columns-without-headings", "Sheet1")]


INFO = [[f"info {n}", f"value {n}"] for n in range(13)]


def test_headings_far_below_rows_like_any_others_are_warned_of(read_sheets: ReadSheets) -> None:
    rows = [*INFO, ["Prompt", "Answer"], ["What digs?", "lugworm"]]
    content = read_sheets({"Shore": rows})
    assert codes(content) == [("headings-below", "Shore A14")]
    assert str(content.findings[0].severity) == "warning"


@pytest.mark.parametrize(
    "pair",
    [["question", "answer"], ["Front", "Back"], ["Prompt", "Question"], ["Clue 1", "Word 1"]],
)
def test_pairs_of_words_that_head_nothing_are_not_warned_of(
    read_sheets: ReadSheets, pair: list[str]
) -> None:
    assert codes(read_sheets({"Shore": [*INFO, pair, ["What digs?", "lugworm"]]})) == []
