"""What earlier decks left behind: items, and how a class did on them."""

from collections.abc import Mapping, Sequence

from cards.item import Item, Level
from decks.aims import History, Last, Past, Result
from decks.recipe import Aim, Recipe
from decks.team import make_teams

TEAMS = ("Heron", "Otter", "Samphire", "Curlew")


def recipe(aim=Aim.HARDER, **choices):
    """Return a recipe for four teams."""
    return Recipe("Shore", make_teams(TEAMS, [None] * len(TEAMS)), aim=aim, **choices)


def history(decks: Sequence[Sequence[Item]], marks: Mapping[Item, Sequence[tuple[int, int, int]]]):
    """Return what is known after these decks; marks are (deck, right, tries) by item.

    The share expected after marks is the mean of a Beta posterior, by hand: a level weighs 8 tries.
    """
    items = {item.key: item for deck in decks for item in deck}
    past = {}
    for key, item in items.items():
        results = [Result(*mark) for mark in marks.get(item, ())]
        right = 8 * item.level.expected_share + sum(result.right for result in results)
        tries = 8 + sum(result.tries for result in results)
        seen = tuple(n for n, deck in enumerate(decks, start=1) if item in deck)
        past[key] = Past(key, seen, tuple(results), right / tries)
    last = decks[-1]
    levels = tuple(sum(item.level is level for item in last) for level in Level)
    told = sum(item.level.expected_share for item in last) / len(last)
    keys = tuple(item.key for item in last)
    return History(past, Last(len(decks), keys, levels, levels, told))
