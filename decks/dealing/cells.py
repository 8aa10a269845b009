"""Items that are alike in level, topic and kind stand in one cell: dealing counts per cell."""

from collections.abc import Callable, Sequence
from typing import NamedTuple

from msgspec import Struct

from cards.item import Item, Kind, folded

_KINDS = tuple(Kind)


class Cell(NamedTuple):
    """What matters of an item for a fair deal; `topic` is folded, `kind` counts in enum order."""

    level: int
    topic: str
    kind: int


Attribute = Callable[[Cell], object]
Group = tuple[int, ...]  # indexes of cells, rising

# in order of weight: a goal never costs a goal before it anything
GOALS: dict[str, Attribute] = {
    "cards": lambda _cell: "every card",
    "level": lambda cell: cell.level,
    "topic": lambda cell: cell.topic,
    "kind": lambda cell: cell.kind,
}
# not promised, but liked: no team is to get all the hard cards of one topic
LIKED: tuple[Attribute, ...] = (lambda cell: (cell.level, cell.topic), lambda cell: cell)


def cell_of(item: Item) -> Cell:
    """Return the cell that an item stands in."""
    return Cell(int(item.level), folded(item.topic), _KINDS.index(item.kind))


class Table(Struct, frozen=True):
    """What there is to deal: `free[cell]` items, beside `pinned[team][cell]` with a team already.

    The cells are sorted, so that the table does not depend on the order of the rows.
    """

    cells: tuple[Cell, ...]
    free: tuple[int, ...]
    pinned: tuple[tuple[int, ...], ...]

    def merged(self, alike: Callable[[Cell], Cell]) -> "Table":
        """Return the table in which every cell stands for those that it is `alike` of."""
        cells = tuple(sorted({alike(cell) for cell in self.cells}))
        members = [[n for n, cell in enumerate(self.cells) if alike(cell) == one] for one in cells]
        return Table(
            cells,
            tuple(sum(self.free[n] for n in group) for group in members),
            tuple(tuple(sum(row[n] for n in group) for group in members) for row in self.pinned),
        )

    def groups(self, attribute: Attribute) -> tuple[Group, ...]:
        """Return the cells that share a value, for each value of the attribute."""
        found: dict[object, list[int]] = {}
        for index, cell in enumerate(self.cells):
            found.setdefault(attribute(cell), []).append(index)
        return tuple(tuple(group) for group in found.values())


def table_of(items: Sequence[Item], homes: Sequence[int | None], teams: int) -> Table:
    """Count the items per cell; `homes` holds the number of the team that each is pinned to."""
    cells = tuple(sorted({cell_of(item) for item in items}))
    index = {cell: number for number, cell in enumerate(cells)}
    free = [0] * len(cells)
    pinned = [[0] * len(cells) for _ in range(teams)]
    for item, home in zip(items, homes, strict=True):
        row = free if home is None else pinned[home]
        row[index[cell_of(item)]] += 1
    return Table(cells, tuple(free), tuple(tuple(row) for row in pinned))
