"""Supporting details: whether the headings of a text can be told apart, and are worth sorting."""

from collections import defaultdict
from collections.abc import Iterator, Mapping, Sequence
from typing import TypeAlias

from cards.answers import answered
from cards.checking.rule import Remark
from cards.checking.slips import is_slip
from cards.checking.words import ARTICLES, words
from cards.content import Content
from cards.item import Item, Kind, folded
from cards.quoting import quoted

Headings: TypeAlias = Mapping[str, list[Item]]
_FEW = 4
"""A text with fewer details than this is still being written."""

_MOST_HEADINGS = 150
"""Nobody sorts under more; each heading is held against each."""


def one_heading(content: Content) -> Iterator[Remark]:
    """Find texts whose details have all the same heading: there is nothing to sort."""
    for headings in _texts(content):
        (first, *_more), count = _items(headings), len(_items(headings))
        if len(headings) == 1 and count >= _FEW:
            yield Remark(
                first.answer_place,
                first.answer,
                f"All {count} details of {_text(first)} have this heading, so that there is "
                "nothing to sort.",
                "Give some of them another heading.",
            )


def lonely_detail(content: Content) -> Iterator[Remark]:
    """Find headings with one detail only; where that is so of a whole text, it is said once."""
    for headings in _texts(content):
        if len(headings) < 2 or len(_items(headings)) < _FEW:  # noqa: PLR2004 (see one_heading)
            continue
        # a slip of the typing is told by its own rule
        slips = {id(item) for _near, item in _slips(headings)}
        lonely = [i[0] for i in headings.values() if len(i) == 1 and id(i[0]) not in slips]
        for item in lonely[:1] if len(lonely) == len(headings) else lonely:
            what = "Every heading" if len(lonely) == len(headings) else "This heading"
            yield Remark(
                item.answer_place,
                item.answer,
                f"{what} of {_text(item)} has one detail only.",
                "Add a detail, or put it under another heading.",
            )


def nearly_same_heading(content: Content) -> Iterator[Remark]:
    """Find headings that part from an earlier one of the same text by a slip of the typing."""
    for headings in _texts(content):
        for near, item in _slips(headings):
            yield Remark(
                item.answer_place,
                item.answer,
                f"Nearly the same heading, {quoted(near.answer)}, stands in {near.answer_place}.",
                "If they are meant to be one, write them alike; else word them further apart.",
            )


def detail_without_topic(content: Content) -> Iterator[Remark]:
    """Find details that do not say which text they are from, where others do."""
    details = [item for item in content.items if item.kind is Kind.DETAIL]
    if not any(item.topic for item in details):
        return
    for item in details:
        if not item.topic:
            yield Remark(
                item.prompt_place,
                item.prompt,
                "This detail does not say which text it is from, and others do: it would be part "
                "of a text without a name.",
                "Write the name of its text under Topic.",
            )


def _texts(content: Content) -> list[Headings]:
    """Return for each text its headings, as they are compared, with their details."""
    texts: dict[str, dict[str, list[Item]]] = defaultdict(lambda: defaultdict(list))
    for item in content.items:
        if item.kind is Kind.DETAIL and item.prompt and item.answer:
            texts[folded(item.topic)][answered(item)].append(item)
    return list(texts.values())


def _slips(headings: Headings) -> Iterator[tuple[Item, Item]]:
    """Yield the first detail of each heading that is nearly an earlier one, after that one's."""
    if len(headings) > _MOST_HEADINGS:
        return
    firsts = [(_bare(items[0].answer), items[0]) for items in headings.values()]
    for n, (told, item) in enumerate(firsts):
        near = next((one for said, one in firsts[:n] if _is_near(said, told)), None)
        if near:
            yield near, item


def _items(headings: Headings) -> list[Item]:
    return [item for items in headings.values() for item in items]


def _text(item: Item) -> str:
    return quoted(item.topic) if item.topic else "the text"


def _bare(heading: str) -> list[str]:
    return [word for word in words(heading) if word not in ARTICLES]


def _is_near(said: Sequence[str], told: Sequence[str]) -> bool:
    """Say whether two headings part in spaces, stops, articles, one plural or one slip."""
    if not said or not told:
        return False
    if "".join(said) == "".join(told):
        return True
    apart = [(a, b) for a, b in zip(said, told, strict=False) if a != b]
    if len(said) != len(told) or len(apart) != 1:
        return False
    ((word, twin),) = apart
    return _is_plural_of(word, twin) or is_slip(word, twin, same_sense=True)


def _is_plural_of(word: str, other: str) -> bool:
    longer, shorter = sorted((word, other), key=len, reverse=True)
    return shorter.isalpha() and longer in {f"{shorter}s", f"{shorter}es"}
