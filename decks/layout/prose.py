"""A text made ready for breaking: its words, how wide they are, and how they are joined."""

from collections.abc import Iterator, Sequence
from functools import cached_property, lru_cache
from itertools import accumulate, pairwise, takewhile
from math import ceil, inf
from typing import NamedTuple, Self

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.balance import HAIR
from decks.layout.joints import HELD, is_lone, joints_of
from decks.layout.runs import (
    Line,
    Measure,
    Run,
    Styled,
    Word,
    lines_of,
    plain,
    runs_of,
    set_line,
    width_of,
    words_of,
)


class Group(NamedTuple):
    """Words that stay on one line: those of a text from `start` to before `end`.

    `price` is that of a break after them.
    """

    start: int
    end: int
    width: float
    price: float


class Prose(Struct, frozen=True, dict=True):
    """One line of a text as the teacher broke it; widths are in ems, whatever the size.

    `texts` are the letters of its words, which are all set alike where it is of `one_style`;
    `widest` is the width of its widest word, `whole` that of all words on one line; `given` are its
    joints where they were worked out before.
    """

    words: tuple[Word, ...]
    texts: tuple[str, ...]
    widths: tuple[float, ...]
    space: float
    strong: bool
    one_style: bool
    widest: float
    whole: float
    given: tuple[float, ...] | None = None

    @classmethod
    def of(
        cls,
        words: tuple[Word, ...],
        measure: Measure,
        *,
        strong: bool,
        joints: tuple[float, ...] | None = None,
    ) -> Self:
        """Return words made ready."""
        texts = tuple([plain(word) for word in words])
        one_style = all(len(word) == 1 and not word[0].style for word in words)
        if one_style:
            widths = tuple([measure(text, strong) for text in texts])
        else:
            widths = tuple([width_of(word, measure) for word in words])
        space = measure(" ", strong)
        widest, whole = max(widths, default=0), sum(widths) + space * max(len(widths) - 1, 0)
        return cls(words, texts, widths, space, strong, one_style, widest, whole, joints)

    def width(self, start: int, end: int) -> float:
        """Return the width of the words from `start` to before `end` on one line."""
        return sum(self.widths[start:end]) + self.space * (end - start - 1)

    def line(self, start: int, end: int) -> Line:
        """Return the words from `start` to before `end` as a line."""
        if self.one_style:
            return (Run(" ".join(self.texts[start:end]), self.strong),) if start < end else ()
        return set_line(self.words[start:end], strong=self.strong)

    def up_to(self, width: float) -> Self:
        """Return the first words, which with a blank after each take no more than a width."""
        ends = accumulate(word + self.space for word in self.widths)
        count = sum(1 for _ in takewhile(lambda end: end <= width + HAIR, ends))
        if count == len(self.words):
            return self
        widths = self.widths[:count]
        return replace(
            self,
            words=self.words[:count],
            texts=self.texts[:count],
            widths=widths,
            widest=max(widths, default=0),
            whole=self.width(0, count),
            given=None,
        )

    @cached_property
    def joints(self) -> tuple[float, ...]:
        """How badly a break reads between word `n` and the next."""
        if self.given is not None:
            return self.given
        return joints_of(self.texts)

    @cached_property
    def groups(self) -> list[Group]:
        """The words that stay together, however wide they are."""
        if not self.words:
            return []
        if max(self.joints, default=0) < HELD:
            each = enumerate(zip(self.widths, (*self.joints, 0.0), strict=True))
            return [Group(n, n + 1, width, price) for n, (width, price) in each]
        ends = [n for n, joint in enumerate(self.joints, start=1) if joint < HELD]
        return [self.group(start, end) for start, end in pairwise([0, *ends, len(self.words)])]

    @cached_property
    def group_widths(self) -> list[float]:
        """The widths of the words that stay together."""
        return [group.width for group in self.groups]

    def group(self, start: int, end: int) -> Group:
        """Return the words from `start` to before `end` as a group."""
        price = self.joints[end - 1] if end < len(self.words) else 0
        return Group(start, end, self.width(start, end), price)

    def is_lone(self, group: Group) -> bool:
        """Return whether the words of a group are lost on a line of their own."""
        if group.end == group.start + 1:
            return is_lone(self.texts[group.start])
        return is_lone(" ".join(self.texts[group.start : group.end]))

    def least_lines(self, column: float) -> float:
        """Return a number of lines that a column of so many ems takes at the least.

        It is found at once, and is infinite where a word is wider than the column.
        """
        if self.widest > column:
            return inf
        return max(ceil((self.whole + self.space) / (column + self.space) - HAIR), 1)


@lru_cache(maxsize=4096)
def prose_of(styled: Styled, measure: Measure) -> tuple[Prose, ...]:
    """Return a text made ready, line by line."""
    return tuple(
        Prose.of(tuple(words_of(runs_of(line))), measure, strong=line.strong)
        for line in lines_of(styled)
    )


def groups_of(prose: Prose, column: float, *, whole: float = inf) -> list[Group]:
    """Return what stays together in a column of so many ems.

    A group that is wider than the column parts at its weakest joints, as long as these are weaker
    than `whole`; where a group cannot part, or is one word, it is left wider than the column.
    """
    if max(prose.group_widths, default=0) <= column:
        return prose.groups
    return [narrow for group in prose.groups for narrow in _narrowed(prose, group, column, whole)]


def _narrowed(prose: Prose, group: Group, column: float, whole: float) -> Iterator[Group]:
    joints: Sequence[float] = prose.joints[group.start : group.end - 1]
    weakest = min(joints, default=inf)
    if weakest >= whole or group.width <= column:
        yield group
        return
    ends = [n for n, joint in enumerate(joints, start=group.start + 1) if joint == weakest]
    for start, end in pairwise([group.start, *ends, group.end]):
        yield from _narrowed(prose, prose.group(start, end), column, whole)
