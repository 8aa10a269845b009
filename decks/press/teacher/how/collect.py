"""Gather the words: one walker of a team at a time, one card a walk, then the study guide."""

from decks.deck import Deck
from decks.press.teacher.how.counts import (
    a_team,
    blanks,
    cards_made,
    each,
    guides_needed,
    hands,
    lost,
    metres,
    points,
    spread,
    told,
)
from decks.press.teacher.how.play import Part, Play
from decks.recipe import Sides, cards_are_the_bank
from decks.words import counted


def collect(deck: Deck) -> Play:
    """Return how to gather the words of this deck."""
    guide = ", then the study guide" if deck.guides else ""
    return Play(
        name="Gather the words",
        lasts=f"{counted(deck.recipe.minutes, 'minute')}{guide}",
        needs=_needs(deck),
        setting=_setting(deck),
        steps=_steps(deck),
        moving=1,
        asides=_asides(deck),
    )


def _needs(deck: Deck) -> tuple[str, ...]:
    alike = ", the same words in every colour" if deck.has_copies else ""
    cards = f"{counted(len(deck.cards), 'card')}, {each(hands(deck))} a team{alike}"
    return (
        f"{cards_made(deck)}: {cards}",
        *guides_needed(deck),
        "A pencil for everyone, a clock, a stop signal",
        "The answer key of this file",
    )


def _setting(deck: Deck) -> tuple[str, ...]:
    away = metres(deck.recipe.walk)
    up = "front" if deck.recipe.sides is Sides.FRONTS else "team mark"
    return (
        "A home for every team along one side, an arm’s length apart: a table with its guides.",
        (
            f"The cards {away} away, along the other side: on tables, benches or sills, never on "
            f"the floor. All teams’ cards mixed, {up} up, none on another."
        ),
        "You are the catcher, in the middle; later a student, a new one every few minutes.",
    )


def _steps(deck: Deck) -> tuple[Part, ...]:
    steps = [
        Part("In a row", _row(deck)),
        Part(
            "One out",
            "On “Go” the first of every team walks to the cards, takes one with the team’s mark, "
            "and walks home with it in the open hand. One walker a team, one card a walk.",
        ),
        Part(
            "Home",
            "At home the card is handed over and the next one walks. Whoever waits reads the word "
            "out and finds the blank that it may fit. A card of another team goes back.",
        ),
        Part(
            "Caught",
            "The catcher walks too, and catches with an open hand shown at arm’s length and the "
            "word “caught”: nobody is touched. The carrier gives up the card and walks home "
            "without it; the catcher lays it back among the others. Nobody is out. Whoever runs is "
            "caught.",
        ),
        Part(
            "Safe",
            "At home, at the cards, and on the way out with empty hands. The catcher keeps two "
            "arms’ lengths away from homes and cards.",
        ),
        Part("The end", _end(deck)),
    ]
    if deck.guides:
        steps.append(Part("Study guide", _guide(deck)))
    return tuple(steps)


def _row(deck: Deck) -> str:
    number = spread(a_team(deck))
    return (
        f"Every team numbers itself, {number} in a team, and keeps to that order to the end, so "
        "that all walk about equally often. Show once how to carry, to hand over, and to stop."
    )


def _end(deck: Deck) -> str:
    return (
        f"After {counted(deck.recipe.minutes, 'minute')}, or when a team has all its words, give "
        "the stop signal. Everyone walks home; a card that is still on its way does not count. "
        "Every team counts what it has."
    )


def _guide(deck: Deck) -> str:
    own = "" if deck.has_copies else " It asks only for the team’s words."
    number = told(blanks(deck), "blank")
    words = (
        f"The words brought home are the bank for the {number} of the guide."
        if cards_are_the_bank(deck.recipe)
        else f"The guide has a bank for its {number}, but only words brought home may be used."
    )
    return (
        f"Everyone sits down. {words}{own} When all have done what they can, read out the words "
        "that stayed out, then the key."
    )


def _asides(deck: Deck) -> tuple[Part, ...]:
    right = points(deck.recipe.points.right)
    return (
        Part(
            "Points",
            f"1 point for a word brought home, {right} for each blank that is right. Blanks whose "
            "word was read out at the end are for learning, not for points.",
        ),
        Part(
            "Gentler, and seated",
            "No catcher; half the way; a partner carries. Seated: keep the words at home, read "
            "them out, find the blanks, call the next walker.",
        ),
        Part("A card is lost", lost("a spare card of the team", "the key to the cards")),
    )
