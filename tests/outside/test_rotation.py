"""The orders of bases against the published property of Williams designs.

E. J. Williams 1949, Australian Journal of Scientific Research A 2, 149-168; the table beside this
file holds designs for 3 to 8 bases, built independently and verified.
"""

import csv
from collections import Counter
from itertools import islice, pairwise
from pathlib import Path

import pytest

from decks.lesson.rotation import orders_for, williams_orders

TABLE = Path(__file__).parent / "data" / "williams_rotations.csv"


def published(bases):
    lines = [line for line in TABLE.read_text().splitlines() if not line.startswith("#")]
    return [row["order"].split() for row in csv.DictReader(lines) if int(row["n"]) == bases]


def neighbours(orders):
    return Counter(pair for order in orders for pair in pairwise(order))


@pytest.mark.parametrize("bases", range(3, 9))
def test_the_orders_are_those_of_the_published_design(bases):
    table = {tuple(int(base) - 1 for base in order) for order in published(bases)}
    assert set(williams_orders(bases)) == table


@pytest.mark.parametrize("bases", range(2, 13))
def test_every_base_follows_every_other_equally_often(bases):
    times = neighbours(tuple(williams_orders(bases)))
    assert set(times.values()) == {1 if bases % 2 == 0 else 2}
    assert len(times) == bases * (bases - 1)


@pytest.mark.parametrize("bases", range(1, 13))
def test_no_two_groups_are_at_one_base_at_the_same_time(bases):
    for moment in zip(*islice(williams_orders(bases), bases), strict=True):
        assert sorted(moment) == list(range(bases))


@pytest.mark.parametrize("bases", range(3, 13, 2))
def test_for_an_odd_number_the_two_lessons_together_are_the_whole_design(bases):
    both = orders_for(bases, bases) + orders_for(bases, bases, second=True)
    if bases <= 7:
        assert set(both) == {tuple(int(base) - 1 for base in order) for order in published(bases)}
    assert set(neighbours(both).values()) == {2}
    assert len(neighbours(both)) == bases * (bases - 1)
