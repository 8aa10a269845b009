"""Fractions: `# ?/?`, `?/?`, `# ??/16`."""

from collections.abc import Sequence
from decimal import Decimal
from fractions import Fraction

from cards.reading.shown.digits import places_in, whole_shown
from cards.reading.shown.format import Section
from cards.reading.shown.tokens import Mark, Token


def fraction_shown(number: Decimal, section: Section) -> str:
    """Return a number, zero or more, as the nearest fraction that the section has room for."""
    tokens = section.tokens
    slash = section.slash or 0
    start, end = _numerator_start(tokens, slash), _denominator_end(tokens, slash)
    head, tail = tokens[:start], "".join(token.text for token in tokens[end:])
    fraction = _nearest(number, tokens[slash + 1 : end])
    if not places_in(head):
        return f"{_literals(head)}{_written(fraction, tokens[slash + 1 : end])}{tail}"
    whole, rest = divmod(fraction, 1)
    shown = [] if rest and not whole and _hides_zero(head) else [_whole(int(whole), head)]
    if rest:
        shown.append(_written(rest, tokens[slash + 1 : end]))
    return " ".join(shown) + tail


def _whole(whole: int, head: Sequence[Token]) -> str:
    return whole_shown(str(whole), head).rstrip()


def _hides_zero(head: Sequence[Token]) -> bool:
    return all(token.text != "0" for token in head if token.mark is Mark.DIGIT)


def _written(fraction: Fraction, denominator: Sequence[Token]) -> str:
    """Write a fraction; a denominator that the format fixes is not cancelled."""
    fixed = _fixed(denominator)
    if fixed is None:
        return f"{fraction.numerator}/{fraction.denominator}"
    return f"{fraction * fixed}/{fixed}"


def _nearest(number: Decimal, denominator: Sequence[Token]) -> Fraction:
    fixed = _fixed(denominator)
    if fixed is None:
        return Fraction(number).limit_denominator(10 ** places_in(denominator) - 1)
    return Fraction(int(Fraction(number) * fixed + Fraction(1, 2)), fixed)


def _fixed(denominator: Sequence[Token]) -> int | None:
    given = [token.text for token in denominator if token.mark is Mark.DENOMINATOR]
    return int(given[0]) if given else None


def _numerator_start(tokens: Sequence[Token], slash: int) -> int:
    start = slash
    while start and tokens[start - 1].mark is Mark.DIGIT:
        start -= 1
    return start


def _denominator_end(tokens: Sequence[Token], slash: int) -> int:
    end = slash + 1
    while end < len(tokens) and tokens[end].mark in {Mark.DIGIT, Mark.DENOMINATOR}:
        end += 1
    return end


def _literals(tokens: Sequence[Token]) -> str:
    return "".join(token.text for token in tokens if token.mark is Mark.LITERAL)
