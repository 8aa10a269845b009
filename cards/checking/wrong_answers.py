"""Wrong answers that are written as one."""

import re
from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.checking.where import wrong_place
from cards.content import Content
from cards.item import Item

# Not a comma that parts the thousands of a number.
_COMMA = re.compile(r",(?!\d{3}(?!\d))")
_LEAST_PARTS = 3
_MOST_WORDS = 3


def several_in_one(content: Content) -> Iterator[Remark]:
    """Find the only wrong answer of an item if it is a list of short texts with commas between.

    Where the right answer has commas as well, a list is what is asked for.
    """
    for item in content.items:
        if len(item.wrong) == 1 and "," not in item.answer and _is_list(item.wrong[0]):
            yield _remark(item)


def _is_list(text: str) -> bool:
    parts = [part.split() for part in _COMMA.split(text)]
    return len(parts) >= _LEAST_PARTS and all(0 < len(part) <= _MOST_WORDS for part in parts)


def _remark(item: Item) -> Remark:
    return Remark(
        wrong_place(item, 0),
        item.wrong[0],
        "This is read as one wrong answer.",
        "If it is several, part them with semicolons.",
    )
