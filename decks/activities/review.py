"""Cards that are asked and answered, or gathered: each team has its own."""

from collections.abc import Sequence

from cards.item import Item
from decks.activities.arrangement import Arrangement, labelled
from decks.bank import Guide, make_guide
from decks.dealing import Deal, deal_copies, deal_shares
from decks.recipe import Dealing, GuideFor, Recipe


def review(recipe: Recipe, items: Sequence[Item], pool: Sequence[Item], seed: str) -> Arrangement:
    """Deal the items to the teams, label the cards and write the study guides.

    A hand's order is the seed's, so that a number says nothing of level, topic or answer, and a
    team's numbers follow one another, so that a lost card shows.
    """
    names = [team.name for team in recipe.teams]
    dealt = deal_copies if recipe.deal is Dealing.COPIES else deal_shares
    deal = dealt(items, names, seed)
    hands = labelled(deal.hands, run_on=recipe.deal is Dealing.SHARES)
    return Arrangement(recipe.teams, hands, deal, _guides(recipe, deal, items, pool, seed))


def _guides(
    recipe: Recipe, deal: Deal, items: Sequence[Item], pool: Sequence[Item], seed: str
) -> tuple[Guide, ...]:
    return tuple(
        make_guide(team, blanks, pool, extra_words=recipe.extra_words, seed=seed)
        for team, blanks in _asked(recipe, deal, items)
        if blanks
    )


def _asked(
    recipe: Recipe, deal: Deal, items: Sequence[Item]
) -> list[tuple[str | None, Sequence[Item]]]:
    """Return for each guide whose it is, None for the class, and what it asks."""
    if recipe.guide is GuideFor.TEAM:
        return [(team.name, hand) for team, hand in zip(recipe.teams, deal.hands, strict=True)]
    return [(None, items)] if recipe.guide is GuideFor.CLASS else []
