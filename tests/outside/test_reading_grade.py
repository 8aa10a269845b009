"""The reading grade against published examples."""

import csv
from pathlib import Path

import pytest

from cards.checking.grades import flesch_kincaid_grade
from cards.checking.syllables import syllables
from cards.checking.words import words

# Kincaid et al. 1975, with the examples of the encyclopedia article named in the file
CHECKS = Path(__file__).parent / "data" / "readability_checks.csv"
ROWS = list(
    csv.DictReader(line for line in CHECKS.read_text("utf-8").splitlines() if line[0] != "#")
)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["text"])
def test_the_formula_gives_the_published_grade(row) -> None:
    counts = {name: int(row[name]) for name in ("words", "sentences", "syllables")}
    assert flesch_kincaid_grade(**counts) == pytest.approx(float(row["fk_grade"]), abs=5e-5)


@pytest.mark.parametrize("row", ROWS[:2], ids=lambda row: row["text"])
def test_words_and_syllables_are_counted_as_published(row) -> None:
    said = words(row["text"])
    assert len(said) == int(row["words"])
    assert sum(map(syllables, said)) == int(row["syllables"])
