"""The cut plan: a small leaf from above that says whose pile lies where."""

from decks.deck import Deck
from decks.layout.fitting import shorten
from decks.layout.frame import Box, Frame, Placed, Ribbon, Thing
from decks.layout.grid import Grid, Slot
from decks.layout.stacking import Pile, Stack
from decks.press.fonts import measure
from decks.press.type import NOTE, Style, line_of, paragraph, under_one_another

LONG_EDGE = 165.0
LONG_EDGE_OF_SEVERAL = 140.0
NAME = Style(8.5)
LABELS = Style(8.5, tone="quiet")


def cut_plan(deck: Deck, grid: Grid, stack: Stack, *, title: str) -> Frame:
    """Return the drawing of one stack's leaf; an empty title is left out."""
    longest = LONG_EDGE_OF_SEVERAL if title else LONG_EDGE
    scale = longest / max(grid.width, grid.height)
    page = Box(0, 0, grid.width * scale, grid.height * scale, radius=2, stroke="frame")
    piles: list[Thing] = []
    for slot, pile in zip(grid.slots, stack.piles, strict=False):
        x, y, width, height = (length * scale for length in _extent(grid, slot))
        piles.append(Placed(x, y, _pile(deck, pile, width, height)))
    drawing = Frame(page.width, page.height, (page, *piles))
    if not title:
        return drawing
    return under_one_another([paragraph(title, page.width, NOTE), drawing], gap=3)


def _extent(grid: Grid, slot: Slot) -> tuple[float, float, float, float]:
    """Return where a card lies before it is folded: left, bottom, width and height."""
    spots = (slot.front, slot.back) if grid.folded else (slot.front,)
    left, bottom = min(spot.x for spot in spots), min(spot.y for spot in spots)
    right = max(spot.x for spot in spots) + grid.card_width
    top = max(spot.y for spot in spots) + grid.card_height
    return left, bottom, right - left, top - bottom


def _pile(deck: Deck, pile: Pile, width: float, height: float) -> Frame:
    hand = deck.hands[pile.team]
    first, last = hand[pile.first].label, hand[pile.end - 1].label
    labels = first if first == last else f"{first}–{last}"
    name = shorten(deck.recipe.teams[pile.team].name, (width - 14) / NAME.size, measure=measure)
    return Frame(
        width,
        height,
        (
            Box(0, 0, width, height, stroke="hairline"),
            Ribbon(3, 3, 6, height - 6, pile.team),
            line_of(name, NAME, x=12, y=height / 2 + 1.5),
            line_of(labels, LABELS, x=12, y=height / 2 - 9),
        ),
    )
