"""A deck is built again from its record alone."""

import re
from collections.abc import Sequence
from typing import Any

from cards.item import Item, Kind, Level
from cards.place import Place
from cards.style import Span, Spans, TextStyle
from decks.choosing import Choice
from decks.choosing.choice import Goal as ChoiceGoal
from decks.dealing import Deal, Goal
from decks.deck import Card, Deck
from decks.lengths import (
    LEAST_CARD,
    LEAST_DISTANCE,
    MOST_BLEED,
    MOST_CARD,
    MOST_DISTANCE,
    MOST_MARGIN,
    CardMeasure,
)
from decks.printers import MOST_OFF, MOST_SKEW
from decks.recipe import Activity, Recipe
from decks.record.damage import WrongValueError
from decks.record.guides import guides_read
from decks.record.lessons import Hands, lesson_read
from decks.record.pictures import Album
from decks.record.values import items, made, mapping, number, text, texts, whole
from decks.team import MOST_TEAMS, TEXTURES, Team

_LABEL = re.compile("[0-9A-Za-z]{1,20}")
_SHARED_OUT = (Activity.REVIEW, Activity.COLLECT)
_ROUNDING = 1e-6


def rebuilt(record: dict[str, Any], album: Album) -> Deck:
    """Return the deck; every value is looked at before it is taken.

    Raises `ValueError`, `TypeError` or `KeyError` for a value that cannot be or is lacking.
    """
    recipe, owners = _recipe(record), _teams(record["owners"])
    hands = _hands(items(record["cards"]), owners, album)
    cards = [card for hand in hands for card in hand]
    pool = tuple(dict.fromkeys(card.item for card in cards))
    return Deck(
        recipe=recipe,
        number=whole(record["number"], 1),
        seed=text(record["seed"]),
        pool=pool,
        choice=_choice(record["choosing"], pool),
        owners=owners,
        deal=_deal(record, hands) if recipe.activity in _SHARED_OUT else None,
        hands=hands,
        guides=guides_read(record["guide"], record["guide_more"], cards),
        lesson=lesson_read(record["lesson"], hands),
        shares=_shares(record, cards),
    )


def _shares(record: dict[str, Any], cards: Sequence[Card]) -> dict[str, float]:
    """Return the shares expected by marks: those that are not what the level says."""
    told = {
        one["item"]: number(one["expected_share"], 0, 1)
        for one in record["cards"]
        if "expected_share" in one
    }
    by_level = {card.item.key: card.item.level.expected_share for card in cards}
    return {key: share for key, share in told.items() if share != by_level[key]}


def _teams(record: object) -> tuple[Team, ...]:
    teams = tuple(made(Team, one) for one in items(record))
    names = {team.name for team in teams}
    if not teams or len(teams) > MOST_TEAMS or len(names) < len(teams):
        raise WrongValueError(record)
    for team in teams:
        if not re.fullmatch("#[0-9A-Fa-f]{6}", team.colour) or team.texture not in TEXTURES:
            raise WrongValueError(team)
    return teams


def _recipe(record: dict[str, Any]) -> Recipe:
    """Return the recipe, with lengths that a page can be made of."""
    recipe = made(Recipe, record["recipe"], teams=_teams(record["teams"]))
    margins, shift = recipe.margins, recipe.shift
    for margin in (margins.top, margins.right, margins.bottom, margins.left):
        number(margin, 0, MOST_MARGIN)
    number(recipe.bleed, 0, MOST_BLEED)
    number(recipe.read_from, LEAST_DISTANCE, MOST_DISTANCE)
    for length, most in ((shift.right, MOST_OFF), (shift.up, MOST_OFF), (shift.skew, MOST_SKEW)):
        number(length, -most - _ROUNDING, most + _ROUNDING)
    if isinstance(recipe.card_size, CardMeasure):
        number(recipe.card_size.width, LEAST_CARD, MOST_CARD)
        number(recipe.card_size.height, LEAST_CARD, MOST_CARD)
    return recipe


def _hands(
    records: list[Any], owners: Sequence[Team], album: Album
) -> tuple[tuple[Card, ...], ...]:
    numbers = {owner.name: n for n, owner in enumerate(owners)}
    hands: list[dict[str, Card]] = [{} for _ in owners]
    for given in map(mapping, records):
        card = Card(text(given["label"]), numbers[text(given["team"])], _item(given, album))
        hand = hands[card.team]
        if card.label in hand or not _LABEL.fullmatch(card.label):
            raise WrongValueError(card.label)
        hand[card.label] = card
    return tuple(tuple(hand.values()) for hand in hands)


def _item(given: dict[str, Any], album: Album) -> Item:
    prompt, answer = text(given["prompt"]), text(given["answer"])
    item = Item(
        prompt=prompt,
        answer=answer,
        kind=Kind(given["kind"]),
        level=Level(whole(given["level"])),
        topic=text(given["topic"]),
        prompt_place=_place(given["prompt_at"]),
        answer_place=_place(given["answer_at"]),
        also_right=texts(given["also_right"]),
        wrong=texts(given["wrong"]),
        team=None if given["pinned_to"] is None else text(given["pinned_to"]),
        prompt_spans=_spans(given["prompt_spans"], prompt),
        answer_spans=_spans(given["answer_spans"], answer),
        image=album.picture(given["picture"]),
    )
    if item.key != given["item"]:
        raise WrongValueError(given["item"])
    return item


def _place(record: object) -> Place:
    sheet, row, column = items(record)
    return Place(text(sheet), whole(row, most=1 << 24), whole(column, most=1 << 24))


def _spans(record: object, letters: str) -> Spans:
    """Return spans, which follow one another within a text."""
    spans = []
    end = 0
    for one in items(record):
        start, stop, style = items(one)
        spans.append(Span(whole(start, end), whole(stop, end + 1, len(letters)), TextStyle(style)))
        end = spans[-1].end
        if spans[-1].start >= end:
            raise WrongValueError(one)
    return tuple(spans)


def _deal(record: dict[str, Any], hands: Hands) -> Deal:
    goals = [_goal(name, one) for name, one in mapping(record["fairness"]).items()]
    chances = [number(one, 0, 1) for one in mapping(record["chance_to_win"]).values()]
    dealt = tuple(tuple(card.item for card in hand) for hand in hands)
    return Deal(dealt, tuple(goals), tuple(chances))


def _goal(name: str, record: object) -> Goal:
    given = mapping(record)
    counts = [
        (text(value), tuple(whole(n) for n in items(held)))
        for value, held in map(items, items(given.get("counts", [])))
    ]
    reached, bound = whole(given["reached"]), whole(given["bound"])
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
