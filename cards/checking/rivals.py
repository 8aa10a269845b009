"""Answers that fit the clues of two items."""

from collections import Counter, defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import TypeAlias

from cards.answers import answered, as_meant, asked
from cards.checking.names import ANSWER_NAMES, PROMPT_NAMES
from cards.checking.nearly import near_pairs
from cards.checking.rule import Remark
from cards.checking.words import is_value
from cards.content import Content
from cards.item import Item, Kind
from cards.quoting import quoted

_SORTS = 3
_MOST_RIVALS = 3
_MOST_ACCEPTING = 50
_MEND = "Word the one more narrowly, or choose another answer, so that each blank has one word."


def same_answer(content: Content) -> Iterator[Remark]:
    """Find answers that stand before, under another prompt.

    Numbers, yes and no repeat themselves, and so do the answers of a sheet that sorts things.
    """
    near = {id(item) for _, item in near_pairs(content.items)}
    first: dict[str, Item] = {}
    for item in _unsorted(content):
        before = first.setdefault(answered(item), item)
        if before is item or id(item) in near or asked(before) == asked(item):
            continue
        yield Remark(
            item.answer_place,
            item.answer,
            f"{quoted(item.answer)} is the {ANSWER_NAMES[before.kind]} in {before.answer_place} "
            "too: in a word bank it fits both.",
            _MEND,
        )


def right_for_another(content: Content) -> Iterator[Remark]:
    """Find answers that Also right of another item accepts, once for each pair of items."""
    order = {id(item): number for number, item in enumerate(content.items)}
    for item, rival in _accepting(list(_in_banks(content))):
        later = max(item, rival, key=lambda one: order[id(one)])
        yield Remark(
            later.answer_place,
            later.answer,
            f"{quoted(rival.answer)}, the {ANSWER_NAMES[rival.kind]} in {rival.answer_place}, is "
            f"also right for the {PROMPT_NAMES[item.kind]} in {item.prompt_place}: "
            "in a word bank it fits both.",
            _MEND,
        )


_Said: TypeAlias = tuple[str, str]
"""What an item answers and what it asks, as they are compared."""


def _accepting(items: Sequence[Item]) -> Iterator[tuple[Item, Item]]:
    """Yield each item with another whose answer it accepts; a pair comes once.

    Where many have that answer, an item comes with the first of them only; where many accept it,
    fifty come.
    """
    said = {id(item): (answered(item), asked(item)) for item in items}
    told: set[frozenset[int]] = set()
    times = Counter[int]()
    for item, rival in _named(items, said):
        pair = frozenset((id(item), id(rival)))
        differ = _differ(said[id(item)], said[id(rival)])
        if differ and pair not in told and times[id(rival)] < _MOST_ACCEPTING:
            told.add(pair)
            times[id(rival)] += 1
            yield item, rival


def _named(items: Sequence[Item], said: Mapping[int, _Said]) -> Iterator[tuple[Item, Item]]:
    """Yield each item with those whose answer it names as right too."""
    by_answer: dict[str, list[Item]] = defaultdict(list)
    for item in items:
        by_answer[said[id(item)][0]].append(item)
    for item in items:
        for right in item.also_right:
            for rival in _shown(by_answer.get(as_meant(right), ())):
                yield item, rival


def _shown(rivals: Sequence[Item]) -> Sequence[Item]:
    return rivals if len(rivals) <= _MOST_RIVALS else rivals[:1]


def _differ(item: _Said, other: _Said) -> bool:
    return item[0] != other[0] and item[1] != other[1]


def _in_banks(content: Content) -> Iterator[Item]:
    """Yield the items whose answers a word bank offers as words: no details, no numbers."""
    return (
        item
        for item in content.items
        if item.prompt and item.kind is not Kind.DETAIL and not is_value(item.answer)
    )


def _unsorted(content: Content) -> Iterator[Item]:
    """Yield the items of word banks but for those of sheets in which most answers come again."""
    sheets: dict[str, list[Item]] = defaultdict(list)
    for item in _in_banks(content):
        sheets[item.answer_place.sheet].append(item)
    for items in sheets.values():
        counts = Counter(answered(item) for item in items)
        repeated = sum(count for count in counts.values() if count > 1)
        if max(counts.values()) < _SORTS or 2 * repeated <= len(items):
            yield from items
