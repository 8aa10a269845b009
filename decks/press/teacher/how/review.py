"""Ask and answer: first in the team, then across the room, then the study guide."""

from decks.deck import Deck
from decks.press.teacher.how.counts import (
    NO_POINTS,
    a_team,
    answers_needed,
    blanks,
    cards_dealt,
    cards_made,
    each_told,
    every_team,
    guides_needed,
    hands,
    helped,
    lost,
    points,
    where_answers_are,
)
from decks.press.teacher.how.play import Part, Play
from decks.recipe import Sides
from decks.words import counted, listed

AT_HOME = 3
"""The first third of the time is for asking within the team; our own judgement."""


def review(deck: Deck) -> Play:
    """Return how to review with this deck."""
    minutes = deck.recipe.minutes
    guide = ", then the study guide" if deck.guides else ""
    return Play(
        name="Ask and answer",
        lasts=f"{counted(minutes, 'minute')}{guide}",
        needs=_needs(deck),
        setting=(
            (
                f"A home for {every_team(deck)} at the edge of the room, best a table. Its pile "
                "lies there, questions up, numbers in order."
            ),
            "The middle of the room is clear.",
            *_sheet(deck),
            "Try the stop signal once: everyone stands still and looks at you.",
        ),
        steps=_steps(deck),
        moving=1,
        asides=_asides(deck),
    )


def _counts(deck: Deck) -> bool:
    return deck.points.right > 0


def _looks_up(deck: Deck) -> bool:
    """Say whether whoever walks takes an answer along in the head: the list stays at home."""
    return deck.recipe.sides is Sides.FRONTS


def _needs(deck: Deck) -> tuple[str, ...]:
    return (
        f"{cards_made(deck)}: {cards_dealt(deck, 'team')}",
        *answers_needed(deck),
        *guides_needed(deck),
        "A pencil for everyone, a clock, a stop signal",
        "The answer keys of this file",
    )


def _steps(deck: Deck) -> tuple[Part, ...]:
    minutes = deck.recipe.minutes
    at_home = max(1, round(minutes / AT_HOME))
    steps = [
        Part(f"At home, {at_home} min", _at_home(deck)),
        Part("Take one, walk", _take(deck)),
        Part("Ask each other", _ask(deck)),
        Part("What counts", _earned(deck)),
        Part("Home and out again", _home(deck)),
        Part("The end", _end(deck, max(1, minutes - at_home))),
    ]
    if deck.guides:
        steps.append(Part("Study guide", _guide(deck)))
    return tuple(steps)


def _sheet(deck: Deck) -> list[str]:
    """Return the sheet to have at home, where something is written on one."""
    written = [
        *(["strokes"] if _counts(deck) else []),
        *([] if deck.guides else ["notes of cards that were not right"]),
    ]
    where = "at home" if deck.is_one_team else "at every home"
    return [f"A sheet {where} for the team’s {listed(written, 'and')}."] if written else []


def _at_home(deck: Deck) -> str:
    noted = "" if deck.guides else ", its number is noted on the sheet"
    return (
        "In pairs: one takes a card from the team’s pile and asks, the other answers, then "
        f"{where_answers_are(deck)} tells. Right: the card is put aside. Not right: say the answer "
        f"once{noted}, and the card goes under the pile. Then change roles. No card left: begin "
        "again."
    )


def _take(deck: Deck) -> str:
    look = ", looks up its answer in the list" if _looks_up(deck) else ""
    other = "not met yet" if deck.is_one_team else "from another team"
    return (
        f"Lay all cards in one pile again. Everyone takes one{look} and walks about the room."
        f"{_short(deck)} Call “Meet”: everyone stops with the nearest person {other}; three may "
        "stand together."
    )


def _short(deck: Deck) -> str:
    """Say what is done where a team has fewer cards than students."""
    if min(hands(deck)) >= max(a_team(deck)):
        return ""
    return " Where there are fewer cards than students, the others go along and take one next time."


def _ask(deck: Deck) -> str:
    tells = "whoever asked tells" if _looks_up(deck) else "the back tells"
    return (
        f"One shows the front and reads it out, the other answers, {tells}; then the other way "
        "round. Whoever was not right says the right answer once. Nobody swaps cards."
    )


def _earned(deck: Deck) -> str:
    if not _counts(deck):
        return NO_POINTS
    earned = points(deck.points.right)
    whose = "the team" if deck.is_one_team else "the team of whoever gave it"
    return f"A right answer earns {earned} for {whose}. A wrong one costs nothing."


def _home(deck: Deck) -> str:
    stroke = "make a stroke for each point, " if _counts(deck) else ""
    look = " and look up its answer" if _looks_up(deck) else ""
    return (
        f"Call “Home”: walk home, {stroke}lay the card under the pile, take the next one{look}. "
        "Call “Meet” again after about a minute."
    )


def _end(deck: Deck, walking: int) -> str:
    back = "" if deck.is_one_team else " Cards of another team go back."
    return (
        f"After {counted(walking, 'minute')} of walking everyone walks home. The team counts its "
        f"cards: {each_told(hands(deck), 'card')}.{back}"
    )


def _guide(deck: Deck) -> str:
    number = each_told(blanks(deck), "blank")
    earned = f"; each right blank is {points(deck.points.right)} for the team"
    return (
        f"Cards away. Everyone sits down and fills in the study guide alone{helped(deck)}: "
        f"{number}, about a minute each. Read out the key{earned if _counts(deck) else ''}."
    )


def _asides(deck: Deck) -> tuple[Part, ...]:
    return (
        *([Part("Points", _points(deck))] if _counts(deck) else []),
        Part(
            "Gentler, and seated",
            "Stay at home and be met there, or ask across a table while cards go round instead "
            "of people. Reading aloud may be left to the partner.",
        ),
        Part("A card is lost", lost("a blank card", "the key to the cards")),
    )


def _points(deck: Deck) -> str:
    whose = "the team’s" if deck.is_one_team else "a team’s"
    summed = f"Add up {whose} strokes."
    if deck.guides:
        summed = f"Add {whose} strokes to its right blanks."
    if deck.is_one_team:
        return summed
    return f"{summed} Where teams differ in number, divide by the students in each."
