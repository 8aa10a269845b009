"""Tables that lie on their side: headings below one another, and the items from left to right."""

from cards.finding import Finding, Severity
from cards.reading.columns import pair_of
from cards.reading.heading_row import Headings
from cards.reading.headings import roles_in
from cards.reading.table import Table

_MOST_ROLES = 8
_SIDES = 2


def lies_on_its_side(table: Table, headings: Headings | None) -> bool:
    """Say whether the first cells of all rows are headings that make a card."""
    if (headings and headings.complete) or not _SIDES <= len(table.rows) <= _MOST_ROLES:
        return False
    firsts = {row.number: next(iter(row.cells.values())) for row in table.rows}
    known = roles_in(firsts)
    widest = max(len(row.cells) for row in table.rows)
    return known.keys() == firsts.keys() and pair_of(known) is not None and widest > _SIDES


def on_its_side(table: Table) -> Finding:
    """Say that a table lies on its side, and how to turn it."""
    first = next(iter(table.rows[0].cells.values()))
    return Finding(
        "table-on-its-side",
        Severity.ERROR,
        first.place,
        first.text,
        "The headings of this sheet stand below one another, and its rows make no cards.",
        "Copy the table and paste it transposed, so that each row is an item.",
    )
