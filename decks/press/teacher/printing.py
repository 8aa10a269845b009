"""How to print the deck and see that it came out right, for every way that a card gets its back."""

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.lengths import Shift
from decks.press.runs import Run, runs_of
from decks.press.teacher.step import Shown, Step
from decks.recipe import ComesOut, Flip, Ink, Recipe, Sides
from decks.words import counted

FULL_SIZE = "at actual size (100 %)"
RULE = "The rule at its foot is as long as is written there; if not, the page was scaled."
TO_THE_LIGHT = "Hold it to the light: the two corner marks lie back to back."
WEIGHTS = {
    Sides.DUPLEX: "as heavy as the printer’s handbook allows for printing on both sides",
    Sides.TWO_PASSES: "as heavy as the hand-feed tray takes",
}
SMALLEST_MOVE = 0.05


def printing_steps(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Step]:
    """Return the steps from loading the printer to leaves that are printed and right."""
    runs = runs_of(deck, grid, stacks)
    if grid.sides is Sides.TWO_PASSES:
        return _two_passes(deck.recipe, grid, runs)
    return [_print(deck.recipe, grid, runs), _check(grid)]


def _print(recipe: Recipe, grid: Grid, runs: list[Run]) -> Step:
    text = f"{_load(grid, runs)} {_job('cards.pdf', grid.sides, grid.flip)}."
    if grid.sides is Sides.DUPLEX:
        text = f"{text} {_measured(recipe)}".strip()
    return Step("Print", text, _shown(runs))


def _load(grid: Grid, runs: list[Run]) -> str:
    weight = WEIGHTS.get(grid.sides, "")
    if len(runs) > 1:
        end = f" Take paper {weight}." if weight else ""
        start = "Take steps 2 to 4 for" if grid.sides is Sides.TWO_PASSES else "Do this for"
        return f"{start} one colour after another: load its sheets, print its pages.{end}"
    (run,) = runs
    paper = f"{run.paper} {grid.paper.name}" if run.paper else grid.paper.name
    start = f"Load {counted(run.sheets, 'sheet')} of {paper}"
    return f"{start}, {weight}." if weight else f"{start}."


def _job(file: str, sides: Sides, flip: Flip) -> str:
    if sides is Sides.DUPLEX:
        return f"Print {file} {FULL_SIZE}, both sides, flip on the {flip} edge"
    return f"Print {file} {FULL_SIZE}, on one side only"


def _shown(runs: list[Run]) -> Shown:
    return Shown.LOADS if len(runs) > 1 else Shown.NOTHING


def _check(grid: Grid) -> Step:
    """Say how to see on the first leaf whether all is well."""
    if not grid.two_sided:
        return Step("Check the first leaf", f"{RULE} Set the scale to 100 % and print again.")
    text = (
        f"{RULE} {TO_THE_LIGHT} If they lie in opposite corners, choose the other flip edge and "
        "print again."
    )
    return Step("Check the first leaf", text)


def _two_passes(recipe: Recipe, grid: Grid, runs: list[Run]) -> list[Step]:
    up = recipe.comes_out is ComesOut.FACE_UP
    fronts = _job("cards-fronts.pdf", grid.sides, grid.flip)
    return [
        _trial(recipe, runs[0]),
        Step("Print the fronts", f"{_load(grid, runs)} {fronts}.", _shown(runs)),
        Step("Put the pile in again", _turned_over() if up else _as_it_lies()),
        Step("Print the backs", _backs(recipe, grid, runs[0])),
    ]


def _trial(recipe: Recipe, run: Run) -> Step:
    """Say how to see with one sheet that the backs will lie behind their fronts."""
    up = recipe.comes_out is ComesOut.FACE_UP
    other = ComesOut.FACE_DOWN if up else ComesOut.FACE_UP
    back = run.first if up else run.last
    text = (
        "Take steps 2 to 4 with one sheet: page 1 of cards-fronts.pdf, then page "
        f"{back} of cards-backs.pdf. {RULE} {TO_THE_LIGHT} If they lie in opposite corners, the "
        "other edge has to go in first, against the arrow. If the back is printed over the front, "
        f"your tray prints the underside: build again with Comes out set to {other}."
    )
    return Step("Try it with one sheet", text)


def _as_it_lies() -> str:
    return (
        "Lift the pile out as it lies, printed side down. Do not turn it over, do not sort it. Lay "
        f"it in the hand-feed tray, blank side up. {_arrow()}"
    )


def _turned_over() -> str:
    return (
        "Lift the pile out as it lies, printed side up, and turn the whole pile over. Do not sort "
        f"it. Lay it in the hand-feed tray, blank side up. {_arrow()}"
    )


def _arrow() -> str:
    return (
        "The arrow on the printed side points to the edge that goes in first. Let ink dry first. "
        "Where the tray takes fewer sheets, feed from the top of the pile."
    )


def _backs(recipe: Recipe, grid: Grid, run: Run) -> str:
    up = recipe.comes_out is ComesOut.FACE_UP
    end = "Turn the finished pile over: the first leaf" if up else "The first leaf"
    sentences = [
        f"{_job('cards-backs.pdf', grid.sides, grid.flip)}, from the hand-feed tray.",
        _order(recipe, run, up=up),
        f"{end} lies on top now, front up.",
        _measured(recipe),
    ]
    return " ".join(filter(None, sentences))


def _order(recipe: Recipe, run: Run, *, up: bool) -> str:
    """Say why the file of backs begins where it does, so that nobody puts it right."""
    if recipe.ink is Ink.STOCK:
        return "Print the pages with the same numbers: they are in the order needed."
    leaf = 1 if up else run.sheets
    return f"It begins with leaf {leaf}, which lies on top: choose no other order."


def _measured(recipe: Recipe) -> str:
    """Say which printer the backs were moved for, and how far."""
    if recipe.printer is None:
        return ""
    return f"Made for the printer “{recipe.printer}”: {_moved(recipe.shift)}."


def _moved(shift: Shift) -> str:
    ways = [
        _way(shift.right, "right", "left"),
        _way(shift.up, "up", "down"),
    ]
    moved = " and ".join(filter(None, ways))
    told = f"backs moved {moved}" if moved else "backs not moved"
    if abs(shift.skew) < SMALLEST_MOVE:
        return told
    return f"{told}, the head {_way(shift.skew, 'right', 'left')} of the foot"


def _way(length: float, positive: str, negative: str) -> str:
    if abs(length) < SMALLEST_MOVE:
        return ""
    return f"{abs(length):.1f} mm {positive if length > 0 else negative}"
