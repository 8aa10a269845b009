"""Uniqueness of matchings, against known counts, every way one by one, and another library.

A graph with exactly one complete matching is that matching and an acyclic digraph of the blanks (an
arrow where a blank fits another's word), and words left over fit nothing. Labelled acyclic digraphs
number 1, 3, 25, 543 for 1 to 4 points (R. W. Robinson, "Counting labeled acyclic digraphs", 1973;
the numbers are from memory), times n!/(n - k)! matchings of k blanks and n words. The one matching
leaves room for n(n + 1)/2 ones at most, as in a triangular matrix. Whether there is a complete
matching is checked against scipy.sparse.csgraph (the algorithm of Hopcroft and Karp 1973).
"""

from itertools import product, repeat

import numpy as np
import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from scipy.sparse import csr_array
from scipy.sparse.csgraph import maximum_bipartite_matching

from decks.bank.matching import (
    count_complete,
    is_only_matching,
    round_from,
    wants,
)

GRAPHS = st.integers(1, 9).flatmap(
    lambda words: st.lists(
        st.frozensets(st.integers(0, words - 1), max_size=4), min_size=1, max_size=9
    )
)


def every_graph(blanks, words):
    row = [frozenset(w for w in range(words) if bits >> w & 1) for bits in range(2**words)]
    return product(row, repeat=blanks)


def all_matchings(fits, used=frozenset()):
    """Return all ways to give each blank a word of its own: every one is tried."""
    if not fits:
        return [()]
    first, *others = fits
    return [(word, *way) for word in first - used for way in all_matchings(others, used | {word})]


def are_alone(graphs):
    """Yield the graphs of which one complete matching is told to be the only one, each time."""
    return (fits for fits in graphs for way in all_matchings(fits) if is_only_matching(fits, way))


def known_to_scipy(fits):
    """Return whether scipy finds a word for every blank."""
    table = np.zeros((len(fits), 9), dtype=int)
    for blank, words in enumerate(fits):
        table[blank, list(words)] = 1
    return bool((maximum_bipartite_matching(csr_array(table), perm_type="column") >= 0).all())


@pytest.mark.parametrize(
    ("blanks", "words", "number"),
    [
        (1, 1, 1),  # n = k: n! times the digraphs
        (2, 2, 6),
        (3, 3, 150),
        (4, 4, 13032),
        (2, 3, 18),  # 3 · 2 times 3
        (3, 4, 600),  # 4 · 3 · 2 times 25
        (2, 4, 36),  # 4 · 3 times 3
    ],
)
def test_as_many_graphs_as_are_known_have_exactly_one_complete_matching(blanks, words, number):
    assert sum(1 for _ in are_alone(every_graph(blanks, words))) == number


@pytest.mark.parametrize("size", [1, 2, 3, 4])
def test_one_matching_alone_allows_as_many_ones_as_a_triangle_and_no_more(size):
    ones = [sum(map(len, fits)) for fits in are_alone(every_graph(size, size))]
    assert max(ones) == size * (size + 1) // 2


@given(GRAPHS)
def test_a_complete_matching_is_counted_exactly_when_scipy_finds_one(fits):
    assert (count_complete(fits) > 0) == known_to_scipy(fits)


@given(GRAPHS.filter(lambda fits: len(fits) <= 5))
def test_matchings_are_counted_as_one_by_one(fits):
    ways = all_matchings(fits)
    assert count_complete(fits) == len(ways)
    assert all(is_only_matching(fits, way) == (len(ways) == 1) for way in ways)


@example([{0, 1}, {1, 2}, {2, 0}])
@example([{0, 2}, {1, 0}, {2, 1}])
@given(GRAPHS.filter(lambda fits: len(fits) <= 5))
def test_a_round_can_be_gone_and_is_the_shortest(fits):
    ways = all_matchings(fits)
    if not ways:
        return
    matching = ways[0]
    for start in range(len(fits)):
        way = round_from(wants(fits, matching), start, repeat(0))
        lengths = [
            sum(a != b for a, b in zip(other, matching, strict=True))
            for other in ways
            if sorted(other) == sorted(matching) and other[start] != matching[start]
        ]
        assert len(way) == min(lengths, default=0)
        for blank, other in zip(way, way[1:] + way[:1], strict=True):
            assert matching[other] in fits[blank]
