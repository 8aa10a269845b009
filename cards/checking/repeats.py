"""One prompt in several rows."""

from collections.abc import Iterable, Iterator, Sequence
from itertools import islice

from msgspec import Struct, field

from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.rule import Remark
from cards.checking.words import as_meant, same_but_for_case
from cards.content import Content
from cards.item import Item
from cards.quoting import quoted


def same_item(content: Content, _team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items whose prompt and answer stand in a row before."""
    for item, before in _with_those_before(content):
        twin = _earliest(rows.first.get(as_meant(item.answer)) for rows in before)
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
        if any(as_meant(item.answer) in rows.first for rows in before):
            continue
        rival = _earliest(_rival(item, rows) for rows in before)
        if rival:
            yield Remark(
                item.prompt_place,
                item.prompt,
                f"The same {PROMPT_NAMES[item.kind]} stands in {rival.prompt_place}, "
                f"but there the {ANSWER_NAMES[rival.kind]} is {quoted(rival.answer)}, "
                f"and here it is {quoted(item.answer)}.",
                "Change one of the two, or name the other under Also right if both are right.",
            )


Numbered = tuple[int, Item]
_MOST_SPELLINGS = 20  # of one prompt, by its capitals; a row is held against each


class _Rows(Struct, frozen=True):
    """The items of one spelling of a prompt, and the first of them with each answer."""

    items: list[Numbered] = field(default_factory=list)
    first: dict[str, Numbered] = field(default_factory=dict)

    def add(self, number: int, item: Item) -> None:
        self.items.append((number, item))
        self.first.setdefault(as_meant(item.answer), (number, item))


def _with_those_before(content: Content) -> Iterator[tuple[Item, list[_Rows]]]:
    """Yield each whole item whose prompt stands in rows before, with those rows."""
    seen: dict[str, dict[str, _Rows]] = {}
    for number, item in enumerate(content.items):
        if not (item.prompt and item.answer):
            continue
        spelt = seen.setdefault(item.asked, {})
        some = islice(spelt.items(), _MOST_SPELLINGS)
        before = [rows for one, rows in some if same_but_for_case(item.prompt, one)]
        if before:
            yield item, before
        spelt.setdefault(item.prompt, _Rows()).add(number, item)


def _earliest(found: Iterable[Numbered | None]) -> Item | None:
    return min((one for one in found if one), default=(0, None), key=lambda one: one[0])[1]


def _rival(item: Item, rows: _Rows) -> Numbered | None:
    """Return the first item whose answer is wrong here, as this item's is there."""
    return next((one for one in rows.items if not _both_right(item, one[1])), None)


def _both_right(item: Item, other: Item) -> bool:
    """Say whether one of the items names the answer of the other as right too."""
    return _accepts(item, other.answer) or _accepts(other, item.answer)


def _accepts(item: Item, answer: str) -> bool:
    return as_meant(answer) in {as_meant(right) for right in item.also_right}
