"""The way from items to a deck."""

from collections.abc import Sequence

from cards.item import Item, Kind
from decks.activities.arrangement import Arrangement
from decks.activities.organizer import organizer
from decks.activities.review import review
from decks.activities.rounds import rounds
from decks.activities.stations import stations
from decks.amounts import ALL
from decks.choosing import Choice, choose
from decks.deck import Deck
from decks.lesson.exercises import Exercise, standard
from decks.recipe import Activity, Recipe


def asked_kinds(activity: Activity) -> tuple[Kind, ...]:
    """Return what an activity is made of: supporting details are for sorting, not for asking."""
    if activity is Activity.ORGANIZER:
        return (Kind.DETAIL,)
    return (Kind.VOCABULARY, Kind.FACT, Kind.QUESTION)


def make_deck(
    recipe: Recipe,
    items: Sequence[Item],
    *,
    number: int,
    seed: str,
    exercises: Sequence[Exercise] | None = None,
) -> Deck:
    """Choose the items, give the cards their owners and labels, and add what the lesson needs.

    `exercises` are those of the workbook; without any, our own. Pure: the same arguments give the
    same deck.
    """
    kinds = asked_kinds(recipe.activity)
    pool = tuple(item for item in items if item.kind in kinds)
    choice = _choice(recipe, pool, seed)
    chosen = pool if choice is None else choice.items
    made = _arranged(recipe, chosen, pool, exercises or standard(), seed)
    return Deck(
        recipe,
        number,
        seed,
        pool,
        choice,
        made.owners,
        made.deal,
        made.hands,
        made.guides,
        made.lesson,
    )


def _choice(recipe: Recipe, pool: Sequence[Item], seed: str) -> Choice | None:
    if recipe.cards == ALL and recipe.mix is None:
        return None
    return choose(pool, count=recipe.cards, mix=recipe.mix, seed=seed)


def _arranged(
    recipe: Recipe,
    items: Sequence[Item],
    pool: Sequence[Item],
    exercises: Sequence[Exercise],
    seed: str,
) -> Arrangement:
    if recipe.activity is Activity.ROUNDS:
        return rounds(recipe, items, exercises, seed)
    if recipe.activity is Activity.STATIONS:
        return stations(recipe, items, seed)
    if recipe.activity is Activity.ORGANIZER:
        return organizer(recipe, items, seed)
    return review(recipe, items, pool, seed)
