"""A text from the workbook prints as it was typed, whatever it looks like."""

import json

import openpyxl
import pypdfium2
import pytest
from support.shore import fairdeal

AWKWARD = [
    "<b>",
    "</para>",
    "AT&T",
    "x<y",
    '<img src="C:/secret.png">',
    "=1+1",
    "{x}",
    "%s %d",
    "\\n",
    "&lt;",
    "-5",
    "@home",
    "007",
    "1E5",
    "3/4",
    "64%",
    "NA",
    "None",
    "null",
    "TRUE",
    "$x_1$",
    "’quoted‘",
    "café Ωmega Жизнь",
    "H₂O ≤ 5 °C",
]


def write_workbook(path):
    book = openpyxl.Workbook()
    facts = book.active
    facts.title = "Facts"
    facts.append(["Prompt", "Answer", "Topic", "Also right"])
    for n, text in enumerate(AWKWARD):
        facts.append([f"{text} asks {n}", text, text, f"also {text}"])
    teams = book.create_sheet("Teams")
    teams.append(["Team", "Colour"])
    teams.append(["<i>A&B", "blue"])
    teams.append(["=2+2", "orange"])
    deck = book.create_sheet("Deck")
    deck.append(["Setting", "Value"])
    deck.append(["Title", "<u>T&T</u>"])
    for sheet in book:
        for row in sheet.iter_rows():
            for cell in row:
                cell.data_type = "s"
    book.save(path)


@pytest.fixture(scope="module")
def deck(tmp_path_factory):
    folder = tmp_path_factory.mktemp("typed")
    write_workbook(folder / "Typed & <odd>.xlsx")
    done = fairdeal("build", folder / "Typed & <odd>.xlsx")
    assert done.returncode == 0, done.stderr
    return folder / "Typed & <odd> decks" / "01"


def printed(path):
    document = pypdfium2.PdfDocument(path)
    text = " ".join(page.get_textpage().get_text_bounded() for page in document)
    document.close()
    return "".join(text.split())


@pytest.mark.parametrize("text", AWKWARD)
@pytest.mark.parametrize("paper", ["cards.pdf", "study-guide.pdf", "teacher.pdf"])
def test_an_awkward_text_is_printed_as_it_was_typed(deck, text, paper):
    assert "".join(text.split()) in printed(deck / paper)


@pytest.mark.parametrize("paper", ["cards.pdf", "study-guide.pdf", "teacher.pdf"])
def test_so_are_the_title_and_the_teams(deck, paper):
    text = printed(deck / paper)
    assert "<u>T&T</u>" in text
    assert "<i>A&B" in text
    assert "=2+2" in text


def test_the_record_holds_the_texts_unchanged(deck):
    record = json.loads((deck / "deck.json").read_text(encoding="utf-8"))
    assert {card["answer"] for card in record["cards"]} == set(AWKWARD)
