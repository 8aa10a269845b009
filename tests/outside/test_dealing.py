"""What graph theory and the theory of scheduling say can be dealt, and what cannot.

Items are the edges of a bipartite graph between levels and topics, teams are colours. D. de Werra
showed that every bipartite multigraph has, for any number of colours, an edge colouring in which
the colours at each vertex, in the whole graph, and among parallel edges occur equally often within
one: "Equitable colorations of graphs", Revue française d'informatique et de recherche
opérationnelle 5 (R-3), 1971, 3-8, and "Balanced schedules", INFOR 9, 1971, 230-237 (the citations
are from memory).

The instances of data/partition_instances.csv are those for which dealing the largest first does
worst (R. L. Graham, "Bounds on multiprocessing timing anomalies", SIAM Journal on Applied
Mathematics 17, 1969, 416-429) and the example of the differencing method (N. Karmarkar and
R. M. Karp, "The differencing method of set partitioning", 1982), both citations from memory.
"""

import csv
from collections import Counter
from itertools import combinations_with_replacement, product
from pathlib import Path

import pytest
from strategies import TEAMS, card

from cards.item import Kind
from decks.dealing import deal_shares


def differences(hands, value):
    held = [Counter(map(value, hand)) for hand in hands]
    values = {key for counter in held for key in counter}
    return [max(c[v] for c in held) - min(c[v] for c in held) for v in values]


def coloured(edges, colours):
    """Deal one card for each (level, topic), to as many teams as there are colours."""
    items = [card(n, level, f"Topic {topic}") for n, (level, topic) in enumerate(edges)]
    return deal_shares(items, TEAMS[:colours], "shore").hands


def is_equitable(hands):
    values = (
        lambda _item: "any",
        lambda item: item.level,
        lambda item: item.topic,
        lambda item: (item.level, item.topic),
    )
    return all(difference <= 1 for value in values for difference in differences(hands, value))


@pytest.mark.parametrize("colours", range(1, 13))
@pytest.mark.parametrize("topics", [1, 3, 5, 8])
def test_the_complete_bipartite_graph_of_three_levels_has_an_equitable_colouring(topics, colours):
    assert is_equitable(coloured(product((1, 2, 3), range(topics)), colours))


@pytest.mark.parametrize("colours", [2, 3])
def test_every_bipartite_multigraph_of_up_to_six_edges_on_two_by_two_has_one(colours):
    places = list(product((1, 2), (1, 2)))
    graphs = [g for size in range(7) for g in combinations_with_replacement(places, size)]
    assert len(graphs) == 210  # the sum of C(size + 3, 3) over sizes 0 to 6, which is C(10, 4)
    assert all(is_equitable(coloured(graph, colours)) for graph in graphs)


def test_three_crossing_attributes_can_be_impossible_and_are_reported_as_such():
    # Facts like (a1, b1, c1), (a1, b2, c2), (a2, b2, c1), two teams: a1 parts the first two cards,
    # b2 the last two, so that the first and the last, which share c1, meet in one team.
    items = [
        card(0, 1, "Tides", Kind.FACT),
        card(1, 1, "Zones", Kind.QUESTION),
        card(2, 2, "Zones", Kind.FACT),
    ]
    deal = deal_shares(items, TEAMS[:2], "shore")
    reached = {goal.name: (goal.reached, goal.bound) for goal in deal.goals if goal.unit == "cards"}
    assert reached == {"cards": (1, 1), "level": (1, 1), "topic": (1, 1), "kind": (2, 2)}
    assert differences(deal.hands, lambda item: item.kind) in ([2, 1], [1, 2])


def instances():
    lines = (Path(__file__).parent / "data" / "partition_instances.csv").read_text("utf-8")
    rows = csv.DictReader(line for line in lines.splitlines() if not line.startswith("#"))
    return [
        (int(row["teams"]), [int(size) for size in row["items"].split()], int(row["opt_max"]))
        for row in rows
    ]


def assert_best(deal, load, weigh, best):
    (goal,) = [goal for goal in deal.goals if goal.name == load]
    sums = [sum(map(weigh, hand)) for hand in deal.hands]
    assert max(sums) == best
    assert goal.proven


@pytest.mark.parametrize(("teams", "sizes", "best"), instances())
def test_where_the_largest_first_does_worst_words_are_dealt_to_the_known_best(teams, sizes, best):
    # the clue has two words of its own
    items = [card(n, answer=" ".join(["weed"] * (size - 2))) for n, size in enumerate(sizes)]
    deal = deal_shares(items, TEAMS[:teams], "shore")
    assert_best(deal, "reading load", lambda i: len(f"{i.prompt} {i.answer}".split()), best)


@pytest.mark.parametrize(("teams", "sizes", "best"), instances())
def test_and_so_are_expected_points(teams, sizes, best):
    items = [card(n) for n in range(len(sizes))]
    tenths = {item.prompt: size for item, size in zip(items, sizes, strict=True)}
    deal = deal_shares(items, TEAMS[:teams], "shore", lambda item: tenths[item.prompt] / 10)
    assert_best(deal, "expected points", lambda item: tenths[item.prompt], best)
