"""Mixed: older items come back among new ones."""

from collections.abc import Collection, Sequence
from math import ceil

from cards.item import Item
from decks.aims.past import History
from decks.aims.plan import Chosen
from decks.choosing import Again, choose
from decks.recipe import Recipe


def mixed(
    recipe: Recipe, items: Sequence[Item], history: History, seed: str, _fixed: Collection[str]
) -> Chosen:
    """Choose new items, and among them the share `seen_before` of those longest unseen.

    Missed ones that have not been back yet are always in.
    """
    due = [item for item in items if history.due(item)]
    count = recipe.cards or min(max(sum(history.last.usual), len(due)), len(items))
    first, next_to_them = _longest_unseen(recipe, items, history, count)
    older = {*due, *first, *next_to_them}
    allowed = [item for item in items if history.of(item) is None or item.team or item in older]
    choice = choose(
        allowed,
        count=count,
        seed=seed,
        mix=recipe.mix,
        required=[*due, *first],
        share=history.share,
        again=Again(frozenset(history.past), recipe.seen_before, at_most=False),
    )
    return Chosen(choice, recipe)


def _longest_unseen(
    recipe: Recipe, items: Sequence[Item], history: History, count: int
) -> tuple[list[Item], list[Item]]:
    """Return the older items that are surely wanted, and those that the rest is taken from.

    The rest was last seen in one deck, later than those that are surely wanted.
    """
    seen = {item: past.decks[-1] for item in items if (past := history.of(item))}
    due = sum(map(history.due, items))
    wanted = ceil(count * recipe.seen_before / 100)
    needed = max(wanted, count - (len(items) - len(seen))) - due
    rest = {item: last for item, last in seen.items() if not history.due(item)}
    ordered = sorted(rest.values())[: max(0, needed)]
    end = ordered[-1] if ordered else 0
    return [i for i in rest if rest[i] < end], [i for i in rest if rest[i] == end]
