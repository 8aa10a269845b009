"""What was right in the lesson, and how it comes into marks.xlsx: a sheet of it for each way."""

from decks.deck import Deck
from decks.marks.forms import SCORE_SHEET, TALLY_SHEET
from decks.press.teacher.score import is_ticked
from decks.recipe import Activity, Points

TALLY = f"On the sheet {TALLY_SHEET} of marks.xlsx, as much as you have: for each card"
GUIDES = (
    "On the sheet Study guides of marks.xlsx, from as many marked guides as you have: 1 for a "
    "blank that is right, 0 for one that is not."
)
THEN = "Then fairdeal marks says what they show, and fairdeal next makes the next deck from them."


def how_to_note(deck: Deck, width: float) -> str:
    """Say what is written into the workbook of marks after the lesson, and from where.

    `width` is that of the score sheet, whose places go by it.
    """
    tally = {
        Activity.REVIEW: _asked_at_home(deck),
        Activity.COLLECT: _asked_afterwards(),
        Activity.ROUNDS: _called(deck, width),
        Activity.STATIONS: _on_slips(deck),
        Activity.ORGANIZER: _sorted(deck),
    }[deck.recipe.activity]
    return f"{GUIDES if deck.guides else tally} {THEN}"


def _asked_at_home(deck: Deck) -> str:
    if deck.has_copies:
        return (
            f"{TALLY} Tries, how many teams asked it at home, and Right, how many of them did not "
            "note its number."
        )
    return (
        f"{TALLY} that was asked at home Tries, 1, and Right, 1, or 0 if its number was noted as "
        "not right."
    )


def _asked_afterwards() -> str:
    return (
        "Words that were brought home do not say what is known. If you ask for them afterwards: "
        f"{_low(TALLY)} Tries, how often it was asked for, and Right, how often it was known."
    )


def _low(text: str) -> str:
    return f"{text[0].lower()}{text[1:]}"


def _called(deck: Deck, width: float) -> str:
    if deck.is_one_team:
        told = f"{TALLY} that was called Tries, 1, and Right, 1 if it was right, else 0{{}}."
    else:
        told = f"{TALLY} Tries, how many teams answered, and Right, how many had it right{{}}."
    return f"{told.format(_where_right_is(deck, width))}{_score(deck)}"


def _where_right_is(deck: Deck, width: float) -> str:
    if not deck.points.right:
        return ", as you noted on the call sheet"
    way = "R" if is_ticked(deck, width) else "the rings"
    return f" ({way} on the score sheet, or your notes on the call sheet)"


def _score(deck: Deck) -> str:
    if deck.points == Points(0, 0, 0):
        return ""
    return f" The sheet {SCORE_SHEET} is for points: it does not say what is known."


def _on_slips(deck: Deck) -> str:
    line = ", in the line of its set" if len(deck.owners) > 1 else ""
    return (
        f"{TALLY} Tries, how many slips have its number{line}, and Right, how many have it with a "
        "tick."
    )


def _sorted(deck: Deck) -> str:
    if deck.has_copies:
        return (
            f"{TALLY} Tries, how many groups sorted it, and Right, how many of them did not note "
            "its number."
        )
    return f"{TALLY} that was sorted Tries, 1, and Right, 1, or 0 if its number was noted."
