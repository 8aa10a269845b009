"""A lesson of called questions, from a workbook to its pages, read back by other people's readers.

The call sheet is read word by word with its places, the cards by what is printed on their backs.
"""

import json
import re
from itertools import pairwise

import openpyxl
import pdfplumber
import pytest
from support.pdfs import card_pages
from support.shore import ITEMS, fairdeal

ROUNDS = ("--activity", "rounds")
ANSWERS = {"".join(prompt.split()): "".join(answer.split()) for prompt, answer, *_ in ITEMS}
EXERCISES = [
    ("Exercise", "How many", "Gentler option", "Effort"),
    ("Wade on the spot", "20 seconds", "small steps; sitting: heels up", "moderate"),
    ("Haul in the net", "10 pulls", "shorter pulls; sitting: the same", "gentle"),
    ("Leap the pool", "6 leaps", "step over it; sitting: lift both feet", "strong"),
]


def texts(path):
    with pdfplumber.open(path) as pdf:
        return [" ".join((page.extract_text() or "").split()) for page in pdf.pages]


def chapter(path, title):
    """The pages from one whose first words are the title on, and those it goes on to."""
    found, inside = [], False
    chapters = ("Call sheet", "Whose turn", "Score sheet", "Answer key")
    for text in texts(path):
        if text.startswith(chapters):
            inside = text.startswith(title)
        if inside:
            found.append(text)
    return found


def record(deck):
    return json.loads((deck / "deck.json").read_text(encoding="utf-8"))


def words_by_row(path):
    """The words of each row of the call sheet: its label, and the words right of it, by column."""
    rows = []
    with pdfplumber.open(path) as pdf:
        heads = None
        for page in pdf.pages:
            words = page.extract_words(keep_blank_chars=False)
            found = {
                word["text"]: word["x0"] for word in words if word["text"] in ("Say", "Accept")
            }
            if len(found) < 2:
                heads = None
                continue
            then = [word["x0"] for word in words if word["text"] == "Then"]
            heads = (found["Say"], found["Accept"], then[0])
            lines = sorted(
                line["top"] for line in page.lines if line["x1"] - line["x0"] > page.width / 2
            )
            for top, bottom in pairwise(lines):
                own = [word for word in words if top < word["top"] and word["bottom"] < bottom]
                label = "".join(word["text"] for word in own if word["x1"] < heads[0])
                if label.isdecimal():
                    rows.append((label, own, heads))
    return rows


def column(own, start, end):
    return "".join(word["text"] for word in own if word["x0"] >= start - 1 and word["x0"] < end - 1)


@pytest.mark.parametrize("paper", ["letter", "a4"])
def test_every_row_of_the_call_sheet_has_the_question_and_the_answer_of_its_card(build, paper):
    deck = build(*ROUNDS, "--paper", paper)
    rows = words_by_row(deck / "teacher.pdf")
    cards = record(deck)["cards"]
    pages = card_pages(deck / "cards.pdf")
    fronts, backs = (
        [page.text_in(cell) for page in pages[side::2] for cell in page.cells] for side in (0, 1)
    )
    assert [label for label, *_ in rows] == [card["label"] for card in cards]
    for (label, own, (say, accept, then)), card in zip(rows, cards, strict=True):
        mark = "".join(f"{card['team']}{label}".split())
        (front,), (back,) = ([t for t in side if t.endswith(mark)] for side in (fronts, backs))
        prompt, answer = column(own, say, accept), column(own, accept, then)
        assert prompt.partition("seconds")[0].rstrip("0123456789") in front
        assert answer in back
        assert answer == ANSWERS["".join(card["prompt"].split())]


def test_the_order_of_the_call_sheet_is_that_of_the_labels_on_the_cards(build):
    deck = build(*ROUNDS)
    on_front = {}
    for page in card_pages(deck / "cards.pdf")[::2]:
        for cell in page.cells:
            text = page.text_in(cell)
            for prompt in ANSWERS:
                if prompt in text:
                    on_front[prompt] = re.search(r"([0-9]+)$", text)[1]
    for label, own, (say, accept, _then) in words_by_row(deck / "teacher.pdf"):
        asked = column(own, say, accept)
        (prompt,) = [prompt for prompt in ANSWERS if asked.startswith(prompt)]
        assert on_front[prompt].endswith(label)


def test_the_exercises_are_those_of_the_workbook_and_never_the_same_twice_running(tmp_path):
    book = openpyxl.Workbook()
    book.active.title = "Facts"
    for row in [("Prompt", "Answer", "Topic", "Level"), *ITEMS]:
        book.active.append(row)
    sheet = book.create_sheet("Exercises")
    for row in EXERCISES:
        sheet.append(row)
    book.save(tmp_path / "Shore.xlsx")
    done = fairdeal("build", tmp_path / "Shore.xlsx", *ROUNDS)
    assert done.returncode == 0, done.stderr
    rows = words_by_row(tmp_path / "Shore decks" / "01" / "teacher.pdf")
    names = {"".join(name.split()): "".join(gentler.split()) for name, _n, gentler, _e in EXERCISES}
    called = []
    for _label, own, (_say, _accept, then) in rows:
        said = column(own, then, 9999)
        (name,) = [name for name in names if said.startswith(name)]
        for way in names[name].split(";"):
            assert f"or{way}" in said
        called.append(name)
    assert len(called) == len(ITEMS)
    assert all(one != other for one, other in pairwise(called))


def test_score_sheet_and_roster_have_every_card_and_no_answer(build):
    deck = build(*ROUNDS)
    for title in ("Score sheet", "Whose turn"):
        pages = chapter(deck / "teacher.pdf", title)
        said = " ".join(pages)
        assert pages
        assert "word" not in said
        for card in record(deck)["cards"]:
            assert re.search(rf"\b{card['label']}\b", said)


def test_the_workbook_of_scores_has_a_row_for_every_card(build):
    deck = build(*ROUNDS)
    sheet = openpyxl.load_workbook(deck / "marks.xlsx")["Score"]
    rows = [(str(row[1]), row[2]) for row in sheet.iter_rows(min_row=6, values_only=True) if row[1]]
    assert rows == [(card["label"], card["prompt"]) for card in record(deck)["cards"]]


def test_the_same_workbook_gives_the_same_bytes_again(build, workbook, tmp_path):
    deck = build(*ROUNDS)
    done = fairdeal("build", workbook, "--out", tmp_path, *ROUNDS, PYTHONHASHSEED="7")
    assert done.returncode == 0, done.stderr
    again = tmp_path / "Shore decks" / "01"
    for file in sorted(deck.iterdir()):
        assert (again / file.name).read_bytes() == file.read_bytes(), file.name
