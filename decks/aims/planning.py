"""The plan for the next deck of a workbook."""

from collections.abc import Callable, Collection, Sequence

from msgspec.structs import replace

from cards.item import Item
from decks.aims.harder import harder
from decks.aims.mixed import mixed
from decks.aims.past import History
from decks.aims.plan import Chosen, Plan
from decks.aims.reteach import reteach
from decks.aims.telling import sentences
from decks.recipe import Aim, Recipe

_WAYS: dict[Aim, Callable[[Recipe, Sequence[Item], History, str, Collection[str]], Chosen]] = {
    Aim.HARDER: harder,
    Aim.RETEACH: reteach,
    Aim.MIXED: mixed,
}


def plan_next(  # noqa: PLR0913 (what a deck is made of, and two things that are only told)
    recipe: Recipe,
    items: Sequence[Item],
    history: History,
    *,
    seed: str,
    fixed: Collection[str] = (),
    test_in: int | None = None,
) -> Plan:
    """Plan the next deck for the aim of its recipe, from what the activity can ask.

    `fixed` are the keys of settings that the teacher has chosen for this deck and that no aim
    changes; `test_in` is in how many days there is a test. Pure. Raises `NothingToReteachError` or
    `NothingLeftError` where there is nothing to make a deck of.
    """
    chosen = _WAYS[recipe.aim](recipe, items, history, seed, fixed)
    plan = _plan(recipe.aim, items, history, chosen)
    return replace(plan, sentences=tuple(sentences(plan, test_in)))


def _plan(aim: Aim, items: Sequence[Item], history: History, chosen: Chosen) -> Plan:
    taken = chosen.choice.items
    due = tuple(item for item in taken if history.missed(item))
    weak = history.behind if aim is Aim.RETEACH else ()
    behind = tuple(item for item in taken if item.key in weak)
    new = tuple(item for item in taken if history.of(item) is None)
    told = {*due, *behind, *new}
    here = {item.key for item in items}
    missed = {past.key for past in history.past.values() if past.missed}.union(weak)
    in_this = {item.key for item in taken}
    return Plan(
        aim=aim,
        recipe=chosen.recipe,
        choice=chosen.choice,
        history=history,
        target=chosen.target,
        new=new,
        due=due,
        behind=behind,
        again=tuple(item for item in taken if item not in told),
        known=tuple(i for i in items if history.known(i) and i.key not in in_this),
        waiting=chosen.waiting,
        dropped=len(set(history.last.keys) - in_this),
        gone=sum(key not in here for key in missed),
        means=chosen.means,
        sentences=(),
    )
