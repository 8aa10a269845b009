"""Sheets laid out in ways that would lose content: each is read as it is meant, or told of."""

from pathlib import Path
from typing import Any

import pytest
from support.workbooks import fill

from cards.checking import check
from cards.content import Content
from cards.finding import UnusableFileError
from cards.reading import read


def read_sheets(folder: Path, sheets: dict[str, list[list[Any]]]) -> Content:
    path = folder / "Shore.xlsx"
    fill(sheets).save(path)
    return read(path)


def found(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


FACTS = [["Prompt", "Answer"], ["Tides a day", 2], ["Legs of a crab", 10]]


def test_a_second_table_beside_the_first_is_told_of(tmp_path: Path) -> None:
    beside = [
        ["Word", "Meaning", None, "Prompt", "Answer"],
        ["ebb", "the tide goes out", None, "Legs of a crab", 10],
    ]
    content = read_sheets(tmp_path, {"Shore": beside})
    assert [item.answer for item in content.items] == ["ebb"]
    assert found(content) == [("table-beside", "Shore D1")]


def test_another_column_beside_is_none(tmp_path: Path) -> None:
    rows = [["Word", "Meaning", "Sentence"], ["ebb", "the tide goes out", "At ebb we walk."]]
    assert found(read_sheets(tmp_path, {"Shore": rows})) == []


def test_a_second_table_below_the_first_is_told_of(tmp_path: Path) -> None:
    below = [["Word", "Meaning"], ["ebb", "the tide goes out"], [], ["Question", "Answer"]]
    content = read_sheets(tmp_path, {"Shore": [*below, ["Legs of a crab?", 10]]})
    assert ("headings-again", "Shore B4") in found(content)


def test_words_that_are_headings_elsewhere_may_be_content(tmp_path: Path) -> None:
    rows = [["Word", "Meaning"], ["question", "answer"], [], ["ebb", "the tide goes out"]]
    assert "headings-again" not in dict(found(read_sheets(tmp_path, {"Shore": rows})))
    numbered = [["Prompt", "Answer"], ["Prompt 1", "Answer 1"], [], ["Prompt 2", "Answer 2"]]
    assert "headings-again" not in dict(found(read_sheets(tmp_path, {"Shore": numbered})))


def test_a_table_on_its_side_is_told_of(tmp_path: Path) -> None:
    turned = [["Prompt", "Tides a day", "Legs of a crab"], ["Answer", 2, 10]]
    with pytest.raises(UnusableFileError, match=r"Shore A1: The headings .* below one another"):
        read_sheets(tmp_path, {"Shore": turned})


def test_two_columns_of_words_that_are_headings_elsewhere_are_content(tmp_path: Path) -> None:
    rows = [["word", "palabra"], ["meaning", "significado"], ["question", "pregunta"]]
    assert len(read_sheets(tmp_path, {"Shore": rows}).items) >= 2


CAPITALS = [["Country", "Capital"], ["France", "Paris"], ["Japan", "Tokyo"], ["Peru", "Lima"]]


def test_a_first_row_that_may_be_headings_makes_a_card_and_is_told_of(tmp_path: Path) -> None:
    content = read_sheets(tmp_path, {"Shore": CAPITALS})
    assert len(content.items) == 4
    assert found(content) == [("first-row-read", "Shore A1")]


@pytest.mark.parametrize(
    "heads",
    [
        ["question", "ans"],
        ["word", "def"],
        ["prompt", "expected answer"],
        ["[Question]", "[Answer]"],
    ],
)
def test_headings_in_small_letters_or_brackets_are_headings(
    tmp_path: Path, heads: list[str]
) -> None:
    content = read_sheets(tmp_path, {"Shore": [heads, *CAPITALS[1:]]})
    assert [item.answer for item in content.items] in (
        ["Paris", "Tokyo", "Lima"],
        ["France", "Japan", "Peru"],
    )
    assert found(content) == []


@pytest.mark.parametrize(
    "rows",
    [
        [["a", "um"], ["b", "dois"], ["c", "three"], ["d", "quatro"]],
        [["question", "pergunta"], ["house", "casa"], ["answer", "resposta"], ["dog", "cão"]],
        [["fact", "what can be shown to be so by anyone"], *CAPITALS[1:]],
    ],
)
def test_words_that_may_be_headings_are_passed_in_silence_where_they_are_content(
    tmp_path: Path, rows: list[list[str]]
) -> None:
    content = read_sheets(tmp_path, {"Shore": rows})
    assert len(content.items) == 4
    assert "first-row-read" not in [code for code, _place in found(content)]


def test_half_a_known_heading_in_small_letters_makes_a_card_and_is_told_of(tmp_path: Path) -> None:
    content = read_sheets(tmp_path, {"Shore": [["question", "resp"], *CAPITALS[1:]]})
    assert len(content.items) == 4
    assert found(content) == [("first-row-read", "Shore A1")]


@pytest.mark.parametrize(
    "first",
    [["ebb", "the tide goes out"], ["Tides a day", 2], ["What ebbs?", "Tide"], ["Salt", "NaCl2"]],
)
def test_a_first_row_like_any_other_is_not_asked_about(tmp_path: Path, first: list[Any]) -> None:
    assert found(read_sheets(tmp_path, {"Shore": [first, *CAPITALS[1:]]})) == []


def test_a_value_and_a_colour_that_belong_to_nothing_are_told_of(tmp_path: Path) -> None:
    deck = [["Setting", "Value"], [None, "large"]]
    teams = [["Team", "Colour"], ["Herons", "blue"], [None, "red"], ["Otters", None]]
    content = read_sheets(tmp_path, {"Facts": FACTS, "Deck": deck, "Teams": teams})
    assert [(f.code, str(f.place)) for f in content.findings] == [
        ("half-a-row", "Teams B3"),
        ("half-a-row", "Deck B2"),
    ]


# Microsoft, Excel specifications and limits: 32,767 characters in a cell
def test_a_text_that_no_cell_can_hold_is_refused_with_its_place(tmp_path: Path) -> None:
    path = tmp_path / "words.csv"
    path.write_text(f"Prompt,Answer\nTides a day,{'x' * 32_768}\n", encoding="utf-8")
    with pytest.raises(UnusableFileError, match=r"^words.csv B2 has 32,768 characters"):
        read(path)
    path.write_text(f"Prompt,Answer\nTides a day,{'x' * 32_767}\n", encoding="utf-8")
    assert len(read(path).items[0].answer) == 32_767


@pytest.mark.parametrize("formula", ['=HYPERLINK("crab.png")', '=_xlfn.IMAGE("crab.png")'])
def test_a_picture_that_a_formula_makes_is_told_of(tmp_path: Path, formula: str) -> None:
    rows = [["Prompt", "Answer", "Picture"], ["Legs of a crab", 10, formula]]
    content = read_sheets(tmp_path, {"Facts": rows})
    assert found(content) == [("picture-by-formula", "Facts C2")]
    assert content.items[0].picture == ""


def test_teams_and_settings_may_stand_from_left_to_right(tmp_path: Path) -> None:
    teams = [["Team", "Herons", "Otters", None, "Curlews"], ["Colour", "blue", None, "red"]]
    deck = [["Setting", "Paper", "Cards"], ["Value", "A4", 12]]
    content = read_sheets(tmp_path, {"Facts": FACTS, "Teams": teams, "Deck": deck})
    colours = [(row.name.text, row.colour and row.colour.text) for row in content.teams]
    assert colours == [("Herons", "blue"), ("Otters", None), ("Curlews", None)]
    rows = [(row.name.text, row.value.text) for row in content.settings]
    assert rows == [("Paper", "A4"), ("Cards", "12")]
    assert [(f.code, str(f.place)) for f in content.findings] == [("half-a-row", "Teams D2")]


@pytest.mark.parametrize("teams", [[["Team", "Colour"]], [["Team"], ["Team Colour"]], [["Team"]]])
def test_headings_alone_do_not_stand_from_left_to_right(
    tmp_path: Path, teams: list[list[str]]
) -> None:
    content = read_sheets(tmp_path, {"Facts": FACTS, "Teams": teams})
    assert [row.name.text for row in content.teams] == [name for row in teams[1:] for name in row]


def test_a_second_column_of_the_same_meaning_is_told_of(tmp_path: Path) -> None:
    rows = [["Word", "Translation", "Definition"], ["Haus", "house", "where one lives"]]
    content = read_sheets(tmp_path, {"Words": rows})
    assert [item.prompt for item in content.items] == ["house"]
    (finding,) = content.findings
    assert (finding.code, str(finding.place)) == ("heading-twice", "Words C1")
    assert "says the same as “Translation” in B1" in finding.wrong


@pytest.mark.parametrize("heading", ["Answer 2", "Solution", "Answers (2)"])
def test_a_second_column_of_answers_that_is_not_read_is_noted(tmp_path: Path, heading: str) -> None:
    rows = [["Question", "Answer", heading], ["What ebbs?", "the tide", "the sea"]]
    content = read_sheets(tmp_path, {"Words": rows})
    (finding,) = content.findings
    assert (finding.code, str(finding.severity), str(finding.place)) == (
        *("column-left-out", "note"),
        "Words C1",
    )
    assert "head it Also right" in finding.mend


def test_columns_that_are_no_second_answers_are_not_noted(tmp_path: Path) -> None:
    rows = [
        ["Q", "Question", "Answer", "Also right", "Also accept", "Solution", "Unit", "Topic"],
        [1, "What ebbs?", "tide", "sea", "water", None, "Shore", "Tides"],
        [2, "What digs?", "lugworm", None, None, None, "Shore", "Life"],
        [3, "What wades?", "heron", None, "egret", None, "Shore", "Life"],
    ]
    assert read_sheets(tmp_path, {"Words": rows}).findings == ()


@pytest.mark.parametrize("sheet", ["Exercises", "Teams", "Deck"])
@pytest.mark.parametrize("pair", [["Question", "Answer"], ["Prompt", "Answer"], ["Front", "Back"]])
def test_questions_and_answers_are_content_whatever_the_sheet_is_called(
    tmp_path: Path, sheet: str, pair: list[str]
) -> None:
    sheets = {"Facts": FACTS, sheet: [pair, ["What ebbs?", "the tide"]]}
    content = read_sheets(tmp_path, sheets)
    assert [item.answer for item in content.items] == ["2", "10", "the tide"]
    assert (content.exercises, content.teams, content.settings) == ((), (), ())


def test_words_and_meanings_are_content_on_a_sheet_called_exercises(tmp_path: Path) -> None:
    rows = [["Exercise", "Word", "Meaning"], [1, "ebb", "the tide goes out"]]
    content = read_sheets(tmp_path, {"Facts": FACTS, "Exercises": rows})
    assert [item.answer for item in content.items] == ["2", "10", "ebb"]


def test_exercises_with_a_description_are_exercises(tmp_path: Path) -> None:
    rows = [["Exercise", "Description", "Gentler option"], ["Hop", "On one leg", "step"]]
    content = read_sheets(tmp_path, {"Facts": FACTS, "Exercises": rows})
    assert [row.name.text for row in content.exercises] == ["Hop"]
    assert len(content.items) == 2


def instructions(lines: int) -> list[list[Any]]:
    return [[f"{number}. Read this line before you begin."] for number in range(lines)]


@pytest.mark.parametrize("lines", [9, 10, 20, 39])
def test_headings_below_many_lines_of_instructions_are_found(tmp_path: Path, lines: int) -> None:
    content = read_sheets(tmp_path, {"Shore": [*instructions(lines), *FACTS]})
    assert [item.prompt for item in content.items] == ["Tides a day", "Legs of a crab"]
    assert found(content) == []


def test_a_row_of_several_cells_may_stand_among_the_instructions(tmp_path: Path) -> None:
    rows = [*instructions(8), ["Class", "5b"], *instructions(6), *FACTS]
    content = read_sheets(tmp_path, {"Shore": rows})
    assert [item.prompt for item in content.items] == ["Tides a day", "Legs of a crab"]


def test_headings_far_below_pairs_are_content(tmp_path: Path) -> None:
    pairs = [[f"Crab number {number}", "crab"] for number in range(12)]
    content = read_sheets(tmp_path, {"Shore": [*pairs, *FACTS]})
    assert len(content.items) == 15


@pytest.mark.parametrize(("column", "cell"), [("A", "A2"), ("B", "B2")])
def test_what_a_number_format_hides_is_told_of(tmp_path: Path, column: str, cell: str) -> None:
    book = fill({"Facts": [["Prompt", "Answer"], [1066, 1805], ["Legs of a crab", 10]]})
    book["Facts"][cell].number_format = ";;;"
    book.save(tmp_path / "Shore.xlsx")
    content = read(tmp_path / "Shore.xlsx")
    assert found(content) == [("hidden-by-format", f"Facts {column}2")]


def test_a_cell_of_blanks_is_blank(tmp_path: Path) -> None:
    book = fill({"Facts": [["Prompt", "Answer"], ["Tides a day", " "], ["Legs of a crab", 10]]})
    book["Facts"]["B2"].number_format = ";;;"
    book.save(tmp_path / "Shore.xlsx")
    assert found(read(tmp_path / "Shore.xlsx")) == [("no-answer", "Facts B2")]


@pytest.mark.parametrize("line", [["---", ":---:"], ["=====", "====="], ["-----"], ["———", "–––"]])
def test_a_line_drawn_between_rows_is_no_row(tmp_path: Path, line: list[str]) -> None:
    rows = [FACTS[0], line, *FACTS[1:]]
    content = read_sheets(tmp_path, {"Facts": rows})
    assert [item.prompt for item in content.items] == ["Tides a day", "Legs of a crab"]
    assert found(content) == []


@pytest.mark.parametrize("row", [["Three dashes in Morse code", "---"], ["---", "O"], ["–", "-"]])
def test_dashes_on_one_side_or_few_of_them_are_content(tmp_path: Path, row: list[str]) -> None:
    content = read_sheets(tmp_path, {"Facts": [*FACTS, row]})
    assert [content.items[2].prompt, content.items[2].answer] == row
    assert found(content) == []


def test_headings_that_come_again_without_a_blank_row_are_no_row(tmp_path: Path) -> None:
    content = read_sheets(tmp_path, {"Facts": [*FACTS, FACTS[0], ["Rays of a starfish", 5]]})
    assert [item.answer for item in content.items] == ["2", "10", "5"]
    assert found(content) == []
