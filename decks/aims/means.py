"""What else makes a deck harder or gentler: means with evidence, told on the teacher's pages.

No figure says by how much each of them does in a class, so that expected shares leave them out and
a deck takes one step of each at a time.
"""

from collections.abc import Collection, Iterator, Sequence

from msgspec.structs import replace

from cards.item import Item, Kind
from decks.aims.plan import Means
from decks.recipe import Activity, GuideFor, Recipe, Sides, Support, cards_are_the_bank
from decks.settings.values import MOST_EXTRA
from decks.words import counted

MORE = 2
"""So many extra words more, or fewer; our own judgement."""


Changed = tuple[Recipe, tuple[Means, ...]]


def harder_means(recipe: Recipe, items: Sequence[Item], fixed: Collection[str]) -> Changed:
    """Return the recipe with less support, and what makes the deck harder."""
    changed = recipe
    if recipe.support is Support.HINTS and _may_change("support", recipe, fixed):
        changed = replace(recipe, support=Support.NONE)
    if recipe.support is Support.BANK and _may_change("extra_words", recipe, fixed):
        more = min(MOST_EXTRA, recipe.extra_words + MORE)
        changed = replace(recipe, extra_words=more, closer_words=True)
    return changed, tuple(_harder(recipe, changed, items))


def _harder(recipe: Recipe, changed: Recipe, items: Sequence[Item]) -> Iterator[Means]:
    if changed.support is not recipe.support:
        yield Means(
            "No hints",
            "The study guide gives no first letters any more: recalling a word without a cue is "
            "harder, and holds better. If it is too much, build with Support set to hints.",
        )
    if changed.closer_words:
        more = changed.extra_words > recipe.extra_words
        instead = f" instead of {recipe.extra_words}" if more else ""
        yield Means(
            "More and closer extra words" if more else "Closer extra words",
            f"Each word bank has up to {counted(changed.extra_words, 'extra word')}{instead}, "
            "those most easily taken for an answer: less is won by crossing off and by guessing.",
        )
    if _has_two_ways(recipe, items):
        yield Means(
            "The other way round",
            "In a second turn show the word and ask what it means; take any answer that says the "
            "same as the other side. To know a word one way is not to know it the other way "
            "(Laufer and Goldstein 2004). Saying the word for a meaning stays the harder one.",
        )
    if len({item.topic for item in items}) > 1:
        yield Means(
            "Topics mixed",
            "Every pile mixes its topics, so keep the order of the labels: in a study of "
            "mathematics lessons 72 % were right two weeks after mixed practice, 38 % after "
            "practice topic by topic (Rohrer and others 2014).",
        )


def _has_two_ways(recipe: Recipe, items: Sequence[Item]) -> bool:
    backs = recipe.activity is Activity.REVIEW and recipe.sides is not Sides.FRONTS
    return backs and any(item.kind is Kind.VOCABULARY for item in items)


def easier_means(recipe: Recipe, fixed: Collection[str]) -> Changed:
    """Return the recipe with more support, and what makes the deck gentler."""
    if recipe.support is Support.NONE and _may_change("support", recipe, fixed):
        hints = "The study guide gives each answer’s first letter and its number of letters."
        return replace(recipe, support=Support.HINTS), (Means("Hints", hints),)
    fewer = max(0, recipe.extra_words - MORE)
    may = recipe.support is Support.BANK and _may_change("extra_words", recipe, fixed)
    if not may or fewer == recipe.extra_words:
        return recipe, ()
    words = counted(fewer, "extra word") if fewer else "no extra words"
    text = f"Each word bank has {words} instead of {recipe.extra_words}: less to sift."
    return replace(recipe, extra_words=fewer), (Means("Fewer extra words", text),)


def _may_change(key: str, recipe: Recipe, fixed: Collection[str]) -> bool:
    """Say whether there is a guide that the setting matters to, and the teacher left it open."""
    has_guide = recipe.guide is not GuideFor.NONE and not cards_are_the_bank(recipe)
    return has_guide and not {key, "support"} & set(fixed)
