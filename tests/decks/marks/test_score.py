"""The score sheet that adds up by itself: what it says, and what its formulas come to.

The formulas are worked out by LibreOffice where it is installed, and always by a small evaluator of
our own that knows SUM, IF and RANK over ranges, as the Open Document formula standard has them.
"""

import csv
import io
import re
import zipfile
from collections import Counter
from random import Random

import openpyxl
import pytest
from msgspec.structs import replace
from strategies import TEAMS, card
from support.office import converted, needs_office

from decks.activities import make_deck
from decks.marks.sheet import marks_workbook
from decks.recipe import Activity, Points, Recipe
from decks.team import make_teams

EVERY_SHEET = "csv:Text - txt - csv (StarCalc):44,34,76,1,,1033,false,true,false,false,false,-1"
FIRST_ROW, FIRST_COLUMN, TOTAL, PLACE = 6, 4, 4, 5


def lesson(cards=25, teams=4, prompts=(), names=TEAMS, **settings):
    recipe = Recipe(
        title="Shore",
        teams=make_teams(list(names[:teams]), [None] * teams),
        activity=Activity.ROUNDS,
        **settings,
    )
    items = [card(n, n % 3 + 1, f"Topic {n % 4}") for n in range(cards)]
    items += [replace(card(100 + n), prompt=prompt) for n, prompt in enumerate(prompts)]
    return make_deck(recipe, items, number=1, seed="s")


def written(deck):
    return marks_workbook(deck)


def opened(data):
    return openpyxl.load_workbook(io.BytesIO(data))


def shown(path):
    """The rows of the sheet as a spreadsheet program shows them."""
    converted(path, EVERY_SHEET, path.parent)
    text = path.with_name(f"{path.stem}-Score.csv").read_text("utf-8")
    return list(csv.reader(text.splitlines()))


def to_fill(sheet):
    return [
        cell
        for row in sheet.iter_rows(min_row=FIRST_ROW, min_col=FIRST_COLUMN)
        for cell in row
        if cell.data_type != "f"
    ]


def filled(deck, seed=1, most=3):
    """Return a book with points in every place, and every team's points round by round."""
    book = opened(written(deck))
    generator = Random(seed)
    sums = Counter()
    for cell in to_fill(book["Score"]):
        cell.value = generator.randint(0, most)
        round_name = book["Score"].cell(cell.row, 1).value
        sums[round_name, cell.column] += cell.value
    return book, sums


def expected(deck, sums):
    """Totals and places by counting, in the order of the teams."""
    columns = range(FIRST_COLUMN, FIRST_COLUMN + len(deck.recipe.teams))
    totals = [sum(sums[owner.name, column] for owner in deck.owners) for column in columns]
    places = [1 + sum(other > own for other in totals) for own in totals]
    return totals, places if any(totals) else [""] * len(totals)


class Evaluator:
    """Works out the three functions that the sheet uses; anything else is an error."""

    def __init__(self, sheet):
        self.sheet = sheet

    def value(self, at):
        cell = self.sheet[at]
        return self.formula(cell.value[1:]) if cell.data_type == "f" else cell.value

    def numbers(self, text):
        cells = [
            cell.coordinate
            for part in text.replace("$", "").split(",")
            for row in (self.sheet[part] if ":" in part else ((self.sheet[part],),))
            for cell in row
        ]
        values = [self.value(at) for at in cells]
        return [value for value in values if isinstance(value, int | float)]

    def formula(self, text):
        if found := re.fullmatch(r"SUM\(([A-Z0-9$:,]+)\)", text):
            return sum(self.numbers(found[1]))
        found = re.fullmatch(r'IF\(SUM\(([^)]+)\)=0,"",RANK\(([A-Z]+\d+),([^)]+)\)\)', text)
        assert found, text
        if sum(self.numbers(found[1])) == 0:
            return ""
        own = self.value(found[2])
        return 1 + sum(other > own for other in self.numbers(found[3]))


@pytest.mark.parametrize(("cards", "teams"), [(1, 2), (10, 4), (72, 12)])
@pytest.mark.parametrize("seed", [1, 2])
def test_sums_totals_and_places_are_those_of_counting(cards, teams, seed):
    deck = lesson(cards, teams)
    book, sums = filled(deck, seed)
    evaluator = Evaluator(book["Score"])
    totals, places = expected(deck, sums)
    letters = [openpyxl.utils.get_column_letter(FIRST_COLUMN + n) for n in range(teams)]
    assert [evaluator.value(f"{letter}{TOTAL}") for letter in letters] == totals
    assert [evaluator.value(f"{letter}{PLACE}") for letter in letters] == places
    for row in range(FIRST_ROW, book["Score"].max_row + 1):
        name = book["Score"].cell(row, 1).value
        if name.endswith(": sum"):
            for n, letter in enumerate(letters):
                own = sums[name.removesuffix(": sum"), FIRST_COLUMN + n]
                assert evaluator.value(f"{letter}{row}") == own


@needs_office
@pytest.mark.parametrize(("cards", "teams"), [(10, 4), (72, 12)])
def test_a_spreadsheet_program_works_out_the_same(tmp_path, cards, teams):
    deck = lesson(cards, teams)
    book, sums = filled(deck)
    book.save(tmp_path / "marks.xlsx")
    rows = shown(tmp_path / "marks.xlsx")
    totals, places = expected(deck, sums)
    assert rows[TOTAL - 1][FIRST_COLUMN - 1 :] == [str(total) for total in totals]
    assert rows[PLACE - 1][FIRST_COLUMN - 1 :] == [str(place) for place in places]


@needs_office
def test_as_long_as_nothing_is_typed_there_are_no_places(tmp_path):
    (tmp_path / "marks.xlsx").write_bytes(written(lesson(10)))
    rows = shown(tmp_path / "marks.xlsx")
    assert rows[TOTAL - 1][FIRST_COLUMN - 1 :] == ["0"] * 4
    assert rows[PLACE - 1][FIRST_COLUMN - 1 :] == [""] * 4


def test_the_file_holds_what_its_formulas_come_to_for_programs_that_only_show_it():
    sheet = openpyxl.load_workbook(io.BytesIO(written(lesson(10))), data_only=True)["Score"]
    assert [sheet.cell(TOTAL, FIRST_COLUMN + n).value for n in range(4)] == [0] * 4
    assert not any(sheet.cell(PLACE, FIRST_COLUMN + n).value for n in range(4))


def test_teams_with_equal_points_share_a_place():
    book = opened(written(lesson(2, 3)))
    sheet = book["Score"]
    for column, points in ((4, 3), (5, 3), (6, 1)):
        sheet.cell(FIRST_ROW, column).value = points
    assert [Evaluator(sheet).value(f"{letter}{PLACE}") for letter in "DEF"] == [1, 1, 3]


def test_every_question_has_a_row_in_calling_order_and_no_answer_stands_anywhere():
    deck = lesson(25)
    sheet = opened(written(deck))["Score"]
    rows = [
        (str(label), question)
        for _round, label, question in sheet.iter_rows(
            min_row=FIRST_ROW, max_col=3, values_only=True
        )
        if label
    ]
    assert rows == [(card.label, card.item.prompt) for card in deck.cards]
    said = {str(cell.value) for row in sheet.iter_rows() for cell in row}
    assert not any(card.item.answer in said for card in deck.cards)


@pytest.mark.parametrize(
    ("points", "offered"),
    [(Points(), "0,1,2,3"), (Points(2, 1, 0), "0,1,2,3"), (Points(1, 0, 0), "0,1")],
)
def test_every_place_offers_the_points_there_are_and_no_other_cell_does(points, offered):
    sheet = opened(written(lesson(25, points=points)))["Score"]
    (validation,) = sheet.data_validations.dataValidation
    assert validation.formula1 == f'"{offered}"'
    # "stop" is what a rule does that does not say (ECMA-376, errorStyle)
    assert (validation.errorStyle or "stop", validation.showErrorMessage) == ("stop", True)
    covered = {at for area in validation.sqref.ranges for row in area.rows for at in row}
    assert covered == {(cell.row, cell.column) for cell in to_fill(sheet)}


def test_places_take_numbers_and_not_texts_so_that_they_are_added_up():
    sheet = opened(written(lesson(10)))["Score"]
    assert {cell.number_format for cell in to_fill(sheet)} == {"0"}
    assert all(cell.value is None for cell in to_fill(sheet))


def test_the_names_and_the_sums_stay_in_sight():
    assert opened(written(lesson(10)))["Score"].freeze_panes == "D6"


HOSTILE = ["=1+1", "+1", "-5", "@SUM(A1)", '=HYPERLINK("x")', "\tx"]


def test_texts_that_look_like_formulas_stay_texts():
    deck = lesson(0, 2, prompts=HOSTILE, names=("=Heron", "@Otter"))
    book = opened(written(deck))
    formulas = [
        cell.value for row in book["Score"].iter_rows() for cell in row if cell.data_type == "f"
    ]
    assert all(re.match(r"=(SUM\([A-Z0-9:,]+\)$|IF\(SUM\()", formula) for formula in formulas)
    texts = {cell.value for row in book["Score"].iter_rows() for cell in row}
    assert {"=Heron", "@Otter", *(prompt for prompt in HOSTILE if prompt[0] != "\t")} <= texts


def test_the_same_lesson_gives_the_same_bytes_and_no_time_of_making():
    deck = lesson(25)
    assert written(deck) == written(deck)
    with zipfile.ZipFile(io.BytesIO(written(deck))) as archive:
        assert {entry.date_time for entry in archive.infolist()} == {(1980, 1, 1, 0, 0, 0)}
        times = re.findall(rb"[0-9]{4}-[0-9-]+T[0-9:]+Z", archive.read("docProps/core.xml"))
    assert set(times) == {b"1980-01-01T00:00:00Z"}
