"""Groups that stand within one another or apart: two such families of groups make a flow."""

from collections.abc import Sequence

from decks.dealing.cells import Group

ROOT = -1
_MOST_CELLS = 120


class Nest:
    """A family of groups, no two of which overlap in part.

    `parents` says for each of its groups in which it stands, `deepest[cell]` which is the smallest
    that holds a cell; `ROOT` is no group, and holds all.
    """

    def __init__(self, cells: int) -> None:
        self.parents: dict[int, int] = {}
        self.deepest = [ROOT] * cells

    def takes(self, number: int, group: Group) -> bool:
        """Take a group, no larger than any before it, if it overlaps none of them in part."""
        within = {self.deepest[cell] for cell in group}
        if len(within) > 1:
            return False
        self.parents[number] = within.pop() if within else ROOT
        for cell in group:
            self.deepest[cell] = number
        return True


Nests = tuple[Nest, Nest]


def two_nests(groups: Sequence[Group], cells: int) -> Nests | None:
    """Return two nests that hold every group between them, by its number, or None.

    None as well where there are so many cells that the solver is the quicker way.
    """
    if cells > _MOST_CELLS:
        return None
    nests = Nest(cells), Nest(cells)
    for number in sorted(range(len(groups)), key=lambda n: -len(groups[n])):
        if not any(nest.takes(number, groups[number]) for nest in nests):
            return None
    return nests
