"""Words in a question or a choice that make it harder to read than to answer."""

import re
from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.checking.where import wrong_place
from cards.content import Content
from cards.item import Item, Kind
from cards.place import Place
from cards.quoting import quoted

_ABOVE = re.compile(
    r"(?:all|none|both|neither|any) (?:of )?(?:the )?(?:above|these|those|them)\W*", re.IGNORECASE
)
_SELECTS = re.compile(r"\b(?:which|what|who|whom|whose|where|when)\b", re.IGNORECASE)
_REASON = re.compile(r"^\W*(?:why|how)\b", re.IGNORECASE)
# in capitals or as they are written where they carry the stress, they cannot be overlooked
_NEGATIVE = re.compile(r"\b(?:not|except)\b|(?<=\w)n['’]t\b")
_ABSOLUTE = re.compile(r"\b(?:never|always)\b", re.IGNORECASE)


def all_of_the_above(content: Content) -> Iterator[Remark]:
    """Find `all of the above`, `none of these` and their like among the choices."""
    for item in content.items:
        for place, text in _choices(item):
            if _ABOVE.fullmatch(text.strip()):
                yield Remark(
                    place,
                    text,
                    f"{quoted(text)} points to choices that stand elsewhere once they are mixed, "
                    "and who knows two of them knows the answer.",
                    "Write a choice that stands by itself.",
                )


def unstressed_negative(content: Content) -> Iterator[Remark]:
    """Find questions that turn on a `not` or `except` in small letters."""
    for item, word in _found(content, _NEGATIVE):
        yield Remark(
            item.prompt_place,
            item.prompt,
            f"This question turns on {quoted(word)}, which is easily overlooked.",
            f"Ask for what is so, or write {word.upper()} in capitals.",
        )


def absolute_word(content: Content) -> Iterator[Remark]:
    """Find questions with `never` or `always`, for which somebody may know an exception."""
    for item, word in _found(content, _ABSOLUTE):
        yield Remark(
            item.prompt_place,
            item.prompt,
            f"There is {quoted(word)} in this question, and one exception makes the answer wrong.",
            f"Ask without {quoted(word)}, unless it is meant to the letter.",
        )


def _found(content: Content, pattern: re.Pattern[str]) -> Iterator[tuple[Item, str]]:
    for item in content.items:
        found = pattern.search(item.prompt) if _picks_out(item) else None
        if found:
            yield item, found[0]


def _picks_out(item: Item) -> bool:
    """Say whether a prompt asks to pick something out; why something is not so may be asked."""
    asks = item.kind is Kind.QUESTION or item.prompt.rstrip().endswith("?")
    return asks and bool(_SELECTS.search(item.prompt)) and not _REASON.match(item.prompt)


def _choices(item: Item) -> Iterator[tuple[Place, str]]:
    yield item.answer_place, item.answer
    for number, text in enumerate(item.wrong):
        yield wrong_place(item, number), text
