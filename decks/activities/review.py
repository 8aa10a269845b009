"""Cards that are asked and answered, or gathered: each team has its own."""

from collections.abc import Sequence

from msgspec.structs import replace

from cards.item import Item
from decks.activities.arrangement import Arrangement, labelled
from decks.bank import Guide, Pool, make_guide
from decks.dealing import Deal, ShareOf, deal_copies, deal_shares
from decks.recipe import Dealing, GuideFor, Recipe, Support, choices_are_printed


def review(
    recipe: Recipe,
    items: Sequence[Item],
    pool: Sequence[Item],
    seed: str,
    share_of: ShareOf,
) -> Arrangement:
    """Deal the items to the teams, label the cards and write the study guides.

    A hand's order is the seed's, so that a number says nothing of level, topic or answer, and a
    team's numbers follow one another, so that a lost card shows.
    """
    names = [team.name for team in recipe.teams]
    if recipe.deal is Dealing.COPIES:
        deal = deal_copies(items, names, seed)
    else:
        deal = deal_shares(items, names, seed, share_of)
    hands = labelled(deal.hands, run_on=recipe.deal is Dealing.SHARES)
    return Arrangement(recipe.teams, hands, deal, _guides(recipe, deal, items, pool, seed))


def _guides(
    recipe: Recipe, deal: Deal, items: Sequence[Item], pool: Sequence[Item], seed: str
) -> tuple[Guide, ...]:
    words = Pool(pool if recipe.support is Support.BANK else ())
    return tuple(
        _guide(recipe, team, blanks, words, seed)
        for team, blanks in _asked(recipe, deal, items)
        if blanks
    )


def _guide(
    recipe: Recipe, team: str | None, blanks: Sequence[Item], pool: Pool, seed: str
) -> Guide:
    """Write a guide; extra words are for a bank.

    A second version has a harder bank, or no hints any more; without either there is none.
    """
    second, choices = recipe.early_finishers, choices_are_printed(recipe)
    if recipe.support is Support.BANK:
        extra = recipe.extra_words
        closer = recipe.closer_words
        return make_guide(
            team,
            blanks,
            pool,
            extra_words=extra,
            seed=seed,
            second=second,
            closer=closer,
            choices=choices,
        )
    guide = make_guide(team, blanks, pool, extra_words=0, seed=seed, choices=choices)
    unhinted = second and recipe.support is Support.HINTS and guide.has_words
    return replace(guide, second=guide.parts if unhinted else ())


def _asked(
    recipe: Recipe, deal: Deal, items: Sequence[Item]
) -> list[tuple[str | None, Sequence[Item]]]:
    """Return for each guide whose it is, None for the class, and what it asks."""
    if recipe.guide is GuideFor.TEAM:
        return [(team.name, hand) for team, hand in zip(recipe.teams, deal.hands, strict=True)]
    return [(None, items)] if recipe.guide is GuideFor.CLASS else []
