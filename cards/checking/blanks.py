"""Sides of a card with nothing on them."""

from collections.abc import Iterator

from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.content import Content
from cards.place import Place
from cards.reading.doubts import HIDDEN

_MEND = "Write it in this cell, or clear the row."


def no_prompt(content: Content) -> Iterator[Remark]:
    """Find items without a prompt."""
    hidden = _hidden(content)
    for item in content.items:
        if not item.prompt and item.prompt_place not in hidden:
            wrong = f"There is no {PROMPT_NAMES[item.kind]} in this row."
            yield Remark(item.prompt_place, "", wrong, _MEND)


def no_answer(content: Content) -> Iterator[Remark]:
    """Find items without an answer."""
    hidden = _hidden(content)
    for item in content.items:
        if not item.answer and item.answer_place not in hidden:
            wrong = f"There is no {ANSWER_NAMES[item.kind]} in this row."
            yield Remark(item.answer_place, "", wrong, _MEND)
        elif item.answer and not item.answer.strip("_ \n"):
            wrong = f"This {ANSWER_NAMES[item.kind]} is a line to write on, as on a worksheet."
            yield Remark(item.answer_place, item.answer, wrong, _MEND)


def _hidden(content: Content) -> set[Place]:
    """Return the cells that only seem blank, which is told of already."""
    return {finding.place for finding in content.findings if finding.code == HIDDEN}
