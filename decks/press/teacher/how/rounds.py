"""Called questions: teams put their heads together, write, move together, and show."""

from decks.deck import Deck
from decks.lesson import Called
from decks.lesson.calling import GOOD_END
from decks.lesson.timing import about_time
from decks.press.teacher.how.counts import (
    NO_POINTS,
    a_team,
    answers_needed,
    cards_made,
    earned,
    every_team,
    in_all,
    lost,
    spread,
    where_answers_are,
)
from decks.press.teacher.how.play import Part, Play
from decks.recipe import Points
from decks.words import counted


def rounds(deck: Deck, called: Called) -> Play:
    """Return how to call the questions of this deck."""
    return Play(
        name="Called questions",
        lasts=counted(deck.recipe.minutes, "minute"),
        needs=_needs(deck),
        setting=_setting(deck, called),
        steps=_steps(deck, called),
        moving=3,
        asides=_asides(deck),
    )


def _needs(deck: Deck) -> tuple[str, ...]:
    number = len(deck.hands)
    piles = f"{counted(number, 'pile')}, a round each" if number > 1 else "one pile"
    return (
        f"{cards_made(deck)}: {counted(len(deck.cards), 'card')} in {piles}, for whoever calls",
        *answers_needed(deck),
        "The call sheet of this file, and a clock that shows seconds",
        _scoring(deck),
        f"Paper and a thick pen for {every_team(deck)}{in_all(deck)}; a stop signal",
    )


def _counts_points(deck: Deck) -> bool:
    return deck.points != Points(0, 0, 0)


def _scoring(deck: Deck) -> str:
    """Return what the points are kept on, where there are any."""
    if not _counts_points(deck):
        return "Nothing to score with: no points are counted"
    right = f" (then note beside each card on the call sheet {_had_it(deck)})"
    return (
        "The score sheet of this file with a pencil, or the sheet Score of marks.xlsx, which adds "
        f"up by itself{right if deck.points.right else ''}"
    )


def _had_it(deck: Deck) -> str:
    return "whether it was right" if deck.is_one_team else "how many teams were right"


def _setting(deck: Deck, called: Called) -> tuple[str, ...]:
    number = spread(a_team(deck))
    return (
        f"A table for {every_team(deck)}, with room for {number} to stand round it.",
        (
            f"Count the seats {at_tables(deck)} clockwise from the one nearest the board: the "
            "roster of seats in this file says who writes when."
        ),
        about_time(called, deck.recipe.minutes),
    )


def _steps(deck: Deck, called: Called) -> tuple[Part, ...]:
    return (
        Part(
            "Call",
            "Read the question out twice, from the card or the call sheet. The card may be shown; "
            f"{where_answers_are(deck)} is for you.",
        ),
        Part(
            "Heads together",
            f"{_whisper(deck)} on one answer. Everybody in the team should be able to say it.",
        ),
        Part("Write", _write(deck)),
        Part(
            "Move together",
            "Everyone beside their own place does the exercise of the call sheet, in one rhythm, "
            "counting aloud. All choose the exercise, its gentler or its seated way; all count "
            "alike.",
        ),
        Part("Show", _show(deck)),
        Part("What counts", _counts(deck)),
        Part("The end", _end(deck, called)),
    )


def at_tables(deck: Deck) -> str:
    """Return where the seats are counted."""
    return "at the table" if deck.is_one_team else "at each table"


def _whisper(deck: Deck) -> str:
    return "The team whispers, and agrees" if deck.is_one_team else "Teams whisper, and agree"


def _show(deck: Deck) -> str:
    """Say how answers are shown; who was right is noted here where no point says so."""
    papers = "the paper goes up" if deck.is_one_team else "all papers go up at once"
    noted = f" Note beside the card {_had_it(deck)}." if not deck.points.right else ""
    return (
        f"When the seconds of the call sheet are over, give the signal: {papers}. Say the answer; "
        f"what else to accept stands beside it.{noted}"
    )


def _write(deck: Deck) -> str:
    noted = " The first team whose paper is down is noted." if deck.points.first else ""
    return (
        f"The seat whose turn it is by the roster writes the answer and lays it face down.{noted}"
    )


def _counts(deck: Deck) -> str:
    if not _counts_points(deck):
        return NO_POINTS
    counted_for = deck.points
    ways = [
        (counted_for.right, "Right: {}."),
        (counted_for.first, "Right and first down: {}."),
        (counted_for.together, "Moved together, each in their own way: {}, right or not."),
    ]
    return " ".join([*earned(ways), "Write them down before the next call."])


def _end(deck: Deck, called: Called) -> str:
    likely = deck.expected(called.rounds[-1][-1].item) >= GOOD_END
    last = "The last call is one that most can answer. " if likely else ""
    scores, add = (", and the scores", "Add up, let") if _counts_points(deck) else ("", "Let")
    between = f"After each round: water{scores}. " if called.rounds[1:] else ""
    return (
        f"{between}{last}{add} {every_team(deck)} name one thing that it knows now and "
        "did not before, and thank the writers."
    )


def _asides(deck: Deck) -> tuple[Part, ...]:
    fall = ": the points for moving together then fall away" if deck.points.together else ""
    return (
        Part("Fair to all", _fair(deck)),
        Part(
            "Gentler, and seated",
            "Every exercise has both on the call sheet; say all three each time. Or leave the "
            f"exercises out{fall}.",
        ),
        Part("A card is lost", lost("a blank card", "the call sheet")),
    )


def _fair(deck: Deck) -> str:
    alike, tie = "Teams that differ in number play alike: one answer a team.", " A tie is shared."
    if deck.is_one_team:
        alike, tie = "One answer for the whole team.", ""
    return f"{alike}{tie} Points are never taken away." if _counts_points(deck) else alike
