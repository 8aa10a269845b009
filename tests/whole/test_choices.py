"""Choices on cards, in study guides and on the call sheet."""

import pdfplumber
import pytest
from support.shore import fairdeal

ROWS = """Question,A,B,C,Correct,Topic
Which of these lives on land?,cod,horse,newt,B,Life
How many legs has a crab?,6,12,10,C,Life
"""
SET_APART = "\u00a0"


@pytest.fixture
def made(tmp_path):
    """Return a function that builds the questions and returns the deck's folder."""
    (tmp_path / "sea.csv").write_text(ROWS, encoding="utf-8")

    def made(*options):
        done = fairdeal("build", tmp_path / "sea.csv", "--teams", "1", *options)
        assert done.returncode == 0, done.stderr
        return tmp_path / "sea decks" / "01"

    return made


def pages(path):
    with pdfplumber.open(path) as pdf:
        texts = [page.extract_text() for page in pdf.pages]
    return [text.replace(SET_APART, " ") for text in texts]


def test_the_front_has_the_choices_and_the_back_the_letter_of_the_right_one(made):
    front, back = pages(made("--choices", "shown") / "cards.pdf")
    for line in ("A. cod", "B. horse", "C. newt", "A. 6", "B. 10", "C. 12"):
        assert line in front
    assert "B. horse" in back
    assert "B. 10" in back
    assert "cod" not in back


def test_without_being_asked_for_they_are_printed_nowhere(made):
    deck = made()
    for paper in ("cards.pdf", "study-guide.pdf", "teacher.pdf"):
        assert not any("newt" in page for page in pages(deck / paper))


def test_the_study_guide_and_the_call_sheet_have_them_too(made):
    (guide,) = pages(made("--choices", "shown") / "study-guide.pdf")
    assert "C. newt" in guide
    deck = made("--choices", "shown", "--activity", "rounds").with_name("02")
    (calls,) = [page for page in pages(deck / "teacher.pdf") if "Then all together" in page]
    assert "A. cod" in calls
    assert calls.count("B. horse") == 2  # among the choices, and under what to accept


def test_answer_keys_have_the_letter_that_a_student_may_have_written(made):
    texts = pages(
        made("--choices", "shown", "--guide", "class", "--support", "none") / "teacher.pdf"
    )
    keys = [page for page in texts if "Answer key" in page]
    assert len(keys) > 1
    assert all("B. horse" in page and "B. 10" in page for page in keys)


def test_the_key_to_word_cards_says_what_stands_on_them(made):
    deck = made("--choices", "shown", "--activity", "collect")
    (front, *_rest) = pages(deck / "cards.pdf")
    (key,) = [page for page in pages(deck / "teacher.pdf") if "Answer key: word cards" in page]
    for page in (front, key):
        assert "horse" in page
        assert "B. horse" not in page


def test_a_lost_card_is_printed_again_with_its_choices(made):
    deck = made("--choices", "shown")
    done = fairdeal("reprint", deck, "--cards", "1-2")
    assert done.returncode == 0, done.stderr
    assert "C. newt" in pages(deck / "reprint-1.pdf")[0]


@pytest.mark.parametrize("options", [(), ("--choices", "hidden"), ("--choices", "shown")])
def test_a_question_that_points_at_choices_is_told_of_where_nobody_said_they_are_hidden(
    made, options
):
    workbook = made().parent.parent / "sea.csv"
    told = fairdeal("check", workbook).stdout
    assert "sea.csv A2: This question points at its choices" in told
    built = fairdeal("build", workbook, "--teams", "1", *options)
    assert ("points at its choices" in built.stdout) is (not options)
