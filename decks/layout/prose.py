"""A text made ready for breaking: its words, how wide they are, and how they are joined."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cached_property
from itertools import pairwise
from math import inf

from decks.layout.joints import HELD, is_lone, joints_of
from decks.layout.runs import Measure, Styled, Word, lines_of, plain, runs_of, width_of, words_of


@dataclass(frozen=True, slots=True)
class Group:
    """Words that stay on one line: those of a text from `start` to before `end`.

    `price` is that of a break after them; `lone` says that they are lost on a line of their own.
    """

    start: int
    end: int
    width: float
    price: float
    lone: bool


@dataclass(frozen=True)
class Prose:
    """One line of a text as the teacher broke it; widths are in ems, whatever the size.

    `joints[n]` says how badly a break reads between word `n` and the next.
    """

    words: tuple[Word, ...]
    widths: tuple[float, ...]
    joints: tuple[float, ...]
    space: float
    strong: bool

    def width(self, start: int, end: int) -> float:
        """Return the width of the words from `start` to before `end` on one line."""
        return sum(self.widths[start:end]) + self.space * (end - start - 1)

    @cached_property
    def groups(self) -> list[Group]:
        """The words that stay together, however wide they are."""
        if not self.words:
            return []
        ends = [n for n, joint in enumerate(self.joints, start=1) if joint < HELD]
        return [self.group(start, end) for start, end in pairwise([0, *ends, len(self.words)])]

    def group(self, start: int, end: int) -> Group:
        """Return the words from `start` to before `end` as a group."""
        price = self.joints[end - 1] if end < len(self.words) else 0
        lone = is_lone(" ".join(plain(word) for word in self.words[start:end]))
        return Group(start, end, self.width(start, end), price, lone)


def prose_of(styled: Styled, measure: Measure) -> tuple[Prose, ...]:
    """Return a text made ready, line by line."""
    space = measure(" ", styled.strong)
    lines = (words_of(runs_of(line)) for line in lines_of(styled))
    return tuple(_prose(words, measure, space, strong=styled.strong) for words in lines)


def _prose(words: Sequence[Word], measure: Measure, space: float, *, strong: bool) -> Prose:
    joints = joints_of([plain(word) for word in words])
    widths = tuple(width_of(word, measure) for word in words)
    return Prose(tuple(words), widths, joints, space, strong)


def groups_of(prose: Prose, column: float, *, whole: float = inf) -> list[Group]:
    """Return what stays together in a column of so many ems.

    A group that is wider than the column parts at its weakest joints, as long as these are weaker
    than `whole`; where a group cannot part, or is one word, it is left wider than the column.
    """
    if all(group.width <= column for group in prose.groups):
        return prose.groups
    return [narrow for group in prose.groups for narrow in _narrowed(prose, group, column, whole)]


def _narrowed(prose: Prose, group: Group, column: float, whole: float) -> Iterator[Group]:
    joints = prose.joints[group.start : group.end - 1]
    weakest = min(joints, default=inf)
    if weakest >= whole or group.width <= column:
        yield group
        return
    ends = [n for n, joint in enumerate(joints, start=group.start + 1) if joint == weakest]
    for start, end in pairwise([group.start, *ends, group.end]):
        yield from _narrowed(prose, prose.group(start, end), column, whole)
