"""Every paper says the language that most of its text is in.

pikepdf reads `Lang` of the document's catalog (ISO 32000-1, 14.9.2); codes are those of ISO 639-1,
as the library of ISO has them in tests/outside/test_languages.py.
"""

import json
import shutil
from pathlib import Path

import pikepdf
import pytest
from support.live_texts import fill_in
from support.shore import fairdeal
from support.teacher_file import lesson
from support.workbooks import fill

WORDS = [("Word", "Meaning"), *((f"mot{n}", f"ce que veut dire {n}") for n in range(1, 9))]
SAMPLES = Path(__file__).parents[1] / "decks" / "record" / "samples" / "format-1"
FOR_TEACHERS = {"teacher": "en"}


def languages_of(folder):
    found = {}
    for path in folder.glob("*.pdf"):
        with pikepdf.open(path) as pdf:
            found[path.stem] = str(pdf.Root.Lang)
    return found


@pytest.mark.parametrize(
    ("settings", "papers"),
    [
        ({"early_finishers": "yes"}, ["cards", "study-guide", "study-guide-more"]),
        ({"sides": "fronts"}, ["cards", "answers", "study-guide"]),
        ({"sides": "two-passes"}, ["cards-fronts", "cards-backs", "study-guide"]),
        ({"activity": "collect"}, ["cards", "study-guide"]),
        ({"activity": "rounds"}, ["cards"]),
        ({"activity": "stations"}, ["cards"]),
        ({"activity": "organizer"}, ["cards", "planning-sheet", "comparison"]),
    ],
    ids=str,
)
def test_what_students_read_says_the_contents_language_and_the_teachers_pages_english(
    settings, papers
):
    found = languages_of(lesson(language="Spanish", **settings))
    assert found == dict.fromkeys(papers, "es") | FOR_TEACHERS


@pytest.mark.parametrize(
    ("written", "tag"), [("French", "fr"), ("Français", "fr"), ("zh-hans", "zh-Hans")]
)
def test_the_deck_sheet_says_the_language(tmp_path, written, tag):
    path = tmp_path / "Mer.xlsx"
    deck = [("Setting", "Value"), ("Language", written), ("Teams", "2")]
    fill({"Vocabulary": WORDS, "Deck": deck}).save(path)
    done = fairdeal("build", path)
    assert done.returncode == 0, done.stderr
    folder = tmp_path / "Mer decks" / "01"
    assert languages_of(folder) == {"cards": tag, "study-guide": tag} | FOR_TEACHERS
    record = json.loads((folder / "deck.json").read_text(encoding="utf-8"))
    assert record["recipe"]["language"] == tag


def test_a_language_that_is_none_is_told_at_its_cell_and_nothing_is_built(tmp_path):
    path = tmp_path / "Mer.xlsx"
    deck = [("Setting", "Value"), ("Language", "Frensh")]
    fill({"Vocabulary": WORDS, "Deck": deck}).save(path)
    done = fairdeal("build", path)
    assert done.returncode == 1
    assert "Deck B2" in done.stdout + done.stderr
    assert "Did you mean French?" in done.stdout + done.stderr
    assert not (tmp_path / "Mer decks").exists()


@pytest.mark.parametrize("settings", [{}, {"sides": "two-passes"}], ids=str)
def test_cards_that_are_printed_again_keep_the_language(tmp_path, settings):
    deck = lesson(language="Spanish", **settings)
    done = fairdeal("reprint", deck, "--cards", "1", "--out", tmp_path / "again.pdf")
    assert done.returncode == 0, done.stderr
    assert set(languages_of(tmp_path).values()) == {"es"}


def test_a_record_from_before_is_printed_again_in_english(tmp_path):
    deck = shutil.copytree(SAMPLES / "review", tmp_path / "deck")
    record = json.loads((deck / "deck.json").read_text(encoding="utf-8"))
    assert "language" not in record["recipe"]
    done = fairdeal("reprint", deck, "--cards", "1", "--out", tmp_path / "again.pdf")
    assert done.returncode == 0, done.stderr
    assert languages_of(tmp_path) == {"again": "en"}


def test_what_marks_show_is_in_english(tmp_path):
    deck = shutil.copytree(lesson(language="Spanish"), tmp_path / "01")
    fill_in(deck, deck)
    done = fairdeal("marks", deck, "--marks", deck / "filled.xlsx")
    assert done.returncode == 0, done.stderr
    assert languages_of(deck)["what-it-shows"] == "en"


def test_the_next_deck_is_in_the_language_of_the_deck_sheet(tmp_path):
    path = tmp_path / "Mer.xlsx"
    deck = [("Setting", "Value"), ("Language", "French"), ("Teams", "2"), ("Cards", "4")]
    fill({"Vocabulary": WORDS, "Deck": deck}).save(path)
    assert fairdeal("build", path).returncode == 0
    done = fairdeal("next", path, "--aim", "mixed")
    assert done.returncode == 0, done.stderr
    found = languages_of(tmp_path / "Mer decks" / "02")
    assert found == {"cards": "fr", "study-guide": "fr"} | FOR_TEACHERS
