"""`deck.json`: everything that is needed to print a deck, or one card of it, again."""

import json
from collections.abc import Mapping
from dataclasses import asdict, dataclass
from typing import Any

from cards.item import Item
from cards.picture import Picture
from cards.style import Spans
from decks.bank import GuidePart, has_one_word_each, is_sound
from decks.deck import Card, Deck

FORMAT = 1
"""The version of the record's form; it goes up when an older reader could not read it."""


PICTURES = "pictures"
"""The folder beside the record that holds its pictures."""


@dataclass(frozen=True, slots=True)
class Colophon:
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
        "teams": [asdict(team) for team in deck.recipe.teams],
        "owners": [asdict(owner) for owner in deck.owners],
        "cards": [_card(deck, card) for card in deck.cards],
        "guide": [_part(guide.team, part) for guide in deck.guides for part in guide.parts],
        "choosing": _choosing(deck),
        "fairness": {
            goal.name: {"reached": goal.reached, "bound": goal.bound, "unit": goal.unit}
            for goal in (deck.deal.goals if deck.deal else ())
        },
        "chance_to_win": _chances(deck),
        "left_out": [{"place": place, "why": why} for place, why in colophon.left_out],
        "papers": dict(colophon.papers),
        "leaves": colophon.leaves,
    }
    return json.dumps(record, ensure_ascii=False, indent=1) + "\n"


def picture_files(deck: Deck) -> dict[str, bytes]:
    """Return the files, by name, of the pictures that the record names.

    They stand beside it as they are, so that they can be looked at, and each but once; inside the
    record every picture would be a third larger, and no longer a line to read.
    """
    pictures = sorted(
        {card.item.image for card in deck.cards if card.item.image}, key=lambda one: one.digest
    )
    return {_file_of(picture): picture.data for picture in pictures}


def _file_of(picture: Picture) -> str:
    return f"{PICTURES}/{picture.file_name}"


def _picture_file(item: Item) -> str | None:
    return _file_of(item.image) if item.image else None


def _recipe(deck: Deck) -> dict[str, Any]:
    recipe = asdict(deck.recipe)
    return recipe | {"teams": [team.name for team in deck.recipe.teams], "seed": deck.seed}


def _card(deck: Deck, card: Card) -> dict[str, Any]:
    return {
        "label": card.label,
        "team": deck.owners[card.team].name,
        "kind": card.item.kind,
        "topic": card.item.topic,
        "level": int(card.item.level),
        "prompt": card.item.prompt,
        "answer": card.item.answer,
        "picture": _picture_file(card.item),
        "prompt_spans": _spans(card.item.prompt_spans),
        "answer_spans": _spans(card.item.answer_spans),
        "also_right": list(card.item.also_right),
        "expected_share": card.item.level.expected_share,
        "item": card.item.key,
    }


def _chances(deck: Deck) -> dict[str, float]:
    """Return each team's chance of finishing first if all are equally good, ties shared."""
    if deck.deal is None:
        return {}
    names = [team.name for team in deck.recipe.teams]
    return {name: round(chance, 9) for name, chance in zip(names, deck.deal.chances, strict=False)}


def _spans(spans: Spans) -> list[list[Any]]:
    return [[span.start, span.end, span.style] for span in spans]


def _choosing(deck: Deck) -> dict[str, Any] | None:
    if deck.choice is None:
        return None
    goals = {
        goal.name: {"reached": goal.reached, "bound": goal.bound} for goal in deck.choice.goals
    }
    return {"goals": goals, "advice": list(deck.choice.advice)}


def _part(team: str | None, part: GuidePart) -> dict[str, Any]:
    return {
        "team": team,
        "blanks": [
            {"clue": item.prompt, "answer": item.answer, "item": item.key} for item in part.blanks
        ],
        "bank": list(part.bank),
        "extra_words": list(part.extra_words),
        "guess_mean": round(part.guess_mean, 6),
        "guess_all": part.guess_all,
        "sound": is_sound(part),
        "one_word_each": has_one_word_each(part),
    }
