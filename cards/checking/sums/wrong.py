"""Sums whose answer is wrong."""

from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.checking.sums.asked import BLANK, Asked, asked
from cards.checking.sums.expression import Value, evaluate
from cards.checking.sums.given import given, right_remainder, right_value, written
from cards.checking.sums.numerals import Style
from cards.checking.sums.signs import on_one_line
from cards.item import Item
from cards.quoting import quoted

_MEND = "Correct the answer, or the sum; if both are meant, name the other under Also right."


def remark_on(item: Item) -> Iterator[Remark]:
    """Remark on an item that is a sum whose answer is not what it comes to."""
    question = asked(on_one_line(item.prompt, item.prompt_spans))
    if not question or any(_right(question, right) for right in item.also_right):
        return
    if _wrong(question, on_one_line(item.answer, item.answer_spans)):
        yield Remark(item.answer_place, item.answer, _said(question, item.answer), _MEND)


def _wrong(question: Asked, answer: str) -> bool:
    """Say whether an answer is understood in some style, and right in none."""
    verdicts = _verdicts(question, answer)
    return False in verdicts and True not in verdicts


def _right(question: Asked, answer: str) -> bool:
    return True in _verdicts(question, answer)


def _verdicts(question: Asked, answer: str) -> set[bool | None]:
    plain = given(answer)
    if not question.bare:
        return {_holds(question, plain, style) for style in Style}
    remainder = right_remainder(question.bare, plain)
    if remainder is not None:
        return {remainder}
    values = {style: value for style in Style if (value := _worked_out(question, style))}
    return {
        right_value(value, plain, style, rounded=question.rounded)
        for value in values.values()
        for style in Style
    }


def _worked_out(question: Asked, style: Style) -> Value | None:
    """Return what the prompt comes to; a number by itself is a sum only if it is to be rounded."""
    value = evaluate(question.bare or "", style)
    if value is None:
        return None
    is_sum = value.operations or "/" in (question.bare or "") or question.rounded
    return value if is_sum else None


def _holds(question: Asked, answer: str, style: Style) -> bool | None:
    """Say whether both sides are equal with the answer in the blank."""
    if evaluate(answer, style) is None:
        return None
    left, right = (
        evaluate(side.replace(BLANK, f"({answer})"), style)
        for side in (question.left, question.right)
    )
    return left.number == right.number if left and right else None


def _said(question: Asked, answer: str) -> str:
    values = [value for style in Style if (value := _worked_out(question, style))]
    if not question.bare or not values:
        return f"With {quoted(answer)} in the blank, the two sides are not equal."
    end = ", and that does not round to" if question.rounded else ", not"
    return f"This comes to {written(values[0].number)}{end} {quoted(answer)}."
