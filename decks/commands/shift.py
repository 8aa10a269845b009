"""The shift of the backs for a recipe's printer, or what to do where there is none."""

from collections.abc import Mapping

from msgspec import Struct
from msgspec.structs import replace

from cards.content import Content
from cards.finding import Finding, Severity
from cards.place import Place
from cards.quoting import quoted
from decks.commands.naming_printers import hint
from decks.layout.grid import Grid
from decks.lengths import NO_SHIFT, Shift
from decks.printers import Printer, find, read_printers, settings_folder, shift_for
from decks.recipe import Flip, Recipe, Sides
from decks.settings import cell_of


def with_shift(
    recipe: Recipe, grid: Grid, content: Content, options: Mapping[str, str]
) -> tuple[Recipe, tuple[Finding, ...]]:
    """Return the recipe with what its printer's backs are moved by, and what is to be said of it.

    Where no printer is named, or backs are not printed on the other side of the paper, the recipe
    is returned as it is and no file is read. Raises `UnusableFileError` where the printers that
    are kept cannot be read.
    """
    if recipe.printer is None or not grid.two_sided:
        return recipe, ()
    cell = cell_of("printer", content.settings, options)
    asked = _Asked(recipe.printer, grid, cell.place if cell else Place("Printer"))
    shift, findings = asked.shift()
    return replace(recipe, shift=shift), tuple(findings)


class _Asked(Struct, frozen=True):
    """A printer by its name, for a grid, as it was asked for at a place."""

    name: str
    grid: Grid
    place: Place

    def shift(self) -> tuple[Shift, list[Finding]]:
        printers = read_printers(settings_folder())
        printer = find(printers, self.name)
        if printer is None:
            wrong = f"No printer called {quoted(self.name)} is kept."
            mend = hint(printers, self.name)
            return NO_SHIFT, [self._finding("unknown-printer", Severity.ERROR, wrong, mend)]
        if self.grid.whole:
            return NO_SHIFT, [self._not_moved()]
        shift = shift_on_page(printer, self.grid)
        if shift is None:
            return NO_SHIFT, [self._not_measured(printer)]
        by_hand = self.grid.sides is Sides.TWO_PASSES
        return shift, [self._by_hand(printer)] if by_hand else []

    def _not_moved(self) -> Finding:
        return self._finding(
            "whole-card-not-moved",
            Severity.NOTE,
            "A card that fills its paper leaves no room for its back to be moved in.",
            "Nothing needs doing: as it is not cut, the difference does not show.",
        )

    def _not_measured(self, printer: Printer) -> Finding:
        turned, flip = _sent_turned(self.grid), self.grid.flip
        by_hand = self.grid.sides is Sides.TWO_PASSES
        shape, leaf = ("wider than high", 2) if turned else ("higher than wide", 1)
        how = f" flipped on the {flip} edge by hand" if by_hand else ", as these are"
        words = f"fairdeal align{' --flip short' if by_hand and flip is Flip.SHORT else ''}"
        return self._finding(
            "pages-not-measured",
            Severity.WARNING,
            f"The printer {printer.name} was not measured for pages {shape}{how}: the backs are "
            "left where they are.",
            f"Print the page of {words}{' in two passes' if by_hand else ''}, and give what you "
            f"read on leaf {leaf}.",
        )

    def _by_hand(self, printer: Printer) -> Finding:
        return self._finding(
            "measured-by-hand",
            Severity.NOTE,
            f"The numbers of {printer.name} hold for two passes only if its test page was sent "
            "through twice by hand as well.",
            "If it was not, measure once more, under another name.",
        )

    def _finding(self, code: str, severity: Severity, wrong: str, mend: str) -> Finding:
        return Finding(code, severity, self.place, self.name, wrong, mend)


def shift_on_page(printer: Printer, grid: Grid) -> Shift | None:
    """Return a printer's shift in the axes of a page as it is read, or None if not measured.

    Two passes by hand are two fronts to the rollers: along the edge that is flipped on both
    errors add up, and across it they cancel. Nothing follows from one flip for the other then.
    Their pages are all sent upright, those that lie on their side turned to the left, so that the
    right edge is the head: what goes up on the paper goes right on the page, and what goes right
    on the paper goes down on the page.
    """
    if grid.sides is not Sides.TWO_PASSES:
        return shift_for(printer, flip=grid.flip, turned=grid.page.turned)
    if printer.upright is None or printer.upright.flip is not grid.flip:
        return None
    shift = shift_for(printer, flip=grid.flip, turned=False)
    if shift and grid.page.turned:
        return Shift(right=shift.up, up=-shift.right, skew=shift.skew)
    return shift


def _sent_turned(grid: Grid) -> bool:
    return grid.page.turned and grid.sides is not Sides.TWO_PASSES
