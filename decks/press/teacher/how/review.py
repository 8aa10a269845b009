"""Ask and answer: first in the team, then across the room, then the study guide."""

from decks.deck import Deck
from decks.press.teacher.how.counts import (
    answers_needed,
    blanks,
    cards_made,
    each,
    guides_needed,
    hands,
    helped,
    lost,
    points,
    told,
    where_answers_are,
)
from decks.press.teacher.how.play import Part, Play
from decks.words import counted

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
                "A home for every team at the edge of the room, best a table. Its pile lies there, "
                "questions up, numbers in order."
            ),
            "The middle of the room is clear.",
            "A sheet at every home for the team’s strokes.",
            "Try the stop signal once: everyone stands still and looks at you.",
        ),
        steps=_steps(deck),
        moving=1,
        asides=_asides(),
    )


def _needs(deck: Deck) -> tuple[str, ...]:
    cards = f"{counted(len(deck.cards), 'card')}, {each(hands(deck))} a team"
    return (
        f"{cards_made(deck)}: {cards}",
        *answers_needed(deck),
        *guides_needed(deck),
        "A pencil for everyone, a clock, a stop signal",
        "The answer keys of this file",
    )


def _steps(deck: Deck) -> tuple[Part, ...]:
    minutes = deck.recipe.minutes
    at_home = max(1, round(minutes / AT_HOME))
    tells = where_answers_are(deck)
    other = "from another team" if len(deck.recipe.teams) > 1 else "not met yet"
    steps = [
        Part(
            f"At home, {at_home} min",
            "In pairs: one takes a card from the team’s pile and asks, the other answers, then "
            f"{tells} tells. Right: the card is put aside. Not right: say the answer once, and the "
            "card goes under the pile. Then change roles.",
        ),
        Part(
            "Take one, walk",
            "Everyone takes one card from the pile and walks about the room. Call “Meet”: everyone "
            f"stops with the nearest person {other}; three may stand together.",
        ),
        Part(
            "Ask each other",
            f"One shows the front and reads it out, the other answers, {tells} tells; then the "
            "other way round. Whoever was not right says the right answer once. Nobody swaps "
            "cards.",
        ),
        Part(
            "What counts",
            f"A right answer earns {points(deck.recipe.points.right)} for the team of whoever "
            "gave it. A wrong one costs nothing.",
        ),
        Part(
            "Home and out again",
            "Call “Home”: walk home, make a stroke for each point, lay the card under the pile, "
            "take the next one. Call “Meet” again after about a minute.",
        ),
        Part("The end", _end(deck, max(1, minutes - at_home))),
    ]
    if deck.guides:
        steps.append(Part("Study guide", _guide(deck)))
    return tuple(steps)


def _end(deck: Deck, walking: int) -> str:
    return (
        f"After {counted(walking, 'minute')} of walking everyone walks home. The team counts its "
        f"cards: {told(hands(deck), 'card')}. Cards of another colour go back."
    )


def _guide(deck: Deck) -> str:
    number = told(blanks(deck), "blank")
    return (
        f"Cards away. Everyone sits down and fills in the study guide alone{helped(deck)}: "
        f"{number}, about a minute each. Read out the key; each right blank is "
        f"{points(deck.recipe.points.right)} for the team."
    )


def _asides() -> tuple[Part, ...]:
    return (
        Part(
            "Points",
            "Add a team’s strokes to its right blanks. Where teams differ in number, divide by "
            "the students in each.",
        ),
        Part(
            "Gentler, and seated",
            "Stay at home and be met there, or ask across a table while cards go round instead "
            "of people. Reading aloud may be left to the partner.",
        ),
        Part("A card is lost", lost("a blank card", "the key to the cards")),
    )
