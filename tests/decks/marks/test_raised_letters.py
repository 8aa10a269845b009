"""Raised and lowered letters stay what they are where marks are written down and told."""

import io

import pdfplumber
from openpyxl import load_workbook
from support.items import item
from support.marking import deck, in_rounds, items

from cards.style import Span, TextStyle
from decks.marks.figures import figures
from decks.marks.marked import Count, Marks
from decks.marks.results import results
from decks.marks.sheet import marks_workbook
from decks.marks.summary import sentences
from decks.press.results.shows import shows_file
from decks.recipe import Activity

UP, DOWN = TextStyle.RAISED, TextStyle.LOWERED
PARTICLES = item(
    "6 × 1023 ÷ 2 = ?",
    "3 × 1023",
    row=90,
    prompt_spans=(Span(6, 8, UP),),
    answer_spans=(Span(6, 8, UP),),
)
SULFATE = item("Sulfate ion?", "SO42−", row=91, answer_spans=(Span(2, 3, DOWN), Span(3, 5, UP)))
CHEMISTRY = [*items(10), PARTICLES, SULFATE]


def cells_of(made, sheet):
    book = load_workbook(io.BytesIO(marks_workbook(made)))
    return {cell.value for row in book[sheet].iter_rows() for cell in row}


def found_in(made):
    return results(made, Marks(tuple(Count(card.item.key, 0, 8) for card in made.cards)))


def test_the_tally_and_the_score_sheet_have_the_power_that_the_card_has():
    assert "6 × 10²³ ÷ 2 = ?" in cells_of(deck(chosen=CHEMISTRY), "Tally")
    assert "6 × 10²³ ÷ 2 = ?" in cells_of(in_rounds(chosen=CHEMISTRY), "Score")


def test_a_gathered_card_is_told_with_its_charge():
    assert "SO₄²⁻" in cells_of(deck(chosen=CHEMISTRY, activity=Activity.COLLECT), "Tally")


def test_what_was_missed_is_named_as_it_is_on_the_card():
    found = found_in(deck(chosen=[PARTICLES, SULFATE]))
    told = " ".join(sentence.text for sentence in sentences(found))
    assert "(3 × 10²³)" in told
    assert "(SO₄²⁻)" in told
    assert {one["answer"] for one in figures(found)["items"]} == {"3 × 10²³", "SO₄²⁻"}


def test_the_paper_that_shows_it_has_no_other_number():
    made = deck(chosen=[PARTICLES])
    with pdfplumber.open(io.BytesIO(shows_file(made, found_in(made)))) as pdf:
        text = "".join(page.extract_text() for page in pdf.pages)
    assert text.count("10²³") == 3  # in the words, the picture and the table
    assert "1023" not in text
