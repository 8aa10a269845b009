"""What an answer to a sum says, and whether that is right."""

import re
from fractions import Fraction

from cards.checking.sums.expression import Value, evaluate
from cards.checking.sums.numerals import Style, numeral, step
from cards.checking.sums.signs import plain_signs

_REMAINDER = re.compile(r"(\d+) ?(?:r\.?|rem\.?|remainder|rest|reste|resto) ?(\d+)")
_DIVISION = re.compile(r"(\d+) ?[÷/] ?(\d+)")
_EDGES = re.compile(r"^[=≈≃~ ]+|[. ]+$")


def given(answer: str) -> str:
    """Return an answer in plain signs, without an equals sign before or a full stop after it."""
    return _EDGES.sub("", plain_signs(answer))


def right_remainder(expression: str, answer: str) -> bool | None:
    """Say whether `3 r 2` is right for a division; None if it is no such answer."""
    remainder, division = _REMAINDER.fullmatch(answer), _DIVISION.fullmatch(expression)
    if not remainder or not division:
        return None
    whole, left = map(int, remainder.groups())
    dividend, divisor = map(int, division.groups())
    return bool(divisor) and divmod(dividend, divisor) == (whole, left)


def right_value(true: Value, answer: str, style: Style, *, rounded: bool) -> bool | None:
    """Say whether an answer is the true value, or rounds it; None if it is not understood.

    A value without end, such as 2/3, may be rounded unasked, but not to a whole number. What is
    25 of a hundred may be called 25 as well as 25%.
    """
    said = evaluate(answer, style)
    if said is None:
        return None
    same_hundredths = said.percent is not true.percent and said.number * 100 == true.number
    if said.number == true.number or same_hundredths:
        return True
    plain = numeral(answer.lstrip("-"), style) is not None
    worth = step(answer.lstrip("-"), style)
    may_round = plain and (rounded or (_endless(true.number) and worth is not None and worth < 1))
    return may_round and abs(said.number - true.number) <= (worth or Fraction(0)) / 2


def _endless(number: Fraction) -> bool:
    """Say whether the decimals of a fraction go on for ever: 2 and 5 are not its only factors."""
    below = number.denominator
    for factor in (2, 5):
        while below % factor == 0:
            below //= factor
    return below > 1


def written(number: Fraction) -> str:
    """Return a number as a teacher would write it: whole, decimal, or whole and fraction."""
    if number.denominator == 1:
        return str(number.numerator)
    if not _endless(number) and number.denominator <= 10**4:
        return f"{float(number):.10f}".rstrip("0")
    whole, part = divmod(abs(number.numerator), number.denominator)
    fraction = f"{part}/{number.denominator}"
    return f"{'−' if number < 0 else ''}{f'{whole} ' if whole else ''}{fraction}"
