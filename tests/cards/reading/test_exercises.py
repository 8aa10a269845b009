import openpyxl
import pytest

from cards.digest import digest_of
from cards.reading import read


def workbook(path, rows):
    book = openpyxl.Workbook()
    facts = book.active
    facts.title = "Facts"
    for row in (("Prompt", "Answer"), ("A limpet holds on with one strong …", "foot")):
        facts.append(row)
    sheet = book.create_sheet("Exercises")
    for row in rows:
        sheet.append(row)
    book.save(path)
    return path


def texts(row):
    cells = (row.name, row.how_many, row.gentler, row.effort)
    return tuple(cell.text if cell else "" for cell in cells)


@pytest.mark.parametrize(
    "rows",
    [
        [
            ("Exercise", "How many", "Gentler option", "Effort"),
            ("Wade on the spot", "20 steps", "slowly", "moderate"),
        ],
        [
            ("Effort", "Exercises", "Easier option", "Count"),
            ("moderate", "Wade on the spot", "slowly", "20 steps"),
        ],
        [("Wade on the spot", "20 steps", "slowly", "moderate")],
    ],
)
def test_exercises_are_read_by_their_headings_or_in_the_usual_order(tmp_path, rows):
    content = read(workbook(tmp_path / "Shore.xlsx", rows))
    assert [texts(row) for row in content.exercises] == [
        ("Wade on the spot", "20 steps", "slowly", "moderate")
    ]
    assert [item.answer for item in content.items] == ["foot"]


def test_an_exercise_may_have_a_name_only_and_rows_without_one_are_passed_over(tmp_path):
    rows = [("Exercise", "How many"), ("Dig like a crab", None), (None, "10"), ("Preen", "5 times")]
    content = read(workbook(tmp_path / "Shore.xlsx", rows))
    assert [texts(row) for row in content.exercises] == [
        ("Dig like a crab", "", "", ""),
        ("Preen", "5 times", "", ""),
    ]


def test_another_exercise_makes_other_content(tmp_path):
    one = read(workbook(tmp_path / "One.xlsx", [("Exercise",), ("Preen",)]))
    assert [texts(row)[0] for row in one.exercises] == ["Preen"]
    other = read(workbook(tmp_path / "Other.xlsx", [("Exercise",), ("Wade",)]))
    assert digest_of(one) != digest_of(other)
