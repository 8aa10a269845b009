"""Harder: the mean share right brought to a target, without what the class knows."""

from collections.abc import Collection, Sequence

from cards.item import Item, Level
from decks.aims.means import harder_means
from decks.aims.past import History
from decks.aims.plan import Chosen, NothingLeftError
from decks.choosing import Again, choose, most_cards
from decks.recipe import Recipe

NEAR = 0.01
"""The target is met within a point; within that, levels and topics have their say."""

RISE = 10
"""A tenth of the cards rises in level; our own judgement."""

_NOTHING = (
    "No item is left for a harder deck: the class knows them, or they are too hard for now. Write "
    "new ones, go over the hard ones with --aim reteach, or set a lower --floor."
)


def harder(
    recipe: Recipe, items: Sequence[Item], history: History, seed: str, fixed: Collection[str]
) -> Chosen:
    """Choose the items that bring the mean expected share to the target.

    Known items stay out, and so do those expected below the floor. Missed ones that have not been
    back yet come back, once, whatever is expected of them: as many as the target lets in; the
    others stay due for the deck after. No more than the share of `seen_before` was in an earlier
    deck. Where no number of cards was asked for there are as many as in the last deck, or fewer
    down to half as many if only those can meet the target. Raises `NothingLeftError` where every
    item is out.
    """
    due = [item for item in items if history.due(item)]
    allowed = [item for item in items if history.due(item) or _may_be_in(item, recipe, history)]
    if not allowed:
        raise NothingLeftError(_NOTHING)
    target = target_of(recipe, history)
    again = Again(frozenset(history.past), recipe.seen_before)
    count = recipe.cards or _count(allowed, due, history, target, again)
    choice = choose(
        allowed,
        count=count,
        seed=seed,
        mix=recipe.mix,
        levels=levels_of(history, target),
        target=target,
        near=NEAR,
        liked=due,
        share=history.share,
        again=again,
    )
    may_be_in = set(allowed)
    waiting = tuple(i for i in items if not history.known(i) and i not in may_be_in)
    if history.marked and history.mean < target - NEAR:
        return Chosen(choice, recipe, target, waiting)
    changed, means = harder_means(recipe, choice.items, fixed)
    return Chosen(choice, changed, target, waiting, means)


def _may_be_in(item: Item, recipe: Recipe, history: History) -> bool:
    """Say whether an item that is not due may be in: neither known nor missed, nor too hard."""
    settled = history.known(item) or history.missed(item)
    return not settled and history.share(item) >= recipe.floor / 100


def _count(
    allowed: Sequence[Item], due: Sequence[Item], history: History, target: float, again: Again
) -> int:
    """Return the most cards that meet the target and have as many as can be of those due."""
    most = min(sum(history.last.usual), len(allowed))
    for seen in (again, None):
        found = most_cards(
            allowed,
            least=-(-most // 2),
            most=most,
            target=target,
            near=NEAR,
            share=history.share,
            again=seen,
            liked=due,
        )
        if found:
            return found
    return most


def target_of(recipe: Recipe, history: History) -> float:
    """Return the mean share to aim at.

    Without marks the last deck may be thought harder than the target already: then it is what the
    risen levels come to, so that the next deck is harder by level at least.
    """
    target = recipe.target / 100
    if history.marked:
        return target
    levels = risen(history.last.usual)
    shares = [n * level.expected_share for n, level in zip(levels, Level, strict=True)]
    return min(target, sum(shares) / sum(levels)) if sum(levels) else target


def levels_of(history: History, target: float) -> tuple[int, int, int] | None:
    """Return the levels to come near: the usual ones, risen where the class is past the target."""
    levels = history.last.usual
    if not sum(levels):
        return None
    return risen(levels) if not history.marked or history.mean > target else levels


def risen(levels: tuple[int, int, int]) -> tuple[int, int, int]:
    """Return the levels with a tenth of the cards, one at least, moved up to hard."""
    easy, medium, hard = levels
    more = max(1, round(sum(levels) / RISE)) if sum(levels) else 0
    from_easy = min(easy, more)
    from_medium = min(medium, more - from_easy)
    return easy - from_easy, medium - from_medium, hard + from_easy + from_medium
