"""Choices on cards, in study guides and on the call sheet."""

import re

import pdfplumber
import pytest
from support.shore import fairdeal
from support.workbooks import fill

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


TWICE = """Question,A,B,C,Correct
Which one lives on land?,cod,horse,newt,B
Which one pulls a cart?,horse,crab,eel,A
"""


def test_one_answer_to_two_questions_is_no_matter_where_letters_are_written(tmp_path):
    (tmp_path / "land.csv").write_text(TWICE, encoding="utf-8")

    def told(*options):
        done = fairdeal("build", tmp_path / "land.csv", "--teams", "1", *options)
        assert done.returncode == 0, done.stderr
        return "it fits both" in f"{done.stdout}{done.stderr}"

    assert not told("--choices", "shown")
    assert told()
    # gathered words are the bank
    assert told("--choices", "shown", "--activity", "collect")


WORDS = """Word,Meaning,Topic
crab,It walks sideways,Life
limpet,It clamps to bare stone,Life
wrack,A brown weed,Life
"""


@pytest.fixture
def mixed(tmp_path):
    """Return a function that builds the questions among words and returns the deck's folder."""
    sheets = {
        name: [line.split(",") for line in rows.splitlines()]
        for name, rows in (("Vocabulary", WORDS), ("Questions", ROWS))
    }
    fill(sheets).save(tmp_path / "sea.xlsx")

    def mixed(*options):
        done = fairdeal("build", tmp_path / "sea.xlsx", "--choices", "shown", *options)
        assert done.returncode == 0, done.stderr
        return tmp_path / "sea decks" / "01"

    return mixed


@pytest.mark.parametrize("large", ["no", "yes"])
@pytest.mark.parametrize("support", ["bank", "hints", "none"])
def test_no_study_guide_tells_which_choice_is_right(mixed, support, large):
    deck = mixed(
        *("--teams", "1", "--support", support, "--large-print", large),
        *("--early-finishers", "yes"),
    )
    for file in ("study-guide.pdf", "study-guide-more.pdf"):
        if not (deck / file).exists():
            # there are no other words for a bank, and without support nothing can be taken away
            assert support != "hints"
            continue
        text = "\n".join(pages(deck / file))
        assert "write the letter of the right one" in " ".join(text.split())
        for choice in ("cod", "horse", "newt", "6", "10", "12"):
            assert len(re.findall(rf"\. {choice}$", text, re.MULTILINE)) == 1
        assert text.count("horse") == text.count("cod") == 1
        assert not re.search(r"\bh ?_|^_$", text, re.MULTILINE)
        assert text.count("_") == (0 if support != "hints" or "more" in file else 3 + 5 + 4)


def test_a_guide_of_choices_alone_has_no_bank(made):
    (guide,) = pages(made("--choices", "shown") / "study-guide.pdf")
    assert "bank" not in guide.casefold()
    assert "once" not in guide
    assert "write the letter of the right one" in " ".join(guide.split())


def test_each_team_has_a_guide_that_tells_no_choice(mixed):
    texts = pages(mixed("--teams", "2", "--extra-words", "5") / "study-guide.pdf")
    assert len(texts) == 2
    for text in texts:
        if "A. cod" in text:
            assert text.count("horse") == 1


def test_words_that_are_gathered_stand_for_the_choices(mixed):
    deck = mixed("--activity", "collect", "--teams", "2")
    (guide,) = pages(deck / "study-guide.pdf")
    assert "Which of these lives on land?" in guide
    assert "cod" not in guide
    assert "letter" not in guide
    (key,) = [page for page in pages(deck / "teacher.pdf") if "Answer key: study guide" in page]
    assert "horse" in key
    assert "B. horse" not in key


def test_the_key_counts_a_choice_as_right_once_in_so_many(mixed):
    deck = mixed("--teams", "1", "--extra-words", "0")
    told = " ".join(" ".join(pages(deck / "teacher.pdf")).split())
    # three words in three blanks earn 1, two choices of three a third each; 3! · 3 · 3 ways
    assert "Guessing alone earns 1.7 of 5 on average; all right by luck: 1 time in 54." in told
    assert "Each clue without choices has one fitting word." in told


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


ALL_WITH_CHOICES = (
    "Question,Answer,Wrong 1,Wrong 2\n"
    "What builds a reef?,oysters,crabs,terns\n"
    "What digs in mud?,lugworms,gulls,kelp\n"
    "What clings to rock?,limpets,eels,herons\n"
)


@pytest.mark.parametrize("support", ["bank", "hints"])
def test_where_all_blanks_have_choices_nothing_tells_of_words_or_a_harder_version(
    tmp_path, support
):
    path = tmp_path / "Shore.csv"
    path.write_text(ALL_WITH_CHOICES, encoding="utf-8")
    options = ("--choices", "shown", "--support", support, "--early-finishers", "yes")
    done = fairdeal("build", path, "--teams", "1", *options)
    assert done.returncode == 0, done.stderr
    folder = tmp_path / "Shore decks" / "01"
    assert not (folder / "study-guide-more.pdf").exists()
    with pdfplumber.open(folder / "teacher.pdf") as pdf:
        text = " ".join(" ".join(page.extract_text().split()) for page in pdf.pages)
    assert "There is no second version" in text
    assert "study-guide-more" not in text
    assert "its word bank" not in text
    assert "its hints" not in text
