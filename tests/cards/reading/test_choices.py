"""Choices in columns of their own, as quizzes are often kept, and the letter of the right one."""

from collections.abc import Callable
from datetime import date
from pathlib import Path

import pytest
from support.workbooks import fill

from cards.checking import check
from cards.content import Content
from cards.finding import UnusableFileError
from cards.reading import read

ReadCsv = Callable[..., Content]


def read_rows(read_csv: ReadCsv, headings: str, *rows: str) -> Content:
    return read_csv("\n".join((headings, *rows)) + "\n")


def answers(content: Content) -> list[tuple[str, tuple[str, ...]]]:
    return [(item.answer, item.wrong) for item in content.items]


def found(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


@pytest.mark.parametrize(
    ("headings", "right"),
    [
        ("Question,A,B,C,Correct", "B"),
        ("Question,A,B,C,Correct", "b)"),
        ("Question,A,B,C,Answer", "Option B"),
        ("Prompt,Option 1,Option 2,Option 3,Correct answer", "2"),
        ("Question,Choice A,Choice B,Choice C,Key", "choice b"),
        ("Question,Answer 1,Answer 2,Answer 3,Right answer", "2"),
        ("Q,a,b,c,Answer key", "limpet"),
        ("Pregunta,Opción A,Opción B,Opción C,Respuesta correcta", "B"),
        ("Question,Réponse A,Réponse B,Réponse C,Bonne réponse", "B"),
        ("Frage,Antwort A,Antwort B,Antwort C,Richtig", "B"),
    ],
)
def test_the_letter_or_number_of_the_right_choice_stands_for_it(
    read_csv: ReadCsv, headings: str, right: str
) -> None:
    content = read_rows(read_csv, headings, f"What clings?,heron,Limpet,eel,{right}")
    assert answers(content) == [("Limpet", ("heron", "eel"))]
    assert found(content) == []


def test_the_right_one_may_stand_before_the_choices(read_csv: ReadCsv) -> None:
    rows = ["C,What swims?,heron,limpet,eel", "A,What flies?,heron,limpet,eel"]
    content = read_rows(read_csv, "Correct,Question,A,B,C", *rows)
    assert [item.answer for item in content.items] == ["eel", "heron"]


def test_choices_that_are_letters_or_numbers_are_taken_at_their_word(read_csv: ReadCsv) -> None:
    content = read_rows(read_csv, "Question,A,B,C,Correct", "Tides a day,3,2,4,2")
    assert answers(content) == [("2", ("3", "4"))]


def test_a_number_that_is_one_choice_and_counts_another_is_asked_about(read_csv: ReadCsv) -> None:
    content = read_rows(read_csv, "Question,1,2,3,Correct", "Tides a day,2,3,4,2")
    assert ("right-choice-unclear", "words.csv E2") in found(content)
    (unclear,) = [f for f in content.findings if f.code == "right-choice-unclear"]
    assert "more than one" in str(unclear)


@pytest.mark.parametrize("right", ["D", "whelk", "7"])
def test_what_names_no_choice_stops_the_build(read_csv: ReadCsv, right: str) -> None:
    content = read_rows(
        read_csv, "Question,A,B,C,Correct", f"What clings?,heron,limpet,eel,{right}"
    )
    (unclear,) = content.findings
    assert (unclear.code, str(unclear.place)) == ("right-choice-unclear", "words.csv E2")
    assert str(unclear).endswith("Write which choice is right, A to C, or its very words.")


def test_a_blank_choice_is_none(read_csv: ReadCsv) -> None:
    content = read_rows(
        read_csv,
        "Question,A,B,C,Correct",
        "What clings?,heron,limpet,,C",
        "What swims?,eel,tern,,A",
    )
    assert found(content) == [("right-choice-unclear", "words.csv E2")]
    assert answers(content)[1] == ("eel", ("tern",))


def test_a_row_that_does_not_say_which_is_right_has_no_answer(read_csv: ReadCsv) -> None:
    content = read_rows(read_csv, "Question,A,B,Correct", "What clings?,heron,limpet,")
    assert found(content) == [("no-answer", "words.csv D2")]


@pytest.mark.parametrize("headings", ["Question,A,B,C,D", "Prompt,Option 1,Option 2,Option 3"])
def test_choices_of_which_none_is_said_to_be_right_make_no_cards(
    read_csv: ReadCsv, headings: str
) -> None:
    with pytest.raises(UnusableFileError, match="No column is headed Answer or Word"):
        read_rows(read_csv, headings, "What clings?,heron,limpet,eel,tern")


@pytest.mark.parametrize(
    "headings",
    [
        "Q,A",
        "Q,A,Topic",
        "Side A,Side B",
        "Word,Meaning,A,B",
        "Word,Meaning,A,B,C",
        "Question,Answer 1,Answer 2",
        "Question,Answer 1,Answer 2,Answer 3",
    ],
)
def test_other_columns_with_letters_are_what_they_were(read_csv: ReadCsv, headings: str) -> None:
    content = read_rows(read_csv, headings, "What clings?,limpet,shore,zone")
    assert "limpet" in {content.items[0].answer, content.items[0].prompt}
    assert content.items[0].wrong == ()


def test_a_choice_in_a_column_of_its_own_is_one_whatever_stands_in_it(read_csv: ReadCsv) -> None:
    row = "Which pair solves it?,x = 1; y = 2,x = 2; y = 1,x = 0; y = 0,A"
    content = read_rows(read_csv, "Question,A,B,C,Correct", row)
    assert answers(content) == [("x = 1; y = 2", ("x = 2; y = 1", "x = 0; y = 0"))]


def test_what_is_amiss_with_the_right_choice_is_told_at_its_own_cell(tmp_path: Path) -> None:
    book = fill(
        {
            "Quiz": [
                ["Question", "A", "B", "C", "Correct"],
                ["What part is it?", date(2026, 4, 3), "a half", "a third", "A"],
                ["What clings?", "heron", "#N/A", "eel", "B"],
            ]
        }
    )
    book["Quiz"]["C3"].data_type = "e"
    book.save(tmp_path / "quiz.xlsx")
    content = read(tmp_path / "quiz.xlsx")
    assert {("turned-into-date", "Quiz B2"), ("error-value", "Quiz C3")} <= {*found(content)}
