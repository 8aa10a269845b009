"""Texts that hold the place of others, and answers that are one and the same throughout."""

import re
from collections.abc import Iterator

from cards.answers import answered
from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.content import Content
from cards.item import Kind
from cards.place import Place
from cards.quoting import quoted

_FEW = 5
# three are the Romans’ thirty, and one or two question marks may be what is asked for
_STAND_IN = re.compile(r"tbd|tba|n/a|TBD|TBA|N/A|\?{3,}|x{4,}|X{4,}")
# what else stands in its place may be what is to be explained: N/A, XXXX, the operator ???
_STAND_IN_FOR_A_PROMPT = re.compile("tbd|TBD")


def stand_in(content: Content) -> Iterator[Remark]:
    """Find prompts and answers that only say that a text is still wanting."""
    for item in content.items:
        prompt, answer = item.prompt, item.answer
        if _STAND_IN_FOR_A_PROMPT.fullmatch(prompt) and not _stands_for(prompt, answer):
            yield _wanting(prompt, item.prompt_place, PROMPT_NAMES[item.kind])
        if _STAND_IN.fullmatch(answer) and not _stands_for(answer, prompt):
            yield _wanting(answer, item.answer_place, ANSWER_NAMES[item.kind])


def _wanting(text: str, place: Place, name: str) -> Remark:
    return Remark(
        place,
        text,
        f"{quoted(text)} looks as if this {name} were still wanting, and would be printed as it "
        "stands.",
        f"Write the {name}, or clear the row; if it is meant, leave it.",
    )


def _stands_for(text: str, other: str) -> bool:
    """Say whether a text is made of the first letters of another."""
    firsts = "".join(word[0] for word in re.findall(r"\w+", other.casefold()))
    letters = "".join(filter(str.isalpha, text.casefold()))
    return bool(letters) and letters in firsts


def one_answer(content: Content) -> Iterator[Remark]:
    """Find content whose answers are all the same. Of details, a rule of its own tells."""
    items = [item for item in content.items if item.answer and item.kind is not Kind.DETAIL]
    if len(items) < _FEW or len({answered(item) for item in items}) > 1:
        return
    first = items[0]
    yield Remark(
        first.answer_place,
        first.answer,
        f"All {len(items)} rows have the same {ANSWER_NAMES[first.kind]}, {quoted(first.answer)}: "
        "whoever knows one knows all.",
        "If it was filled down by mistake, write each row’s own.",
    )
