"""Gather the words: one walker of a team at a time, one card a walk, then the study guide."""

from decks.deck import Deck
from decks.press.teacher.how.counts import (
    a_team,
    blanks,
    cards_dealt,
    cards_made,
    each_told,
    every_team,
    guides_needed,
    lost,
    metres,
    points,
    spread,
)
from decks.press.teacher.how.play import Part, Play
from decks.recipe import GuideFor, Sides, cards_are_the_bank
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
    alike = ", the same words for every team" if deck.has_copies else ""
    return (
        f"{cards_made(deck)}: {cards_dealt(deck, 'team')}{alike}",
        *guides_needed(deck),
        "A pencil for everyone, a clock, a stop signal",
        "The answer key of this file",
    )


def _setting(deck: Deck) -> tuple[str, ...]:
    away = metres(deck.recipe.walk)
    up = "front" if deck.recipe.sides is Sides.FRONTS else "team mark"
    table = "a table with its guides" if deck.guides else "a table"
    several = not deck.is_one_team
    apart = ", an arm’s length apart" if several else ""
    mixed = "All teams’ cards mixed" if several else "All mixed"
    return (
        f"A home for {every_team(deck)} along one side{apart}: {table}.",
        (
            f"The cards {away} away, along the other side: on tables, benches or sills, never on "
            f"the floor. {mixed}, {up} up, none on another."
        ),
        "You are the catcher, in the middle; later a student, a new one every few minutes.",
    )


def _steps(deck: Deck) -> tuple[Part, ...]:
    each = "at a time" if deck.is_one_team else "a team"
    steps = [
        Part("In a row", _row(deck)),
        Part(
            "One out",
            f"On “Go” the first of {every_team(deck)} walks to the cards, takes one with the "
            f"team’s mark, and walks home with it in the open hand. One walker {each}, one card a "
            "walk.",
        ),
        Part("Home", _home(deck)),
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
    number = f"{spread(a_team(deck))} in {'all' if deck.is_one_team else 'a team'}"
    return (
        f"{every_team(deck).capitalize()} numbers itself, {number}, and keeps to that order to the "
        "end, so that all walk about equally often. Show once how to carry, to hand over, and to "
        "stop."
    )


def _home(deck: Deck) -> str:
    find = " and finds the blank that it may fit" if deck.guides else ""
    back = " A card of another team goes back." if not deck.is_one_team else ""
    return (
        "At home the card is handed over and the next one walks. Whoever waits reads the word "
        f"out{find}.{back}"
    )


def _end(deck: Deck) -> str:
    who = "the team" if deck.is_one_team else "a team"
    return (
        f"After {counted(deck.recipe.minutes, 'minute')}, or when {who} has all its words, give "
        "the stop signal. Everyone walks home; a card that is still on its way does not count. "
        f"{every_team(deck).capitalize()} counts what it has."
    )


def _guide(deck: Deck) -> str:
    number = each_told(blanks(deck), "blank")
    words = (
        f"The words brought home are the bank for the {number} of the guide."
        if cards_are_the_bank(deck.recipe)
        else f"The guide has a bank for its {number}, but only words brought home may be used."
    )
    whose, missing = _whose(deck)
    return (
        f"Everyone sits down. {words}{whose} When all have done what they can, read out {missing}, "
        "then the key."
    )


def _whose(deck: Deck) -> tuple[str, str]:
    """Return what is told of the words that a guide asks for, and which of them a team lacks."""
    missing = "the words that stayed out"
    if _asks_for_others(deck):
        return " A team’s own words fill only some of them.", "all the words"
    return " It asks only for the team’s words." if _have_own_words(deck) else "", missing


def _asks_for_others(deck: Deck) -> bool:
    """Say whether a study guide asks for words that other teams have."""
    return _have_own_words(deck) and deck.recipe.guide is GuideFor.CLASS


def _have_own_words(deck: Deck) -> bool:
    return not deck.is_one_team and not deck.has_copies


def _asides(deck: Deck) -> tuple[Part, ...]:
    find = "find the blanks, " if deck.guides else ""
    return (
        Part("Points", _points(deck)),
        Part(
            "Gentler, and seated",
            "No catcher; half the way; a partner carries. Seated: keep the words at home, read "
            f"them out, {find}call the next walker.",
        ),
        Part("A card is lost", lost("a spare card of the team", "the key to the cards")),
    )


def _points(deck: Deck) -> str:
    right = deck.points.right
    if not right:
        return "No points are counted: what counts is the words that come home."
    if not deck.guides:
        return "1 point for a word brought home."
    late = "whose word was read out at the end"
    if _asks_for_others(deck):
        late = "filled in after the words were read out"
    return (
        f"1 point for a word brought home, {points(right)} for each blank that is right. Blanks "
        f"{late} are for learning, not for points."
    )
