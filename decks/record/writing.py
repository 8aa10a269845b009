"""A deck becomes the text of its record."""

import json
from collections.abc import Mapping
from typing import Any

from msgspec import Struct, to_builtins

from cards.place import Place
from cards.style import Spans
from decks.card import Card
from decks.deck import Deck
from decks.record.guides import guide_record
from decks.record.lessons import lesson_record
from decks.record.pictures import picture_file, picture_table

FORMAT = 1
"""The version of the record's form; it goes up when an older reader could not read it."""


class Colophon(Struct, frozen=True):
    """What a record tells besides the deck: where it came from, and what was printed.

    `made_from` is the file's name, without its folder; `left_out` the rows that were left out,
    each a place and why; `papers` the SHA-256 of every paper by file name.
    """

    made_from: str
    digest: str
    left_out: tuple[tuple[str, str], ...]
    papers: Mapping[str, str]
    leaves: int


def write(deck: Deck, colophon: Colophon) -> str:
    """Return the record as JSON text that ends with a line break."""
    record = {
        "format": FORMAT,
        "title": deck.recipe.title,
        "number": deck.number,
        "made_from": {"file": colophon.made_from, "digest": colophon.digest},
        "seed": deck.seed,
        "recipe": _recipe(deck),
        "teams": [to_builtins(team) for team in deck.recipe.teams],
        "owners": [to_builtins(owner) for owner in deck.owners],
        "cards": [_card(deck, card) for card in deck.cards],
        "pictures": picture_table(deck),
        "lesson": lesson_record(deck),
        "guide": guide_record(deck),
        "guide_more": guide_record(deck, second=True),
        "choosing": _choosing(deck),
        "fairness": _fairness(deck),
        "chance_to_win": _chances(deck),
        "left_out": [{"place": place, "why": why} for place, why in colophon.left_out],
        "papers": dict(colophon.papers),
        "leaves": colophon.leaves,
    }
    said = ",\n".join(f" {_text(name)}: {_lines(value)}" for name, value in record.items())
    return f"{{\n{said}\n}}\n"


def _lines(value: object) -> str:
    """Return a value as JSON on one line, but each part of a list on a line of its own.

    Left to itself, the library would put every word on its own line, and that in Python's own time.
    """
    if not isinstance(value, list) or not value:
        return _text(value)
    parts = ",\n".join(f"  {_text(part)}" for part in value)
    return f"[\n{parts}\n ]"


def _text(value: object) -> str:
    return json.dumps(value, ensure_ascii=False)


def _recipe(deck: Deck) -> dict[str, Any]:
    recipe: dict[str, Any] = to_builtins(deck.recipe)
    return recipe | {"teams": [team.name for team in deck.recipe.teams], "seed": deck.seed}


def _card(deck: Deck, card: Card) -> dict[str, Any]:
    return {
        "label": card.label,
        "team": deck.owners[card.owner].name,
        "kind": card.item.kind,
        "topic": card.item.topic,
        "level": int(card.item.level),
        "prompt": card.item.prompt,
        "answer": card.item.answer,
        "picture": picture_file(card.item),
        "prompt_spans": _spans(card.item.prompt_spans),
        "answer_spans": _spans(card.item.answer_spans),
        "also_right": list(card.item.also_right),
        "wrong": list(card.item.wrong),
        "pinned_to": card.item.team,
        "prompt_at": _place(card.item.prompt_place),
        "answer_at": _place(card.item.answer_place),
        "expected_share": round(deck.expected(card.item), 9),
        "item": card.item.key,
    }


def _fairness(deck: Deck) -> dict[str, Any]:
    return {
        goal.name: {
            "reached": goal.reached,
            "bound": goal.bound,
            "unit": goal.unit,
            "counts": [[value, list(held)] for value, held in goal.counts],
        }
        for goal in (deck.deal.goals if deck.deal else ())
    }


def _chances(deck: Deck) -> dict[str, float]:
    """Return each team's chance of finishing first if all are equally good, ties shared."""
    if deck.deal is None:
        return {}
    names = [team.name for team in deck.recipe.teams]
    return {name: round(chance, 9) for name, chance in zip(names, deck.deal.chances, strict=False)}


def _spans(spans: Spans) -> list[list[Any]]:
    return [[span.start, span.end, span.style] for span in spans]


def _place(place: Place) -> list[Any]:
    return [place.sheet, place.row, place.column]


def _choosing(deck: Deck) -> dict[str, Any] | None:
    if deck.choice is None:
        return None
    goals = {
        goal.name: {"reached": goal.reached, "bound": goal.bound} for goal in deck.choice.goals
    }
    advice = list(deck.choice.advice)
    return {"goals": goals, "share": round(deck.choice.share, 9), "advice": advice}
