"""What guessing earns, against a table, against named values, and against every way to guess.

`data/matching_chance.csv` holds for k blanks and n words the mean, the variance, and the chances
of none and of all right, from the closed form, checked by brute force when it was made. With n = k
it is the matching problem of P. R. de Montmort, "Essay d'analyse sur les jeux de hazard", 1708.
"""

import csv
from fractions import Fraction
from itertools import permutations, product
from math import factorial
from pathlib import Path

import pytest

from decks.bank.guessing import (
    chance_of_all,
    chance_of_exactly,
    chance_of_full_score,
    mean_earned,
    mean_right,
)

DATA = Path(__file__).parent / "data" / "matching_chance.csv"


def table():
    with DATA.open(encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def chances(blanks, words):
    return [chance_of_exactly(right, blanks, words) for right in range(blanks + 1)]


def test_the_table_covers_one_to_ten_blanks_and_up_to_twelve_words():
    pairs = {(int(row["k"]), int(row["n"])) for row in table()}
    assert pairs == {(k, n) for k in range(1, 11) for n in range(k, 13)}


@pytest.mark.parametrize("row", table(), ids=lambda row: f"{row['k']} of {row['n']}")
def test_the_table_of_matching_chances_is_met(row):
    blanks, words = int(row["k"]), int(row["n"])
    found = chances(blanks, words)
    mean = sum(right * chance for right, chance in enumerate(found))
    variance = sum((right - mean) ** 2 * chance for right, chance in enumerate(found))
    assert sum(found) == pytest.approx(1)
    assert mean_right(blanks, words) == pytest.approx(float(row["mean_correct"]), abs=1e-6)
    assert mean == pytest.approx(float(row["mean_correct"]), abs=1e-6)
    assert variance == pytest.approx(float(row["variance"]), abs=1e-6)
    assert found[0] == pytest.approx(float(row["p_zero_correct"]), abs=1e-6)
    assert chance_of_all(blanks, words) == pytest.approx(float(row["p_all_correct"]), rel=1e-5)


@pytest.mark.parametrize(
    ("blanks", "words"), [(k, n) for n in range(1, 8) for k in range(min(n, 5) + 1)]
)
def test_every_way_to_guess_counted_one_by_one(blanks, words):
    ways = list(permutations(range(words), blanks))
    right = [sum(word == blank for blank, word in enumerate(way)) for way in ways]
    for number, chance in enumerate(chances(blanks, words)):
        assert chance == pytest.approx(right.count(number) / len(ways))
    assert mean_right(blanks, words) == pytest.approx(sum(right) / len(ways))


def test_five_of_five_and_five_of_seven():
    # 44 of the 120 orders of five things leave none in place (Montmort)
    assert chance_of_exactly(0, 5, 5) == pytest.approx(44 / 120)
    assert chance_of_exactly(4, 5, 5) == 0  # four right leave only the right word for the fifth
    assert mean_right(5, 7) == pytest.approx(5 / 7)
    assert chance_of_exactly(0, 5, 7) == pytest.approx(0.48175, abs=5e-6)
    assert chance_of_all(5, 7) == pytest.approx(factorial(2) / factorial(7))


@pytest.mark.parametrize(("right", "blanks", "words"), [(0, 3, 2), (4, 3, 5), (-1, 3, 5)])
def test_what_cannot_be_is_refused(right, blanks, words):
    with pytest.raises(ValueError, match="cannot be right"):
        chance_of_exactly(right, blanks, words)


@pytest.mark.parametrize(
    ("blanks", "words"), [(k, n) for n in range(1, 6) for k in range(1, n + 1)]
)
def test_where_blanks_accept_several_words_every_way_is_counted_too(blanks, words):
    fits = [{blank, (blank + 1) % words} if blank % 2 else {blank} for blank in range(blanks)]
    for reusable in (False, True):
        ways = list(product(range(words), repeat=blanks))
        ways = ways if reusable else list(permutations(range(words), blanks))
        right = [sum(w in f for w, f in zip(way, fits, strict=True)) for way in ways]
        found = chance_of_full_score(fits, words, reusable=reusable)
        assert found == Fraction(right.count(blanks), len(ways))
        assert mean_earned(fits, words) == pytest.approx(sum(right) / len(ways))


@pytest.mark.parametrize(("blanks", "words"), [(5, 5), (5, 7), (10, 12)])
def test_one_word_each_is_the_table_again(blanks, words):
    fits = [{blank} for blank in range(blanks)]
    (row,) = (r for r in table() if (r["k"], r["n"]) == (str(blanks), str(words)))
    chance = float(chance_of_full_score(fits, words, reusable=False))
    assert chance == pytest.approx(float(row["p_all_correct"]), rel=1e-5)
    assert mean_earned(fits, words) == pytest.approx(float(row["mean_correct"]), abs=1e-6)
