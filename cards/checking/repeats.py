"""One prompt in several rows."""

from collections.abc import Iterator

from msgspec import Struct, field

from cards.answers import accepted, answered, asked
from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.content import Content
from cards.item import Item
from cards.quoting import quoted


def same_item(content: Content) -> Iterator[Remark]:
    """Find items whose prompt and answer stand in a row before."""
    for item, before in _with_those_before(content):
        twin = before.first.get(answered(item))
        if twin:
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The same {PROMPT_NAMES[item.kind]} with the same {ANSWER_NAMES[item.kind]} "
                f"stands in {twin.prompt_place}.",
                f"Delete this row, or change its {PROMPT_NAMES[item.kind]}.",
            )


def same_prompt_other_answer(content: Content) -> Iterator[Remark]:
    """Find items whose prompt stands in a row before, with an answer that is not right here."""
    for item, before in _with_those_before(content):
        rival = _rival(item, before)
        if rival:
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The same {PROMPT_NAMES[item.kind]} stands in {rival.prompt_place}, "
                f"but there the {ANSWER_NAMES[rival.kind]} is {quoted(rival.answer)}, "
                f"and here it is {quoted(item.answer)}.",
                "Change one of the two, or name the other under Also right if both are right.",
            )


class _Rows(Struct, frozen=True):
    """The items that ask the same, and the first of them with each answer."""

    items: list[Item] = field(default_factory=list)
    first: dict[str, Item] = field(default_factory=dict)
    _right: list[tuple[str, frozenset[str]]] = field(default_factory=list)

    def add(self, item: Item) -> None:
        self.items.append(item)
        self.first.setdefault(answered(item), item)

    def right(self) -> list[tuple[str, frozenset[str]]]:
        """Return for each item its answer and all that is right; told apart once, when asked."""
        new = self.items[len(self._right) :]
        self._right.extend((answered(item), accepted(item)) for item in new)
        return self._right


def _with_those_before(content: Content) -> Iterator[tuple[Item, _Rows]]:
    """Yield each whole item that asks what rows before it ask, with those rows."""
    seen: dict[str, _Rows] = {}
    for item in content.items:
        if not (item.prompt and item.answer):
            continue
        before = seen.setdefault(asked(item), _Rows())
        if before.items:
            yield item, before
        before.add(item)


def _rival(item: Item, before: _Rows) -> Item | None:
    """Return the first item whose answer is wrong here, as this item's is there."""
    answer = answered(item)
    if answer in before.first:
        return None
    here = accepted(item)
    rows = zip(before.items, before.right(), strict=True)
    wrong = (one for one, (its, there) in rows if its not in here and answer not in there)
    return next(wrong, None)
