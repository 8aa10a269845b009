"""The way from items to a deck."""

from collections.abc import Sequence
from typing import TYPE_CHECKING

from cards.item import Item
from decks.activities.arrangement import Arrangement
from decks.activities.organizer import organizer
from decks.activities.review import review
from decks.activities.rounds import rounds
from decks.activities.stations import stations
from decks.amounts import ALL
from decks.dealing import ShareOf, share_by_level
from decks.deck import Deck
from decks.lesson.exercises import Exercise, standard
from decks.recipe import Activity, Recipe

if TYPE_CHECKING:
    from decks.aims import Plan
    from decks.choosing import Choice


def make_deck(  # noqa: PLR0913 (a recipe, items, and what a deck is known and chosen by)
    recipe: Recipe,
    items: Sequence[Item],
    *,
    number: int,
    seed: str,
    exercises: Sequence[Exercise] = (),
    plan: "Plan | None" = None,
) -> Deck:
    """Choose the items, give the cards their owners and labels, and add what the lesson needs.

    `exercises` are those of the workbook; without any, our own. With a `plan` the items are its
    choice, and its recipe is to be that of the deck. Pure: the same arguments give the
    same deck.
    """
    kinds = recipe.activity.asks
    pool = tuple(item for item in items if item.kind in kinds)
    choice = plan.choice if plan else _choice(recipe, pool, seed)
    chosen = pool if choice is None else choice.items
    share_of = plan.share if plan else share_by_level
    made = _arranged(recipe, chosen, pool, exercises or standard(), seed, share_of)
    return Deck(
        recipe=recipe,
        number=number,
        seed=seed,
        pool=pool,
        choice=choice,
        owners=made.owners,
        deal=made.deal,
        hands=made.hands,
        guides=made.guides,
        lesson=made.lesson,
        plan=plan,
        shares=_shares(plan),
    )


def _shares(plan: "Plan | None") -> dict[str, float]:
    """Return by key the shares that marks have moved away from what the level says."""
    if plan is None:
        return {}
    shares = {item: plan.share(item) for item in plan.choice.items}
    return {item.key: share for item, share in shares.items() if share != item.level.expected_share}


def _choice(recipe: Recipe, pool: Sequence[Item], seed: str) -> "Choice | None":
    if recipe.cards == ALL and recipe.mix is None:
        return None
    from decks.choosing import choose  # noqa: PLC0415 (most decks have all there is)

    return choose(pool, count=recipe.cards, mix=recipe.mix, seed=seed)


def _arranged(  # noqa: PLR0913, PLR0917 (what the activities need between them)
    recipe: Recipe,
    items: Sequence[Item],
    pool: Sequence[Item],
    exercises: Sequence[Exercise],
    seed: str,
    share_of: ShareOf,
) -> Arrangement:
    if recipe.activity is Activity.ROUNDS:
        return rounds(recipe, items, exercises, seed, share_of)
    if recipe.activity is Activity.STATIONS:
        return stations(recipe, items, seed, share_of)
    if recipe.activity is Activity.ORGANIZER:
        return organizer(recipe, items, seed)
    return review(recipe, items, pool, seed, share_of)
