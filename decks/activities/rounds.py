"""Questions that are called to all teams: one set, in calling order."""

import random
from collections.abc import Sequence

from cards.item import Item
from decks.activities.arrangement import Arrangement, labelled, owners_called
from decks.card import Card
from decks.dealing import ShareOf
from decks.lesson import Call, Called
from decks.lesson.calling import calling_order, rounds_for, seconds_to_allow
from decks.lesson.exercises import Exercise, order_exercises
from decks.recipe import Choices, Recipe
from decks.team import MOST_TEAMS


def rounds(
    recipe: Recipe,
    items: Sequence[Item],
    exercises: Sequence[Exercise],
    seed: str,
    share_of: ShareOf,
) -> Arrangement:
    """Put the questions into their calling order, each with an exercise."""
    generator = random.Random(f"{seed}/rounds")
    count = min(rounds_for(len(items), recipe.rounds), MOST_TEAMS)
    hands = labelled(calling_order(items, count, generator, share_of), run_on=True)
    moves = order_exercises(exercises, len(items), generator)
    called = Called(tuple(_called(hand, moves, recipe.choices) for hand in hands))
    return Arrangement(owners_called("Round", len(hands), recipe.ink), hands, lesson=called)


def _called(hand: Sequence[Card], moves: Sequence[Exercise], choices: Choices) -> tuple[Call, ...]:
    return tuple(
        Call(card.label, card.item, move, seconds_to_allow(card.item, move, choices))
        for card in hand
        for move in [moves[int(card.label) - 1]]
    )
