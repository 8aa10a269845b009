"""A program in whole numbers: unknowns, bounds on their sums, and a cost to make small."""

import math
from collections.abc import Iterable

from msgspec import Struct, field

INFINITY = float("inf")


class Program(Struct):
    """Unknowns (columns) and bounds on their sums (rows), added one by one."""

    cost: list[float] = field(default_factory=list)
    lower: list[float] = field(default_factory=list)
    upper: list[float] = field(default_factory=list)
    row_lower: list[float] = field(default_factory=list)
    row_upper: list[float] = field(default_factory=list)
    row_start: list[int] = field(default_factory=lambda: [0])
    row_column: list[int] = field(default_factory=list)
    row_factor: list[float] = field(default_factory=list)

    def column(self, lower: float = 0, upper: float = INFINITY, *, cost: float = 0) -> int:
        """Add an unknown whole number and return its column."""
        self.cost.append(cost)
        self.lower.append(lower)
        self.upper.append(upper)
        return len(self.cost) - 1

    def row(self, lower: float, upper: float, terms: Iterable[tuple[int, float]]) -> None:
        """Demand that the sum of factor times unknown, over (column, factor), lies in bounds."""
        for column, factor in terms:
            self.row_column.append(column)
            self.row_factor.append(factor)
        self.row_start.append(len(self.row_column))
        self.row_lower.append(lower)
        self.row_upper.append(upper)


class Outcome(Struct, frozen=True):
    """What the solver found: the unknowns' `values`, or None, and a `bound` on the least cost."""

    values: tuple[int, ...] | None
    bound: float

    @property
    def least(self) -> int:
        """The least that the cost can be, where it is a whole number; 0 if no bound is known."""
        # the solver's tolerance must not lift a bound over a whole number
        return max(0, math.ceil(self.bound - 1e-6)) if math.isfinite(self.bound) else 0
