"""A format code, taken apart into sections."""

from decimal import Decimal
from enum import Enum, auto
from functools import lru_cache
from operator import eq, ge, gt, le, lt, ne
from typing import TYPE_CHECKING

from msgspec import Struct

from cards.reading.shown.tokens import Mark, Token, tokens_of

if TYPE_CHECKING:
    from collections.abc import Callable

_COMPARE: dict[str, "Callable[[Decimal, Decimal], bool]"] = {
    "<": lt,
    "<=": le,
    "=": eq,
    "<>": ne,
    ">=": ge,
    ">": gt,
}
_NUMERIC_SECTIONS = 3


class Style(Enum):
    """How a section writes a number."""

    GENERAL = auto()
    NUMBER = auto()
    SCIENTIFIC = auto()
    FRACTION = auto()
    DATE = auto()


class Section(Struct, frozen=True):
    """One section of a format code: its tokens and, where it has one, its condition."""

    tokens: tuple[Token, ...]

    def has(self, *marks: Mark) -> bool:
        """Say whether any of the section's tokens bears one of the marks."""
        return any(token.mark in marks for token in self.tokens)

    @property
    def style(self) -> Style:
        """How this section writes a number."""
        if self.has(Mark.DATE, Mark.ELAPSED, Mark.HALF_DAY):
            return Style.DATE
        if self.has(Mark.GENERAL, Mark.TEXT):
            return Style.GENERAL
        if self.has(Mark.EXPONENT):
            return Style.SCIENTIFIC
        return Style.NUMBER if self.slash is None else Style.FRACTION

    @property
    def slash(self) -> int | None:
        """The index of the token that parts numerator and denominator, or None."""
        marks = [token.mark for token in self.tokens]
        for i in range(1, len(marks) - 1):
            below = marks[i + 1] in {Mark.DIGIT, Mark.DENOMINATOR}
            if marks[i] is Mark.SLASH and marks[i - 1] is Mark.DIGIT and below:
                return i
        return None

    @property
    def condition(self) -> tuple[str, Decimal] | None:
        """The sign and the number of the section's condition, or None if it has none."""
        for token in self.tokens:
            if token.mark is Mark.CONDITION:
                sign = token.text.rstrip("0123456789.-")
                return sign, Decimal(token.text.removeprefix(sign))
        return None

    @property
    def is_for_negatives(self) -> bool:
        """Say whether only negative numbers (or zero) meet the section's condition."""
        sign, bound = self.condition or ("", Decimal(0))
        return sign in {"<", "<=", "="} and bound <= 0

    def meets(self, number: Decimal) -> bool | None:
        """Say whether the number meets the section's condition; None if it has none."""
        if self.condition is None:
            return None
        sign, bound = self.condition
        return _COMPARE[sign](number, bound)


class Sections(Struct, frozen=True):
    """The sections of a format code: up to three for numbers, and one for text."""

    numeric: tuple[Section, ...]
    text: Section | None

    def pick(self, number: Decimal) -> tuple[Section, str]:
        """Return the section for a number and the sign to write before what it shows."""
        index = self._index(number)
        section = self.numeric[index]
        if index == 1 and self.numeric[0].meets(number) is None:
            return section, ""
        return section, "-" if number < 0 and not section.is_for_negatives else ""

    def _index(self, number: Decimal) -> int:
        last = len(self.numeric) - 1
        met = [section.meets(number) for section in self.numeric]
        if any(answer is not None for answer in met[:2]):
            return next((i for i, answer in enumerate(met) if answer), last)
        if number > 0 or last == 0:
            return 0
        if number < 0:
            return 1
        return 2 if last > 1 else 0


@lru_cache(maxsize=256)
def sections_of(number_format: str) -> Sections:
    """Take a format code apart. An empty code is General."""
    split = _split(tokens_of(number_format or "General"))
    last = split[-1]
    has_text = len(split) > _NUMERIC_SECTIONS or (len(split) > 1 and last.has(Mark.TEXT))
    if has_text:
        return Sections(tuple(split[: min(len(split) - 1, _NUMERIC_SECTIONS)]), last)
    return Sections(tuple(split), last if last.has(Mark.TEXT) else None)


def _split(tokens: tuple[Token, ...]) -> list[Section]:
    sections: list[list[Token]] = [[]]
    for token in tokens:
        if token.mark is Mark.SECTION:
            sections.append([])
        else:
            sections[-1].append(token)
    return [Section(tuple(section)) for section in sections]
