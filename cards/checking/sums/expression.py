"""What a line of arithmetic comes to."""

from fractions import Fraction

from msgspec import Struct

from cards.checking.sums.numerals import Style
from cards.checking.sums.tokens import NotUnderstoodError, Token, tokens

_DEEPEST = 20
_HIGHEST_POWER = 64
_MOST_BITS = 512
_LARGEST_UNDER_ROOT = 10**15
_END = Token("", tight=False)


class Value(Struct, frozen=True):
    """A number, whether it is one of per cent, and how many operations it took."""

    number: Fraction
    percent: bool = False
    operations: int = 0


def evaluate(text: str, style: Style) -> Value | None:
    """Return what a text in plain signs comes to, or None if it is not plain arithmetic."""
    try:
        reader = _Reader(tokens(text, style))
        value = reader.sum()
    except NotUnderstoodError:
        return None
    return value if reader.next is _END else None


class _Reader:
    """Reads by the usual order of operations: brackets, powers, times and over, plus and minus."""

    def __init__(self, found: list[Token]) -> None:
        self._tokens = [*found, _END]
        self._at = 0
        self._depth = 0

    @property
    def next(self) -> Token:
        return self._tokens[self._at]

    def _take(self) -> Token:
        token = self.next
        self._at += 1
        return token

    def sum(self) -> Value:
        value = self._product()
        while self.next.sign in {"+", "-"}:
            sign = self._take().sign
            other = self._product()
            if value.percent is not other.percent:
                # 80 + 10% is read in two ways
                raise NotUnderstoodError
            value = _joined(value, other, sign, percent=value.percent)
        return value

    def _product(self) -> Value:
        slashed = self.next.sign == "fraction"
        value = self._power()
        while self.next.sign in {"×", "÷", "/", "of"}:
            sign = self._take().sign
            if sign == "/" and slashed:
                # 1/2/3 is a date, or read in two ways
                raise NotUnderstoodError
            slashed = sign == "/"
            value = _joined(value, self._power(), sign, percent=False)
        return value

    def _power(self) -> Value:
        first = self.next
        value = self._signed()
        if self.next.sign == "^":
            if first.sign in {"-", "fraction"}:
                # −3² and 1/2² are read in two ways
                raise NotUnderstoodError
            self._take()
            value = _raised(value, self._signed())
        if self.next.sign == "^":
            raise NotUnderstoodError
        return value

    def _signed(self) -> Value:
        sign = self.next.sign
        if sign == "-":
            if not self._take().tight:
                raise NotUnderstoodError
            value = self._atom()
            return Value(-value.number, value.percent, value.operations)
        if sign in {"√", "∛"}:
            self._take()
            value = self._atom()
            return Value(_root(value.number, 2 if sign == "√" else 3), operations=1)
        return self._atom()

    def _atom(self) -> Value:
        token = self._take()
        if token.sign == "(":
            value = self._in_brackets()
        elif token.value is None:
            raise NotUnderstoodError
        else:
            value = Value(token.value)
        if self.next.sign == "%":
            self._take()
            return Value(value.number / 100, percent=True, operations=value.operations)
        return value

    def _in_brackets(self) -> Value:
        self._depth += 1
        if self._depth > _DEEPEST:
            raise NotUnderstoodError
        value = self.sum()
        if self._take().sign != ")":
            raise NotUnderstoodError
        self._depth -= 1
        return value


def _joined(first: Value, second: Value, sign: str, *, percent: bool) -> Value:
    done = first.operations + second.operations + 1
    return Value(_bounded(_result(first.number, second.number, sign)), percent, done)


def _result(first: Fraction, second: Fraction, sign: str) -> Fraction:
    if sign in {"+", "-"}:
        return first + second if sign == "+" else first - second
    if sign in {"×", "of"}:
        return first * second
    if not second:
        raise NotUnderstoodError
    return first / second


def _raised(base: Value, power: Value) -> Value:
    exponent = power.number
    if exponent.denominator != 1 or abs(exponent) > _HIGHEST_POWER or base.percent or power.percent:
        raise NotUnderstoodError
    if not base.number and exponent <= 0:
        raise NotUnderstoodError
    number = _bounded(base.number) ** int(exponent)
    return Value(_bounded(number), operations=base.operations + power.operations + 1)


def _root(number: Fraction, degree: int) -> Fraction:
    """Return an exact root; others are never written out in full."""
    if not 0 <= number < _LARGEST_UNDER_ROOT:
        raise NotUnderstoodError
    root = Fraction(*(round(part ** (1 / degree)) for part in number.as_integer_ratio()))
    if root**degree != number:
        raise NotUnderstoodError
    return root


def _bounded(number: Fraction) -> Fraction:
    if max(number.numerator.bit_length(), number.denominator.bit_length()) > _MOST_BITS:
        raise NotUnderstoodError
    return number
