"""The pages of cards: faces in their slots, and round them what printing and cutting need."""

from collections.abc import Iterator

from decks.deck import Card, Deck
from decks.layout.fitting import shorten
from decks.layout.frame import Frame, Line, Placed, Text, Thing, Wedge
from decks.layout.grid import END_MARGIN, SIDE_MARGIN, Grid, Slot
from decks.layout.paper import UNPRINTABLE
from decks.layout.stacking import Stack
from decks.layout.units import mm
from decks.press.faces import Shape, face
from decks.press.fonts import measure
from decks.recipe import Recipe

SMALL_PRINT = 8.5
MARK_GAP = mm(1)
MARK_LENGTH = mm(3.5)
RULE_LENGTH = mm(100)
RULE_INDENT = mm(6)
"""Keeps the end of the rule away from the cut mark in the middle of the page."""
RULE_Y = UNPRINTABLE + mm(0.6)
CORNER = mm(3.5)


def card_pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Frame]:
    """Return all pages: front and back of each leaf in turn, or one page a leaf where folded."""
    shapes = [Shape(grid.card_width, grid.card_height, back=back) for back in (False, True)]
    leaves = list(_leaves(deck, grid, stacks))
    pages = []
    for number, (stack, filled) in enumerate(leaves, start=1):
        where = f"leaf {number} of {len(leaves)}"
        if len(stacks) > 1:
            where = f"stack {stack} of {len(stacks)} · {where}"
        fronts = _side(filled, shapes[0], deck.recipe)
        backs = _side(filled, shapes[1], deck.recipe)
        if grid.folded:
            pages.append(_page(deck, grid, [*fronts, *backs], where, "front and back"))
        else:
            pages.append(_page(deck, grid, fronts, where, "front"))
            pages.append(_page(deck, grid, backs, where, "back"))
    return pages


def loading(grid: Grid) -> str:
    """Return the one line that says how to load, print and flip."""
    start = f"{grid.paper.name} · actual size (100 %)"
    if grid.folded:
        return f"{start} · one side · fold on the dashes, then cut"
    return f"{start} · both sides · flip on the {grid.flip} edge"


def _leaves(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...]
) -> Iterator[tuple[int, list[tuple[Slot, Card]]]]:
    """Yield for each leaf the number of its stack and the cards in its slots."""
    for number, stack in enumerate(stacks, start=1):
        for leaf in range(stack.leaves):
            yield (
                number,
                [
                    (slot, deck.hands[pile.team][pile.first + leaf])
                    for slot, pile in zip(grid.slots, stack.piles, strict=False)
                    if pile.first + leaf < pile.end
                ],
            )


def _side(filled: list[tuple[Slot, Card]], shape: Shape, recipe: Recipe) -> list[Placed]:
    placed = []
    for slot, card in filled:
        spot = slot.back if shape.back else slot.front
        placed.append(Placed(spot.x, spot.y, face(card, shape, recipe), spot.half_turn))
    return placed


def _page(deck: Deck, grid: Grid, faces: list[Placed], where: str, side: str) -> Frame:
    things: list[Thing] = [
        *_header(deck.name, f"{where} · {side}", grid),
        *_marks(grid),
        *_check_rule(grid),
        *faces,
    ]
    if not grid.folded:
        things.append(_corner(grid, back=side == "back"))
    return Frame(grid.width, grid.height, tuple(things))


def _header(name: str, where: str, grid: Grid) -> tuple[Text, Text]:
    y = grid.height - UNPRINTABLE - 0.95 * SMALL_PRINT
    right = loading(grid)
    room = (grid.width - 2 * SIDE_MARGIN) / SMALL_PRINT - measure(right) - 2
    left = f"{shorten(name, room - measure(f' · {where}'), measure=measure)} · {where}"
    right_x = grid.width - SIDE_MARGIN - measure(right) * SMALL_PRINT
    return (
        Text(SIDE_MARGIN, y, left, SMALL_PRINT, tone="quiet"),
        Text(right_x, y, right, SMALL_PRINT, tone="quiet"),
    )


def _marks(grid: Grid) -> list[Line]:
    """Return the marks at the ends of every line: solid to cut, dashed to fold; none on a card."""
    near, far = MARK_GAP, MARK_GAP + MARK_LENGTH
    marks = []
    for x in grid.upright_lines:
        dashed = x in grid.upright_folds
        for end, away in ((grid.height - END_MARGIN, 1), (END_MARGIN, -1)):
            marks.append(Line(x, end + away * near, x, end + away * far, dashed=dashed))
    for y in grid.level_lines:
        dashed = y in grid.level_folds
        for end, away in ((grid.width - SIDE_MARGIN, 1), (SIDE_MARGIN, -1)):
            marks.append(Line(end + away * near, y, end + away * far, y, dashed=dashed))
    return marks


def _check_rule(grid: Grid) -> list[Thing]:
    x, y = SIDE_MARGIN + RULE_INDENT, RULE_Y
    ticks = [
        Line(x + n * RULE_LENGTH / 10, y, x + n * RULE_LENGTH / 10, y + mm(2 if n % 5 else 3))
        for n in range(11)
    ]
    words = "100 mm at full size"
    if not grid.folded:
        words += " · corner marks lie back to back"
    note = Text(x + RULE_LENGTH + mm(3), y + 0.5, words, SMALL_PRINT, tone="quiet")
    return [Line(x, y, x + RULE_LENGTH, y), *ticks, note]


def _corner(grid: Grid, *, back: bool) -> Wedge:
    """Return the mark in one corner; after a wrong flip it lies behind the opposite corner."""
    x, y = grid.width - UNPRINTABLE - mm(0.5), UNPRINTABLE + mm(0.5)
    points = ((x, y), (x - CORNER, y), (x, y + CORNER))
    if back:
        points = tuple(grid.turning.point(*point) for point in points)  # type: ignore[assignment]
    return Wedge(points)
