"""Large question cards that lie at bases, in sets that replace each other."""

import random
from collections.abc import Sequence

from cards.item import Item
from decks.activities.arrangement import Arrangement, labelled, owners_called
from decks.dealing import ShareOf
from decks.lesson import Bases
from decks.lesson.bases import at_bases, equal_sets, rising_sets, sets_for
from decks.recipe import Recipe, Sets
from decks.team import MOST_TEAMS


def stations(recipe: Recipe, items: Sequence[Item], seed: str, share_of: ShareOf) -> Arrangement:
    """Part the items into sets, and order each so that a base changes its topic.

    A card's label is the number of its base.
    """
    count = sets_for(len(items), recipe.rounds, MOST_TEAMS)
    if recipe.sets is Sets.RISING:
        parted = rising_sets(items, count, random.Random(f"{seed}/sets"), share_of)
    else:
        parted = sorted(equal_sets(items, count, seed, share_of), key=len, reverse=True)
    placed = at_bases(parted)
    hands = labelled(placed, run_on=False)
    return Arrangement(
        owners_called("Set", count, recipe.ink),
        hands,
        lesson=Bases(tuple(tuple(each) for each in placed)),
    )
