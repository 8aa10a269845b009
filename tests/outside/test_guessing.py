"""What guessing earns, against a table and against every way to guess.

`data/matching_chance.csv` holds for k blanks and n words the mean, the variance, and the chances
of none and of all right, from the closed form, checked by brute force when it was made. With n = k
it is the matching problem of P. R. de Montmort, "Essay d'analyse sur les jeux de hazard", 1708.
"""

import csv
from fractions import Fraction
from itertools import permutations, product
from pathlib import Path

import pytest

from decks.bank.guessing import chance_of_full_score, mean_earned

DATA = Path(__file__).parent / "data" / "matching_chance.csv"


def table():
    with DATA.open(encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


def test_the_table_covers_one_to_ten_blanks_and_up_to_twelve_words():
    pairs = {(int(row["k"]), int(row["n"])) for row in table()}
    assert pairs == {(k, n) for k in range(1, 11) for n in range(k, 13)}


@pytest.mark.parametrize("row", table(), ids=lambda row: f"{row['k']} of {row['n']}")
def test_one_word_for_each_blank_earns_what_the_table_says(row):
    blanks, words = int(row["k"]), int(row["n"])
    fits = [{blank} for blank in range(blanks)]
    assert mean_earned(fits, words) == pytest.approx(float(row["mean_correct"]), abs=1e-6)
    chance = float(chance_of_full_score(fits, words, reusable=False))
    assert chance == pytest.approx(float(row["p_all_correct"]), rel=1e-5)


@pytest.mark.parametrize(
    ("blanks", "words"), [(k, n) for n in range(1, 8) for k in range(min(n, 5) + 1)]
)
def test_every_way_to_guess_counted_one_by_one(blanks, words):
    fits = [{blank} for blank in range(blanks)]
    ways = list(permutations(range(words), blanks))
    right = [sum(word == blank for blank, word in enumerate(way)) for way in ways]
    assert mean_earned(fits, words) == pytest.approx(sum(right) / len(ways))
    found = chance_of_full_score(fits, words, reusable=False)
    assert found == Fraction(right.count(blanks), len(ways))


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
