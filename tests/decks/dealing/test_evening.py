"""Decks too large to be looked through are evened out as far as counting alone allows."""

import random

import pytest
from strategies import TEAMS, card

from decks.dealing import deal_shares


@pytest.mark.parametrize(("cards", "teams"), [(32, 3), (36, 4), (40, 4)])
def test_points_and_then_words_reach_what_no_deal_can_beat(cards, teams):
    drawn = random.Random(2)
    items = [
        card(
            *(n, drawn.randint(1, 3), f"Topic {drawn.randint(0, 3)}"),
            answer=" ".join([f"weed{n}"] * drawn.randint(1, 12)),
        )
        for n in range(cards)
    ]
    shares = {item.prompt: drawn.choice([0.4, 0.55, 0.7, 0.85]) for item in items}
    deal = deal_shares(items, TEAMS[:teams], "shore", lambda item: shares[item.prompt])
    hands = [[len(f"{i.prompt} {i.answer}".split()) for i in hand] for hand in deal.hands]
    reached = {goal.name: (goal.reached, goal.proven) for goal in deal.goals}
    assert reached["expected points"] in {(0, True), (150, True)}
    assert reached["reading load"] == (max(map(sum, hands)) - min(map(sum, hands)), True)
