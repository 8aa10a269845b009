"""Reteach: what was missed, among the easier items of the same topics."""

from collections import Counter
from collections.abc import Collection, Iterator, Sequence

from msgspec.structs import replace

from cards.item import Item, folded
from decks.aims.means import easier_means
from decks.aims.past import History
from decks.aims.plan import Chosen, NothingToReteachError
from decks.choosing import choose
from decks.recipe import Recipe
from decks.words import counted

EACH = 2
"""As many neighbours as missed items, and two cards a team at least; our own judgement."""


def reteach(
    recipe: Recipe, items: Sequence[Item], history: History, seed: str, fixed: Collection[str]
) -> Chosen:
    """Choose all missed items, and neighbours of the same topics, those that most know first.

    Items of a topic that needs another lesson count as missed where none was missed by itself.
    Topics have neighbours in proportion to what was missed in them. Raises
    `NothingToReteachError` where there is nothing to go over.
    """
    missed = [item for item in items if history.missed(item) or item.key in history.behind]
    if not missed:
        raise NothingToReteachError(_nothing(history))
    topics = Counter(folded(item.topic) for item in missed)
    near = [item for item in items if folded(item.topic) in topics]
    most = max(EACH * len(missed), EACH * len(recipe.teams))
    choice = choose(
        near,
        count=min(recipe.cards or most, len(near)),
        seed=seed,
        target=1.0,
        required=missed,
        share=history.share,
        topics=topics,
        any_level=True,
    )
    choice = replace(choice, advice=(*_too_few(len(near), recipe.cards or 0), *choice.advice))
    changed, means = easier_means(recipe, fixed)
    return Chosen(choice, changed, means=means)


def _too_few(near: int, asked: int) -> Iterator[str]:
    """Say what would do where the topics have fewer items than cards were asked for."""
    if near < asked:
        yield (
            f"The topics to go over have {counted(near, 'item')} for the "
            f"{counted(asked, 'card')} asked for: {asked - near} more in them would do."
        )


def _nothing(history: History) -> str:
    if history.behind or any(past.missed for past in history.past.values()):
        return (
            "No row that this deck can ask holds what was missed as it was then, so there is "
            "nothing to reteach. Put the rows back, mend their errors, or choose the activity that "
            "asks them; or take another aim: --aim harder."
        )
    if history.marked:
        return (
            "By its marks no row was missed by so many that it has to be taught again, and no "
            "topic needs another lesson. Take another aim, such as --aim harder."
        )
    return (
        "No marks say what was missed, so there is nothing to reteach. Fill in marks.xlsx in the "
        f"folder of deck {history.last.number}, save it, and try again."
    )
