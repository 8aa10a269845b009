"""Parting things into parts that differ by one at most."""

from collections.abc import Sequence
from itertools import accumulate, pairwise
from typing import TypeVar

T = TypeVar("T")


def even_sizes(things: int, parts: int) -> tuple[int, ...]:
    """Return the sizes of so many parts: one more at most, and in the first ones."""
    each, more = divmod(things, parts)
    return tuple([each + (n < more) for n in range(parts)])


def evenly(things: Sequence[T], parts: int) -> list[Sequence[T]]:
    """Return so many parts of things in a row, of even sizes."""
    ends = accumulate(even_sizes(len(things), parts), initial=0)
    return [things[start:end] for start, end in pairwise(ends)]
