"""What was written down of a lesson, once it is read and found sound."""

from msgspec import Struct

from cards.finding import Finding
from decks.marks.matrix import Mark


class Count(Struct, frozen=True):
    """How often an item was tried and was right, in one row; `item` is the item's key."""

    item: str
    right: int
    tries: int


class MarkedGuide(Struct, frozen=True):
    """The papers of a guide: `items` are the keys of its blanks in their order.

    A paper has a mark, or None, for each blank; papers without any mark are left out.
    """

    team: str | None
    items: tuple[str, ...]
    papers: tuple[tuple[Mark, ...], ...]


class Marks(Struct, frozen=True):
    """What a class got right: the tally, the marked guides, and what was found in reading them.

    Nothing tells whose a paper is.
    """

    counts: tuple[Count, ...] = ()
    guides: tuple[MarkedGuide, ...] = ()
    findings: tuple[Finding, ...] = ()

    @property
    def is_empty(self) -> bool:
        """Whether nothing was written down that can be used."""
        return not any(count.tries for count in self.counts) and not self.guides

    @property
    def by_item(self) -> dict[str, tuple[int, int]]:
        """For each item's key, sorted: how often right, and how often tried."""
        sums: dict[str, tuple[int, int]] = {}
        for count in self.counts:
            _add(sums, count.item, count.right, count.tries)
        for guide in self.guides:
            for paper in guide.papers:
                for item, mark in zip(guide.items, paper, strict=True):
                    if mark is not None:
                        _add(sums, item, mark, 1)
        return dict(sorted(sums.items()))


def _add(sums: dict[str, tuple[int, int]], item: str, right: int, tries: int) -> None:
    before = sums.get(item, (0, 0))
    sums[item] = (before[0] + right, before[1] + tries)
