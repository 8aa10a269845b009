"""What numbers are worth, and which clues are sums; loaded for content with numbers only."""

import re
from fractions import Fraction

from cards.checking.sums.asked import BLANK, asked
from cards.checking.sums.expression import evaluate
from cards.checking.sums.given import given
from cards.checking.sums.numerals import Style
from cards.checking.sums.signs import on_one_line
from cards.style import Spans

_PLAIN = re.compile(r"[0-9]+(?:[.,/][0-9]+)?")
"""Most numbers have no sign that is written in several ways; to look for those takes longest."""


def worth_of_number(text: str) -> frozenset[tuple[Style, Fraction]]:
    """Return what a text is worth in each style; nothing if it is no plain number."""
    plain = text if _PLAIN.fullmatch(text) else given(text)
    found = ((style, evaluate(plain, style)) for style in Style)
    return frozenset((style, value.number) for style, value in found if value)


def is_plain_sum(prompt: str, spans: Spans, answer: str) -> bool:
    """Say whether a prompt sets something to be worked out, the answer being what it comes to."""
    question = asked(on_one_line(prompt, spans))
    if question is None:
        return False
    sides = [question.bare] if question.bare else [question.left, question.right]
    filled = [side.replace(BLANK, f"({given(answer)})") for side in sides]
    return any(_works_out(filled, style) for style in Style)


def _works_out(sides: list[str], style: Style) -> bool:
    values = [evaluate(side, style) for side in sides]
    return all(values) and any(value.operations for value in values if value)
