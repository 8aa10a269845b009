"""The foot of a page: a rule that shows whether it was scaled, and what lies back to back."""

from collections.abc import Iterator, Sequence

from decks.layout.frame import Line, Thing
from decks.layout.grid import Grid
from decks.layout.units import in_mm, mm
from decks.press.cards.leaf_side import FIRST_IN, along_cards, between_corners, first_edge
from decks.press.cards.strips import CLEAR, SMALL_PRINT, Arrow, Note, Words, set_note, width_of_note
from decks.recipe import Sides

RULES = (mm(100), mm(50))
"""The rule is 100 mm long; on paper that is too narrow for it, 50."""
RULE_INDENT = mm(6)
"""Keeps the end of the rule away from the cut mark in the middle of the page."""
RULE_RISE = mm(0.6)
TICK, LONG_TICK = mm(2), mm(3)
HALF_LINE = 0.25
AFTER_RULE = mm(1.2)


def foot(grid: Grid, *, back: bool) -> list[Thing]:
    """Return the foot of a page; no rule where there is no room for even the short one."""
    left, right = between_corners(grid, back=back, head=False)
    start, end = along_cards(grid, back=back, head=False)
    y = grid.page.white.bottom + RULE_RISE
    arrow = _arrow(grid, end - start, back=back)
    arrow_x = end - width_of_note(arrow)
    if arrow:
        right = arrow_x - CLEAR * SMALL_PRINT
    return [
        *_measured(grid, (start + RULE_INDENT, start, left + HALF_LINE), right, y),
        *set_note(arrow, arrow_x, y + 0.5),
    ]


def _measured(grid: Grid, starts: Sequence[float], right: float, y: float) -> list[Thing]:
    """Return the longest rule with the fullest note that ends before `right`."""
    for length, note in _rules(grid):
        for x in starts:
            end = x + length + AFTER_RULE
            if end + width_of_note(note) <= right:
                return [*_rule(x, y, length), *set_note(note, end, y + 0.5)]
    return []


def _arrow(grid: Grid, room: float, *, back: bool) -> Note:
    if grid.sides is not Sides.TWO_PASSES or first_edge(grid, back=back) != (0, -1):
        return []
    notes: list[Note] = [[Arrow(0, -1), Words(f" {words}", strong=True)] for words in FIRST_IN]
    return next((note for note in notes if width_of_note(note) <= room), notes[-1])


def _rules(grid: Grid) -> Iterator[tuple[float, Note]]:
    """Yield how long a rule may be and what is said of it, the best first."""
    for length in RULES:
        measured = f"{in_mm(length):.0f} mm"
        notes = [f"{measured} at full size", measured]
        if grid.two_sided:
            notes.insert(0, f"{notes[0]} · corner marks lie back to back")
        yield from ((length, [Words(note)]) for note in notes)


def _rule(x: float, y: float, length: float) -> list[Line]:
    spaces = round(in_mm(length) / 10)
    ticks = [
        Line(at, y, at, y + (TICK if n % 5 else LONG_TICK))
        for n in range(spaces + 1)
        for at in [x + n * length / spaces]
    ]
    return [Line(x, y, x + length, y), *ticks]
