"""A deck is built again from its record alone."""

from collections.abc import Mapping, Sequence
from functools import partial
from typing import Any

from cards.item import Item
from decks.choosing import Choice
from decks.choosing.choice import Goal as ChoiceGoal
from decks.dealing import Deal, Goal
from decks.deck import Card, Deck
from decks.recipe import Activity
from decks.record.cards import hands_read
from decks.record.guides import guides_read
from decks.record.lessons import Hands, lesson_read
from decks.record.pictures import Album
from decks.record.recipes import recipe_read, teams_read
from decks.record.values import each, items, mapping, number, part, text, texts, whole

_SHARED_OUT = (Activity.REVIEW, Activity.COLLECT)
_MOST_LOAD = 1_000_000_000
"""A team may have the words of a whole file, or thousands of expected points in thousandths."""


def rebuilt(record: Mapping[str, Any], album: Album) -> Deck:
    """Return the deck; every value is looked at before it is taken.

    Raises `WrongValueError` for a value that cannot be or is lacking.
    """
    recipe, owners = recipe_read(record), part(record, "owners", teams_read)
    hands = part(record, "cards", partial(hands_read, owners=owners, album=album))
    cards = [card for hand in hands for card in hand]
    pool = tuple(dict.fromkeys(card.item for card in cards))
    return Deck(
        recipe=recipe,
        number=part(record, "number", partial(whole, least=1)),
        seed=part(record, "seed", text),
        pool=pool,
        choice=part(record, "choosing", partial(_choice, chosen=pool)),
        owners=owners,
        deal=_deal(record, hands) if recipe.activity in _SHARED_OUT else None,
        hands=hands,
        guides=guides_read(record, cards),
        lesson=part(record, "lesson", partial(lesson_read, hands=hands)),
        shares=part(record, "cards", partial(_shares, cards=cards)),
    )


def _shares(records: list[dict[str, Any]], cards: Sequence[Card]) -> dict[str, float]:
    """Return the shares expected by marks: those that are not what the level says."""
    told = each([one for one in records if "expected_share" in one], _share)
    by_level = {card.item.key: card.item.level.expected_share for card in cards}
    return {key: share for key, share in told if share != by_level[key]}


def _share(card: dict[str, Any]) -> tuple[str, float]:
    return card["item"], part(card, "expected_share", partial(number, least=0, most=1))


def _deal(record: Mapping[str, Any], hands: Hands) -> Deal:
    dealt = tuple(tuple(card.item for card in hand) for hand in hands)
    return Deal(dealt, part(record, "fairness", _goals), part(record, "chance_to_win", _chances))


def _goals(record: object) -> tuple[Goal, ...]:
    return tuple(_goal(name, one) for name, one in mapping(record).items())


def _chances(record: object) -> tuple[float, ...]:
    return tuple(number(one, 0, 1) for one in mapping(record).values())


def _goal(name: str, record: object) -> Goal:
    given = mapping(record)
    load = partial(whole, most=_MOST_LOAD)
    counts = [
        (text(value), tuple(map(load, items(held))))
        for value, held in map(items, items(given.get("counts", [])))
    ]
    reached, bound = load(given["reached"]), load(given["bound"])
    return Goal(name, reached, bound, tuple(counts), text(given["unit"]))


def _choice(record: object, chosen: tuple[Item, ...]) -> Choice | None:
    """Return what is known of how the items were chosen; they stand in the deck's order."""
    if record is None:
        return None
    given = mapping(record)
    goals = [
        ChoiceGoal(name, number(mapping(one)["reached"]), number(one["bound"]))
        for name, one in mapping(given["goals"]).items()
    ]
    shares = [item.level.expected_share for item in chosen]
    mean = round(sum(shares) / max(len(shares), 1), 9)
    share = number(given.get("share", mean), 0, 1)
    return Choice(chosen, tuple(goals), share, texts(given["advice"]))
