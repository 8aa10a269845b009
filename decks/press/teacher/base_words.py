"""What is said to the teacher of a lesson at bases."""

from collections.abc import Sequence
from fractions import Fraction

from cards.item import Item, Level
from decks.deck import Deck
from decks.lesson import Bases
from decks.lesson.bases import repeats_at_bases
from decks.lesson.crowd import Crowd, crowd
from decks.press.teacher.how.counts import span
from decks.press.teacher.how.sets import bases_laid, keep_others, sets_today
from decks.recipe import Sides
from decks.words import counted, listed

PLAIN = tuple(map(Fraction, ("1/2", "3/5", "2/3", "3/4", "4/5", "5/6", "9/10")))
"""Shares that are easily seen before one; nearer than the nearest of them nobody knows."""


def most_get(share: float) -> str:
    """Return an expected share in plain words."""
    plain = min(PLAIN, key=lambda fraction: (abs(float(fraction) - share), fraction))
    return f"About {plain.numerator} of {plain.denominator} should get a question right."


def how_hard(items: Sequence[Item]) -> str:
    """Return how many items there are of each level, in words."""
    counts = [(level, sum(item.level is level for item in items)) for level in Level]
    there = [(level.name.lower(), count) for level, count in counts if count]
    if len(there) == 1:
        return f"all {there[0][0]}"
    return listed([f"{count} {name}" for name, count in there], "and")


def steps(deck: Deck, bases: Bases) -> list[tuple[str, str]]:
    """Return how the bases are set up and changed, step by step: titles and texts."""
    cards = len(bases.sets[0])
    told = crowd(deck.recipe.students, cards)
    first = "the first set" if len(bases.sets) > 1 else "the set"
    steps = [
        (f"Lay out {first}", _set_up(told, cards, len(bases.sets))),
        ("How many bases", _how_many(told, cards)),
        ("As it goes on", _fewer(told, bases)),
    ]
    if len(bases.sets) > 1:
        steps.append(("Change the set", _change(deck, bases)))
    return steps


def _set_up(told: Crowd, cards: int, sets: int) -> str:
    pile = "The first pile is Set 1" if sets > 1 else "The pile is the set"
    if told.first == cards:
        pile += ", and the number on a card is that of its base"
        which = "all its cards, one at each base"
    else:
        which = f"cards {span(1, told.first)}, each at the base of its number"
    return f"{pile}. For your class lay out {which}, in the order of the numbers round the room."


def _how_many(told: Crowd, cards: int) -> str:
    text = "Enough that two or three share a base, so that nobody waits long for a free one."
    return text if told.first == cards else f"{text} {_waiting(told.first, cards)}"


def _waiting(first: int, cards: int) -> str:
    waiting = (
        f"Card {cards} waits" if first + 1 == cards else f"Cards {span(first + 1, cards)} wait"
    )
    return (
        f"{waiting} with you, to take the place of a question that everyone knows by now; the base "
        "keeps its number."
    )


def _fewer(told: Crowd, bases: Bases) -> str:
    safe = "Safe is only who stands at a base and has answered there."
    if told.first == told.last:
        lacking = _first_without(bases, told.first)
        until = f" before set {lacking}" if lacking else ""
        return f"With {counted(told.first, 'base')} none is taken away{until}. {safe}"
    return (
        "Hardly anyone is caught: after a stop signal take away the base with the highest number, "
        f"one every minute or two, down to {told.last}. Hardly anyone gets through: put one back, "
        f"or let a catcher walk with the others. {safe} When a base goes, whoever stood at it "
        "walks on first, and whoever catches waits for that."
    )


def _change(deck: Deck, bases: Bases) -> str:
    used, each = sets_today(deck, bases)
    number, laid = len(bases.sets), bases_laid(deck, bases)
    at = listed([str(each * n) for n in range(1, used)], "and") if used > 1 else ""
    when = f"After {at} minutes: stop signal" if at else "Stop signal"
    place = "in front of" if deck.recipe.sides is Sides.TENT else "on"
    how = (
        f"{when}, everyone stands. Two students go round with the next pile and put each card "
        f"{place} the old one{_of_which_base(bases, laid)}."
    )
    others = f"The time is for {counted(used, 'set')} of {number}; {keep_others(number - used)}."
    told = [how, _asks(bases), _shorter(bases, laid), others if used < number else ""]
    return " ".join(filter(None, told))


def _of_which_base(bases: Bases, laid: int) -> str:
    """Say where a card belongs: what lies at a base may be one that waited, of another number."""
    if laid == len(bases.sets[0]):
        return " with the same number"
    return " at the base of its number; the others wait with you"


def _asks(bases: Bases) -> str:
    """Say how far bases change their topics."""
    met = sum(len(items) for items in bases.sets[1:])
    repeats = repeats_at_bases(bases.sets)
    if not repeats and any(item.topic for items in bases.sets for item in items):
        return "Every base now asks something else, from another topic."
    if 0 < repeats <= met / 3:
        return "Every base now asks something else, most of them from another topic."
    return "Every base now asks something else."


def without_card(bases: Bases, laid: int) -> str:
    """Say from which set on there is no card for which of the bases that are laid out, if so."""
    first, least = _first_without(bases, laid), len(bases.sets[-1])
    if not first:
        return ""
    gone = f"base {laid}" if least + 1 == laid else f"bases {span(least + 1, laid)}"
    return f"From set {first} on there is no card for {gone}"


def _first_without(bases: Bases, laid: int) -> int | None:
    """Return the number of the first set with fewer cards than bases are laid out, if there is one.

    No set has more cards than the one before it.
    """
    return next((n for n, items in enumerate(bases.sets, start=1) if len(items) < laid), None)


def _shorter(bases: Bases, laid: int) -> str:
    gone = without_card(bases, laid)
    if not gone:
        return ""
    return f"{gone}, as the questions do not divide evenly: take the old card away."
