"""Digits, set into the placeholders of a format code."""

from collections.abc import Sequence
from decimal import ROUND_HALF_UP, Context, Decimal

from cards.reading.shown.tokens import Mark, Token

# Enough for the largest and the smallest number that a cell can hold.
_WIDE = Context(prec=700, rounding=ROUND_HALF_UP)
_GROUP = 3


def rounded(number: Decimal, places: int) -> tuple[str, str]:
    """Return the digits before and after the point, rounded half up to `places` places."""
    fixed = f"{_WIDE.quantize(number, Decimal(1).scaleb(-places)):f}"
    whole, _, part = fixed.partition(".")
    return whole.lstrip("0"), part


def whole_shown(digits: str, tokens: Sequence[Token], *, grouped: bool = False) -> str:
    """Set the digits of a whole number into the placeholders, from the right.

    Digits that are left over stand at the first placeholder. A `0` without a digit shows 0; `#`
    and `?` show nothing.
    """
    left = list(digits)
    first = next((i for i, token in enumerate(tokens) if token.mark is Mark.DIGIT), None)
    pieces: list[str] = []
    count = 0
    for i in reversed(range(len(tokens))):
        if tokens[i].mark is not Mark.DIGIT:
            pieces.append(_literal(tokens[i]))
            continue
        for digit in _taken(left, tokens[i], everything=i == first):
            pieces.append("," if grouped and count and count % _GROUP == 0 else "")
            pieces.append(digit)
            count += 1
    return "".join(reversed(pieces))


def _taken(left: list[str], token: Token, *, everything: bool) -> list[str]:
    """Take one digit, or all, off the end of those left; the last digit comes first."""
    if not left:
        return ["0"] if token.text == "0" else []
    taken = [left.pop()]
    if everything:
        taken += reversed(left)
        left.clear()
    return taken


def part_shown(digits: str, tokens: Sequence[Token]) -> str:
    """Set the digits after the point into the placeholders; closing zeros only show under `0`."""
    pieces: list[str] = []
    place = 0
    for token in tokens:
        if token.mark is not Mark.DIGIT:
            pieces.append(_literal(token))
            continue
        if token.text == "0" or digits[place:].strip("0"):
            pieces.append(digits[place])
        place += 1
    return "".join(pieces)


def _literal(token: Token) -> str:
    return "" if token.mark in {Mark.COMMA, Mark.CONDITION} else token.text


def places_in(tokens: Sequence[Token]) -> int:
    """Return how many placeholders there are."""
    return sum(token.mark is Mark.DIGIT for token in tokens)
