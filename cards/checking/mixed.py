"""Word banks in which one word stands out."""

from collections import defaultdict
from collections.abc import Callable, Iterator

from cards.checking.plurals import is_plural
from cards.checking.rule import Remark
from cards.content import Content
from cards.item import Item, Kind
from cards.quoting import quoted

_LEAST = 6


def number_among_words(content: Content) -> Iterator[Remark]:
    """Find the one number among words, or the one word among numbers."""
    return _odd_ones(content, _is_number, "a number", "a word")


def plural_among_singular(content: Content) -> Iterator[Remark]:
    """Find the one plural, unless Also right has the singular too."""
    for item in _lone(content, lambda item: is_plural(item.answer)):
        if not _names_singular(item):
            yield _remark(item, "in the plural", "in the singular")


def capital_among_small(content: Content) -> Iterator[Remark]:
    """Find the one word with a capital among words in small letters, or the other way round."""
    return _odd_ones(content, _is_capital, "written with a capital", "written in small letters")


def _odd_ones(
    content: Content, has: Callable[[Item], bool | None], it: str, others: str
) -> Iterator[Remark]:
    for item in _lone(content, has):
        yield _remark(item, it, others)
    for item in _lone(content, lambda item: None if has(item) is None else not has(item)):
        yield _remark(item, others, it)


def _lone(content: Content, has: Callable[[Item], bool | None]) -> Iterator[Item]:
    """Yield, of every sheet's vocabulary, the only item that has something the others lack.

    Items of which neither can be said are not counted.
    """
    sheets: dict[str, list[tuple[Item, bool]]] = defaultdict(list)
    for item in content.items:
        verdict = has(item) if item.kind is Kind.VOCABULARY and item.answer else None
        if verdict is not None:
            sheets[item.answer_place.sheet].append((item, verdict))
    for found in sheets.values():
        having = [item for item, verdict in found if verdict]
        if len(having) == 1 and len(found) >= _LEAST:
            yield having[0]


def _remark(item: Item, it: str, others: str) -> Remark:
    return Remark(
        item.answer_place,
        item.answer,
        f"{quoted(item.answer)} is {it} and all other words of this sheet are {others}: "
        "in a word bank it stands out.",
        "Write it like the others, or give it company; if it has to be so, leave it.",
    )


def _is_number(item: Item) -> bool:
    return not any(character.isalpha() for character in item.answer)


def _is_capital(item: Item) -> bool | None:
    """Say whether an answer begins with a capital; names by letters, as DNA, are neither."""
    letters = [character for character in item.answer if character.isalpha()]
    if not letters or not (letters[0].isupper() or letters[0].islower()):
        return None
    if letters[0].isupper() and (len(letters) == 1 or letters[1].isupper()):
        return None
    return letters[0].isupper()


def _names_singular(item: Item) -> bool:
    last = item.answer.split()[-1]
    return any(
        len(right) > 1 and not is_plural(right) and last.startswith(right.split()[-1][:-1])
        for right in item.also_right
    )
