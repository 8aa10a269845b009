"""The ranks of effort of our own exercises against the two compendia of physical activities.

Butte et al. 2018 (Medicine & Science in Sports & Exercise 50, 246-256), smoothed METy by age, and
Herrmann et al. 2024 (Journal of Sport and Health Science 13, 6-12), MET of adults. Neither lists
exercises at a table's side: each of ours is set beside the row that it is most like, which is our
own judgement. Only ranks are taken from the tables.
"""

import csv
from itertools import pairwise
from pathlib import Path

import pytest

from decks.lesson.exercises import Effort, standard

DATA = Path(__file__).parent / "data"

YOUTH = {
    "March on the spot": "80180X",  # walk, 2.5 mph
    "Circles with both arms": "85100X",  # hand weights
    "Stand up, sit down": "30300X",  # body-weight strength
    "Step wide and reach up": "30200X",  # calisthenics
    "Skip without a rope": "10260X",  # jump rope
    "Lean to the wall, push away": "30300X",
    "Run on the spot, knees high": "60140X",  # jog, self-paced
    "Sidestep like a crab": "40100X",  # dance
}
ADULT = {
    "March on the spot": "17190",  # walking, level
    "Circles with both arms": "02101",  # stretching, mild
    "Stand up, sit down": "02344",  # sit to stand, 18-24 a minute
    "Step wide and reach up": "02022",  # calisthenics, moderate
    "Rise onto your toes": "02024",  # calisthenics, light
    "Skip without a rope": "15552",  # rope jumping, slow
    "Lean to the wall, push away": "02056",  # body-weight resistance
    "Run on the spot, knees high": "12025",  # jogging in place
    "Stand on one leg like a heron": "02101",
}


def table(name, column):
    lines = (DATA / name).read_text(encoding="utf-8").splitlines()
    rows = csv.DictReader(line for line in lines if not line.startswith("#"))
    return {row["code"]: float(row[column]) for row in rows}


def ranges(rows, values):
    """The least and the greatest value of the exercises of each rank."""
    ranked = {effort: [] for effort in Effort}
    for exercise in standard():
        if exercise.name in rows:
            ranked[exercise.effort].append(values[rows[exercise.name]])
    return [(min(found), max(found)) for found in ranked.values()]


@pytest.mark.parametrize("age", ["age6_9", "age10_12", "age13_15", "age16_18"])
def test_every_rank_lies_above_the_one_below_at_every_age(age):
    spans = ranges(YOUTH, table("youth_mety_smoothed.csv", age))
    assert all(lower[1] < higher[0] for lower, higher in pairwise(spans))


def test_every_rank_lies_above_the_one_below_for_adults():
    spans = ranges(ADULT, table("adult_met_2024.csv", "met_2024"))
    assert all(lower[1] < higher[0] for lower, higher in pairwise(spans))


def test_the_table_of_adults_is_that_of_2024():
    """Vigorous calisthenics are 7.5 MET since that edition; they were 8.0 in the one of 2011."""
    assert table("adult_met_2024.csv", "met_2024")["02020"] == 7.5


def test_every_exercise_of_ours_is_in_one_of_the_tables_and_every_row_is_one_of_ours():
    assert {exercise.name for exercise in standard()} == set(YOUTH) | set(ADULT)
