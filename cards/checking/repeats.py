"""One prompt in several rows."""

from collections.abc import Iterator, Sequence

from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.checking.words import as_meant, same_but_for_case
from cards.content import Content
from cards.item import Item
from cards.reading.quoting import quoted


def same_item(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items whose prompt and answer stand in a row before."""
    for item, before in _with_those_before(content):
        twin = next((other for other in before if _same_answer(item, other)), None)
        if twin:
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The same {PROMPT_NAMES[item.kind]} with the same {ANSWER_NAMES[item.kind]} "
                f"stands in {twin.prompt_place}.",
                f"Delete this row, or change its {PROMPT_NAMES[item.kind]}.",
            )


def same_prompt_other_answer(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items whose prompt stands in a row before, with an answer that is not right here."""
    for item, before in _with_those_before(content):
        if any(_same_answer(item, other) for other in before):
            continue
        rival = next((other for other in before if not _both_right(item, other)), None)
        if rival:
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The same {PROMPT_NAMES[item.kind]} stands in {rival.prompt_place}, "
                f"but there the {ANSWER_NAMES[rival.kind]} is {quoted(rival.answer)}, "
                f"and here it is {quoted(item.answer)}.",
                "Change one of the two, or name the other under Also right if both are right.",
            )


def _with_those_before(content: Content) -> Iterator[tuple[Item, tuple[Item, ...]]]:
    """Yield each whole item whose prompt stands in rows before, with the items of those rows."""
    seen: dict[str, list[Item]] = {}
    for item in content.items:
        if not (item.prompt and item.answer):
            continue
        folds = seen.setdefault(item.asked, [])
        before = [other for other in folds if same_but_for_case(item.prompt, other.prompt)]
        if before:
            yield item, tuple(before)
        folds.append(item)


def _same_answer(item: Item, other: Item) -> bool:
    return as_meant(item.answer) == as_meant(other.answer)


def _both_right(item: Item, other: Item) -> bool:
    """Say whether one of the items names the answer of the other as right too."""
    return _accepts(item, other.answer) or _accepts(other, item.answer)


def _accepts(item: Item, answer: str) -> bool:
    return as_meant(answer) in {as_meant(right) for right in item.also_right}
