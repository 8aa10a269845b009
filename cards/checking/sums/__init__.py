"""Arithmetic, as teachers write it: what a prompt asks for and whether the answer is right.

Nothing is ever run: a small grammar reads numbers and signs, and what it does not know, it leaves.
The grammar is loaded for content with numbers only.
"""

from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.content import Content

LONGEST = 200
"""A text with more letters than this is no sum."""


def wrong_sum(content: Content) -> Iterator[Remark]:
    """Find sums whose answer is not what they come to; what is not plain arithmetic is left."""
    for item in content.items:
        if _may_be_sum(item.prompt) and _may_be_sum(item.answer):
            from cards.checking.sums.wrong import remark_on  # noqa: PLC0415 (for numbers only)

            yield from remark_on(item)


def _may_be_sum(text: str) -> bool:
    return len(text) <= LONGEST and any(map(str.isnumeric, text))
