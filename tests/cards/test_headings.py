"""Headings by meaning, wherever they stand."""

from collections.abc import Callable

import pytest

from cards.content import Content
from cards.item import Kind, Level

ReadSheets = Callable[..., Content]
ReadCsv = Callable[..., Content]


@pytest.mark.parametrize(
    ("headings", "kind", "turned"),
    [
        ("Word,Meaning", Kind.VOCABULARY, True),
        ("Term,Definition", Kind.VOCABULARY, True),
        ("TERMS,  definitions ", Kind.VOCABULARY, True),
        ("Vocabulary word,Clue", Kind.VOCABULARY, True),
        ("Définition,Word", Kind.VOCABULARY, False),
        ("Word (singular),Meaning (in your own words)", Kind.VOCABULARY, True),
        ("Prompt,Answer", Kind.FACT, False),
        ("Answer,Prompt", Kind.FACT, True),
        ("Front,Back", Kind.FACT, False),
        ("front,back", Kind.FACT, False),
        ("Cue,Response", Kind.FACT, False),
        ("question,answer", Kind.QUESTION, False),
        ("Q.,A.", Kind.QUESTION, False),
        ("1. Prompt,2. Answer", Kind.FACT, False),
        ("1) Word,2) Meaning", Kind.VOCABULARY, True),
        ("Problem,Solution", Kind.QUESTION, False),
        ("Heading,Detail", Kind.DETAIL, True),
        ("Clue,Answer", Kind.VOCABULARY, False),
    ],
)
def test_headings_tell_kind_and_sides(
    read_csv: ReadCsv, headings: str, kind: Kind, *, turned: bool
) -> None:
    content = read_csv(f"{headings}\nleft,right\n")
    [item] = content.items
    assert item.kind is kind
    assert (item.prompt, item.answer) == (("right", "left") if turned else ("left", "right"))
    assert content.findings == ()


def test_all_columns_are_read_in_any_order(read_csv: ReadCsv) -> None:
    content = read_csv(
        "Team,Difficulty,Distractor 1,Distractor 2,Answer,Also accept,Picture,Unit,Question\n"
        "Otter,hard,the wind,a; b;c,the moon,moon;Moon,moon.png,Tides,What pulls the tides?\n"
    )
    [item] = content.items
    assert item.prompt == "What pulls the tides?"
    assert item.answer == "the moon"
    assert item.level is Level.HARD
    assert item.topic == "Tides"
    assert item.also_right == ("moon", "Moon")
    assert item.wrong == ("the wind", "a", "b", "c")
    assert item.team == "Otter"
    assert (item.prompt_place.cell, item.answer_place.cell) == ("I2", "E2")
    assert (item.picture, item.image) == ("moon.png", None)
    assert content.findings == ()


def test_choices_may_hold_commas_and_stand_on_lines(read_sheets: ReadSheets) -> None:
    rows = [["Question", "Answer", "Wrong answers"], ["How many?", "1,000", "10,000\n100, or so"]]
    [item] = read_sheets({"Sheet1": rows}).items
    assert item.answer == "1,000"
    assert item.wrong == ("10,000", "100, or so")


@pytest.mark.parametrize(
    ("sheet", "kind"),
    [
        ("Facts", Kind.FACT),
        ("Questions", Kind.QUESTION),
        ("question", Kind.QUESTION),
        ("Week 3 questions", Kind.QUESTION),
        ("Saltmarsh", Kind.FACT),
    ],
)
def test_the_sheet_tells_the_kind_where_headings_do_not(
    read_sheets: ReadSheets, sheet: str, kind: Kind
) -> None:
    content = read_sheets({sheet: [["Prompt", "Answer"], ["Tides a day", "2"]]})
    assert [item.kind for item in content.items] == [kind]


@pytest.mark.parametrize(
    "above",
    [
        [["The rocky shore"]],
        [["The rocky shore"], []],
        [[None, None, "Name:", "Date:"], []],
        [["Class", "5b"], ["Teacher"], []],
    ],
)
def test_titles_above_the_headings_make_no_cards(
    read_sheets: ReadSheets, above: list[list[object]]
) -> None:
    rows = [*above, ["Word", "Meaning", "Level"], ["limpet", "a shellfish", "easy"]]
    [item] = read_sheets({"Sheet1": rows}).items
    assert item.answer == "limpet"
    assert item.prompt_place.row == len(above) + 2


def test_what_looks_like_content_above_the_headings_is_told_of(read_csv: ReadCsv) -> None:
    content = read_csv("heron,a tall bird\nWord,Meaning\nlimpet,a shellfish\n")
    assert [item.answer for item in content.items] == ["limpet"]
    assert [(f.code, str(f.place)) for f in content.findings] == [
        ("above-headings", "words.csv A1")
    ]


@pytest.mark.parametrize(
    "first",
    ["Answer the call,phone", "answer,respuesta", "question,pregunta", "sword,leaning", "up,down"],
)
def test_a_first_row_that_resembles_headings_is_content(read_csv: ReadCsv, first: str) -> None:
    content = read_csv(f"{first}\nheron,garza\nlimpet,lapa\n")
    assert content.items[0].prompt == first.partition(",")[0]
    assert len(content.items) == 3
    assert content.findings == ()


def test_opposites_in_a_list_are_not_headings(read_csv: ReadCsv) -> None:
    content = read_csv("up,down\nfront,back\nhigh,low\n")
    assert [item.answer for item in content.items] == ["down", "back", "low"]


@pytest.mark.parametrize(
    ("headings", "cell", "read_as"),
    [
        ("Question,Anwser", "B1", "Answer"),
        ("Wrod,Meaning", "A1", "Word"),
        ("Word,Meening", "B1", "Meaning"),
        ("Word,Meaning,Levle", "C1", "Level"),
        ("Word,Meaning,Topci", "C1", "Topic"),
    ],
)
def test_a_misspelt_heading_is_read_and_told_of(
    read_csv: ReadCsv, headings: str, cell: str, read_as: str
) -> None:
    content = read_csv(f"{headings}\nlimpet,a shellfish,\n")
    assert len(content.items) == 1
    [finding] = content.findings
    assert (finding.code, finding.place.cell) == ("misspelt-heading", cell)
    assert finding.mend.startswith(f"Rename it to “{read_as}”")


def test_two_misspelt_headings_in_the_first_row_are_read_and_told_of(read_csv: ReadCsv) -> None:
    content = read_csv("Promt,Answr\nTides a day,2\n")
    assert [item.prompt for item in content.items] == ["Tides a day"]
    assert [finding.place.cell for finding in content.findings] == ["A1", "B1"]


def test_unknown_columns_are_left_out_quietly(read_csv: ReadCsv) -> None:
    content = read_csv("No.,Word,Meaning,Page,Notes\n1,limpet,a shellfish,12,lovely\n")
    assert [item.answer for item in content.items] == ["limpet"]
    assert content.findings == ()


def test_the_plain_heading_wins_over_its_synonym(read_csv: ReadCsv) -> None:
    content = read_csv("Unit,Topic,Prompt,Result,Answer\nShore,Tides,Tides a day,won,2\n")
    [item] = content.items
    assert (item.topic, item.answer) == ("Tides", "2")


def test_headings_that_stand_twice_are_told_of(read_csv: ReadCsv) -> None:
    content = read_csv("Word,Meaning,,Word,Meaning\nlimpet,a shellfish,,tern,a bird\n")
    assert [item.answer for item in content.items] == ["limpet"]
    assert [(f.code, f.place.cell) for f in content.findings] == [
        ("heading-twice", "D1"),
        ("heading-twice", "E1"),
    ]


def test_headings_repeated_on_every_page_make_no_cards(read_csv: ReadCsv) -> None:
    content = read_csv("Word,Meaning\nlimpet,a shellfish\nWord,Meaning\ntern,a bird\n")
    assert [item.answer for item in content.items] == ["limpet", "tern"]


def test_half_a_card_is_an_error_at_the_headings(read_sheets: ReadSheets) -> None:
    facts = [["Prompt", "Topic"], ["Tides a day", "Tides"]]
    words = [["Word", "Meaning"], ["limpet", "a shellfish"]]
    content = read_sheets({"Facts": facts, "Vocabulary": words})
    assert [item.answer for item in content.items] == ["limpet"]
    assert [(f.code, str(f.severity), str(f.place)) for f in content.findings] == [
        ("missing-heading", "error", "Facts row 1")
    ]


def test_one_column_under_its_heading_is_half_a_card(read_sheets: ReadSheets) -> None:
    questions = [["Question"], ["What clings to rock?"], ["Which worm digs?"]]
    words = [["Word", "Meaning"], ["limpet", "a shellfish"]]
    content = read_sheets({"Questions": questions, "Vocabulary": words})
    assert [item.answer for item in content.items] == ["limpet"]
    (finding,) = content.findings
    assert str(finding) == (
        "Questions row 1: No column is headed Answer or Word, so the rows below make no cards. "
        "Put the heading above the column that it belongs to, or add such a column."
    )


def test_a_list_of_words_beside_the_content_is_only_left_out(read_sheets: ReadSheets) -> None:
    lists = {"Bank": [["Words"], ["limpet"], ["whelk"]], "Class": [["Name"], ["A"], ["B"]]}
    words = [["Word", "Meaning"], ["limpet", "a shellfish"]]
    content = read_sheets({"Vocabulary": words, **lists})
    assert [(f.code, str(f.severity)) for f in content.findings] == [("sheet-left-out", "note")] * 2


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("1", Level.EASY),
        ("1.0", Level.EASY),
        ("Easy", Level.EASY),
        ("E", Level.EASY),
        ("low", Level.EASY),
        ("", Level.MEDIUM),
        ("2", Level.MEDIUM),
        ("MEDIUM ", Level.MEDIUM),
        ("middle", Level.MEDIUM),
        ("3", Level.HARD),
        ("h", Level.HARD),
        ("difficult", Level.HARD),
    ],
)
def test_levels_are_known_by_word_and_number(read_csv: ReadCsv, text: str, level: Level) -> None:
    content = read_csv(f"Prompt,Answer,Level\nTides a day,2,{text}\n")
    assert [item.level for item in content.items] == [level]
    assert content.findings == ()


def test_only_semicolons_part_other_right_answers(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer,Also right\nNorm of -3,3,|-3|; three\n")
    assert content.items[0].also_right == ("|-3|", "three")


ASKED = [["What clings to rock?", "limpet"], ["Which worm digs?", "lugworm"], ["Who?", "heron"]]


TURNED = [[answer, asked] for asked, answer in ASKED]


def test_headings_that_have_changed_places_are_warned_of(read_sheets: ReadSheets) -> None:
    content = read_sheets({"Shore": [["Question", "Answer"], *TURNED]})
    assert [(f.code, str(f.severity), str(f.place)) for f in content.findings] == [
        ("headings-swapped", "warning", "Shore B1")
    ]
    assert "under “Question” in A1" in content.findings[0].wrong


@pytest.mark.parametrize(
    ("prompts", "rows"),
    [
        ("Question", ASKED),
        ("Question", TURNED[:2]),
        ("Question", [*TURNED, ["What is said?", "Really?"]]),
        ("Question", [["say who are you", "Qui es-tu ?"], ["say where it is", "Où est-ce ?"]] * 2),
        ("Question", [*TURNED, ["whelk", "a snail of the sea"]]),
        ("Prompt", [["Ask the name", "Who?"], ["Ask the time", "When?"], ["Ask why", "Why?"]]),
    ],
)
def test_headings_are_left_where_prompts_ask_or_some_answers_do_not(
    read_sheets: ReadSheets, prompts: str, rows: list[list[str]]
) -> None:
    assert read_sheets({"Shore": [[prompts, "Answer"], *rows]}).findings == ()
