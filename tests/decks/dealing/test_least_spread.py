"""What no deal can beat is never above the best deal there is, and often is the best.

Small decks are dealt in every way there is to find the best.
"""

from collections import Counter
from itertools import product

import pytest
from hypothesis import example, given, settings
from hypothesis import strategies as st

from decks.dealing.counting import least_spread
from decks.dealing.even import Range, evenest


def hand_sizes(homes, teams):
    pinned = tuple(homes.count(team) for team in range(teams))
    free = homes.count(None)
    return Range((0,), free, pinned, *evenest(pinned, free))


def best_of_all(load, homes, sizes):
    """Return the least difference between the heaviest hand and the lightest, over all deals."""
    teams = range(len(sizes.pinned))
    found = []
    for owners in product(*[teams if home is None else [home] for home in homes]):
        cards, sums = Counter(owners), Counter(dict.fromkeys(teams, 0))
        for weight, owner in zip(load, owners, strict=True):
            sums[owner] += weight
        if all(sizes.least <= cards[team] <= sizes.most for team in teams):
            found.append(max(sums.values()) - min(sums.values()))
    return min(found)


@st.composite
def loads(draw):
    """Draw the teams, and for up to six items their weights and the teams they are pinned to."""
    teams = draw(st.integers(1, 3))
    home = st.sampled_from([None, None, *range(teams)])
    items = draw(st.lists(st.tuples(st.integers(0, 9), home), min_size=1, max_size=6))
    weights, homes = zip(*items, strict=True)
    return teams, weights, homes


# Hand 0 is full with 17; whatever is free goes to hand 1, which could hold more than there is.
@example((2, (9, 6, 2, 5, 7), (0, 0, 0, None, None)))
# Hands of one card and of three weigh whole steps more or less, and can weigh the same.
@example((2, (1, 1, 1, 3), (0, 0, 0, None)))
@example((3, (1, 1, 1, 4, 4), (0, 0, 0, None, None)))
@settings(deadline=None)
@given(loads())
def test_no_deal_is_below_what_is_said_to_be_the_least(case):
    teams, load, homes = case
    sizes = hand_sizes(homes, teams)
    assert 0 <= least_spread(load, homes, sizes) <= best_of_all(load, homes, sizes)


@pytest.mark.parametrize(
    ("teams", "load", "pins"),
    [
        # steps: sums of odd numbers are odd or even with the number of cards
        (2, (9, 9, 7, 7, 1), {}),
        (2, (12, 9, 7, 7, 5, 5), {}),
        (3, (9, 9, 5, 5, 5, 1), {}),
        (3, (12, 12, 7, 2), {}),
        (3, (9, 9, 9, 7, 7, 7, 3), {}),
        (2, (12, 7, 7, 7, 2, 2, 2), {2: 1, 5: 1}),
        (3, (12, 7, 7, 7, 7, 7, 2), {3: 1, 5: 1}),
        # one weight: what a hand has more is one card
        (3, (9, 9, 9), {0: 0, 1: 0}),
        (2, (6, 6, 6), {}),
        # a team must carry the heaviest card, or two or three of the heaviest
        (2, (12, 5, 2), {}),
        (2, (12, 3, 3, 2, 1, 1, 1), {}),
        (2, (12, 12, 12, 2, 1, 0), {}),
        (3, (12, 12, 9, 9), {}),
        (3, (12, 7, 5, 2, 2, 1, 1), {}),
        (2, (9, 9, 9, 8, 8, 1, 1, 0), {}),
        # a team cannot carry more than the lightest cards allow
        (3, (2, 1), {}),
        (3, (9, 9, 9, 7, 7), {}),
        (3, (9, 7, 5, 2, 2, 1), {}),
        (3, (9, 7, 2, 1), {1: 0, 2: 0, 3: 0}),
        # pinned cards: a hand is heavy, or light, before anything is dealt
        (2, (12, 9, 5), {0: 1, 1: 1}),
        (2, (12, 9, 3, 1, 1, 1), {0: 0, 1: 0, 2: 1, 5: 1}),
        (2, (12, 12, 5, 3, 3, 1, 1), {0: 0, 2: 0, 3: 0, 4: 1, 5: 1}),
        (3, (12, 9, 2), {0: 1, 2: 0}),
        (3, (7, 7, 3, 3, 1, 1), {0: 0, 1: 0, 2: 0, 4: 1, 5: 1}),
    ],
)
def test_the_least_is_reached_where_one_cause_alone_keeps_teams_apart(teams, load, pins):
    homes = [pins.get(item) for item in range(len(load))]
    sizes = hand_sizes(homes, teams)
    assert least_spread(load, homes, sizes) == best_of_all(load, homes, sizes) > 0


def test_nothing_keeps_one_team_or_no_cards_apart():
    assert least_spread((3, 4), [None, None], hand_sizes([None, None], 1)) == 0
    assert least_spread((), [], hand_sizes([], 3)) == 0


# Each worked out by hand: what the first team has for certain, and what is left for the others.
@pytest.mark.parametrize(
    ("load", "pinned", "least"),
    [
        # 40 + 40 + 1 at the least; of the other 65 some team has no more than 32
        ((40, 40, 1, 1, 2, 50, 3, 4, 5), 2, 81 - 32),
        # 1 + 1 + 50 at the most; of the other 250 some team has 125
        ((1, 1, 40, 40, 41, 42, 43, 44, 50), 2, 125 - 52),
        # its hand is full with 1 + 1; of the other 166 some team has 83
        ((1, 1, 40, 41, 42, 43), 2, 83 - 2),
    ],
)
def test_what_is_pinned_to_one_of_three_teams_keeps_it_apart(load, pinned, least):
    homes = [0] * pinned + [None] * (len(load) - pinned)
    sizes = hand_sizes(homes, 3)
    assert least_spread(load, homes, sizes) == least <= best_of_all(load, homes, sizes)
