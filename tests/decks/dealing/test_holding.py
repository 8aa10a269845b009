"""What may pass between two teams, and the counts that are kept up with every exchange."""

from hypothesis import given
from hypothesis import strategies as st
from strategies import card

from decks.dealing.cells import table_of
from decks.dealing.holding import Holding
from decks.dealing.rivals import clashes_in
from decks.dealing.stock import Fence, fence_of, stock_of

WORDS = ("ebb", "flood", "slack")


def held_by(items, homes, owners, teams, loads):
    table = table_of(items, homes, teams)
    return Holding(stock_of(items, homes, table, loads), owners, fence_of([], len(table.cells)))


@given(st.lists(st.integers(0, 12), min_size=2, max_size=5), st.integers(0, 9))
def test_as_much_may_pass_as_leaves_no_two_teams_farther_apart_than_is_allowed(sums, more):
    # the other teams, who take no part, are never farther apart than what is allowed
    most = max(sums[2:], default=0) - min(sums[2:], default=0) + more
    items, teams = [card(n) for n in range(len(sums))], len(sums)
    holding = held_by(items, [None] * teams, range(teams), teams, (tuple(sums), tuple(sums)))
    low, high = holding.room(0, 0, 1, most)
    for passed in range(-25, 26):
        after = [sums[0] - passed, sums[1] + passed, *sums[2:]]
        assert (low <= passed <= high) == (max(after) - min(after) <= most)


@st.composite
def exchanges(draw):
    """Draw cards that share answers, who holds them, and sets to exchange between two teams."""
    count, teams = draw(st.integers(2, 8)), 3
    word = st.sampled_from(WORDS)
    items = [
        card(n, draw(st.integers(1, 3)), answer=draw(word), also_right=(draw(word),))
        for n in range(count)
    ]
    owners = draw(st.lists(st.integers(0, teams - 1), min_size=count, max_size=count))
    chosen = draw(st.lists(st.tuples(*[st.booleans()] * count), max_size=4))
    return items, owners, chosen


@given(exchanges())
def test_an_exchange_changes_loads_and_clashes_as_if_all_were_counted_afresh(drawn):
    items, owners, chosen = drawn
    weights = tuple(range(1, len(items) + 1))
    loads = weights, tuple(weight * weight for weight in weights)
    holding = held_by(items, [None] * len(items), owners, 3, loads)
    for marked in chosen:
        given_away = tuple(n for n, owner in enumerate(owners) if marked[n] and owner == 0)
        taken = tuple(n for n, owner in enumerate(owners) if marked[n] and owner == 1)
        holding.exchange(0, 1, (given_away, taken))
        owners = [
            1 if n in given_away else 0 if n in taken else owner for n, owner in enumerate(owners)
        ]
        hands = [[n for n, owner in enumerate(owners) if owner == team] for team in range(3)]
        assert holding.owners == owners
        sums = [[sum(load[n] for n in hand) for hand in hands] for load in loads]
        assert holding.sums == sums
        clashes = sum(clashes_in([items[n] for n in hand]) for hand in hands)
        assert holding.standing() == (*(max(held) - min(held) for held in sums), clashes)
        for team, cells in enumerate(holding.free):
            assert sorted(n for cell in cells.values() for n in cell) == hands[team]


def test_a_fence_counts_the_cards_of_each_of_its_spans():
    items = [card(0, 1), card(1, 1), card(2, 3)]
    table = table_of(items, [None] * 3, 2)
    easy, hard = (cell.level for cell in table.cells)
    assert (easy, hard) == (1, 3)
    fence = Fence((0, 0), (3, 3), ((0,), (0, 1)), (1, 3))
    stock = stock_of(items, [None] * 3, table, ((1, 1, 1), (1, 1, 1)))
    holding = Holding(stock, [0, 1, 1], fence)
    assert holding.held == [[1, 0], [2, 1]]
    holding.exchange(1, 0, ((2,), (0,)))
    assert holding.held == [[1, 1], [2, 0]]


def test_a_card_clashes_with_the_rivals_in_its_hand_only():
    items = [card(n, answer=word) for n, word in enumerate(["ebb", "ebb", "ebb", "flood"])]
    homes, weights = [None] * 4, (1, 1, 1, 1)
    holding = held_by(items, homes, [0, 0, 1, 0], 2, (weights, weights))
    assert [holding.clashes_of(item) for item in range(4)] == [1, 1, 0, 0]
