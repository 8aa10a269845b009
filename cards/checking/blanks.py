"""Sides of a card with nothing on them."""

from collections.abc import Iterator, Sequence

from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.content import Content

_MEND = "Write it in this cell, or clear the row."


def no_prompt(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items without a prompt."""
    for item in content.items:
        if not item.prompt:
            wrong = f"There is no {PROMPT_NAMES[item.kind]} in this row."
            yield Remark(item.prompt_place, "", wrong, _MEND)


def no_answer(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items without an answer."""
    for item in content.items:
        if not item.answer:
            wrong = f"There is no {ANSWER_NAMES[item.kind]} in this row."
            yield Remark(item.answer_place, "", wrong, _MEND)
