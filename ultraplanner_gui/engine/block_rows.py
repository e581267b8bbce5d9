"""A linear programme with whole-number columns, put together column by column and row by row."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass, field

INFINITE = float("inf")
Term = tuple[int, float]


@dataclass(slots=True)
class Rows:
    """Minimise the cost over columns within their bounds, every row within its own."""

    cost: list[float] = field(default_factory=list)
    least: list[float] = field(default_factory=list)
    most: list[float] = field(default_factory=list)
    is_whole: list[bool] = field(default_factory=list)
    row_least: list[float] = field(default_factory=list)
    row_most: list[float] = field(default_factory=list)
    starts: list[int] = field(default_factory=list)
    columns: list[int] = field(default_factory=list)
    factors: list[float] = field(default_factory=list)
    constant: float = 0.0

    def column(
        self, least: float = 0.0, most: float = INFINITE, cost: float = 0.0, *, whole: bool = False
    ) -> int:
        """Add a column and return its number."""
        self.cost.append(cost)
        self.least.append(least)
        self.most.append(most)
        self.is_whole.append(whole)
        return len(self.cost) - 1

    def choice(self, cost: float = 0.0) -> int:
        """Add a column that is 0 or 1 and return its number."""
        return self.column(0.0, 1.0, cost, whole=True)

    def row(self, terms: Iterable[Term], least: float = -INFINITE, most: float = INFINITE) -> None:
        """Ask that the sum of *terms* (column, factor) lies between *least* and *most*."""
        self.starts.append(len(self.columns))
        self.row_least.append(least)
        self.row_most.append(most)
        for column, factor in _merged(terms):
            self.columns.append(column)
            self.factors.append(factor)

    def equal(self, terms: Iterable[Term], value: float = 0.0) -> None:
        """Ask that the sum of *terms* is *value*."""
        self.row(terms, value, value)

    def distance_cost(
        self, terms: Iterable[Term], target: float, cost: float, band: float = 0.0
    ) -> None:
        """Charge *cost* for every unit the sum of *terms* is more than *band* off *target*."""
        over, under = self.column(cost=cost), self.column(cost=cost)
        self.row([*terms, (over, -1.0), (under, 1.0)], target - band, target + band)

    def shortfall(self, terms: Iterable[Term], target: float, cost: float) -> int:
        """Charge *cost* for every unit the sum of *terms* stays under *target*; return the column
        that holds by how much.
        """
        short = self.column(cost=cost)
        self.row([*terms, (short, 1.0)], least=target)
        return short

    def excess(self, terms: Iterable[Term], target: float, cost: float) -> int:
        """Charge *cost* for every unit the sum of *terms* goes over *target*; return the column
        that holds by how much.
        """
        over = self.column(cost=cost)
        self.row([*terms, (over, -1.0)], most=target)
        return over


def _merged(terms: Iterable[Term]) -> list[Term]:
    sums: dict[int, float] = {}
    for column, factor in terms:
        sums[column] = sums.get(column, 0.0) + factor
    return [(column, factor) for column, factor in sums.items() if factor]
