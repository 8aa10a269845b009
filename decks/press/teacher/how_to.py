"""The page from which the lesson is run: made ready on top, then step by step."""

from decks.deck import Deck
from decks.layout.flow import Block, height_of
from decks.layout.frame import Box, Frame, Placed
from decks.press.teacher import steps
from decks.press.teacher.how import Part, Play, play_of
from decks.press.teacher.how.counts import class_told
from decks.press.teacher.keys import title_block
from decks.press.type.pages import BOTTOM, TOP, page_paper
from decks.press.type.setting import (
    STRONG,
    Style,
    panel,
    paragraph,
    ruled,
    side_by_side,
    under_one_another,
)

SIZES = (11.0, 10.5, 10.0, 9.5, 9.0)
"""The page is set at the first of these sizes at which it is one page."""

GAP = 20.0
NUMBER = 20.0
TITLE = 104.0
TICK = 8.0
HANGING = 16.0
LEFT = 0.44
AIR = 4.0
STEP = 6.0


def how_to(deck: Deck, width: float) -> list[Block]:
    """Return the page that says how to run the lesson; it is one page."""
    play = play_of(deck)
    room = page_paper(deck.recipe.paper).height - TOP - BOTTOM
    ways = (_page(deck, play, width, size) for size in SIZES)
    return next((blocks for blocks in ways if _height(blocks) <= room), _page(deck, play, width, 9))


def _height(blocks: list[Block]) -> float:
    return height_of(blocks[1:]) + blocks[0].frame.height


def _page(deck: Deck, play: Play, width: float, size: float) -> list[Block]:
    subtitle = f"{play.name} · {class_told(deck)} · {play.lasts}"
    caution = Block(panel("Before anyone moves", steps.MOVING, width), space=10)
    rows = [
        Block(_step(n + 1, part, width, size), space=STEP if n in {0, play.moving} else 0)
        for n, part in enumerate(play.steps)
    ]
    rows.insert(play.moving, caution)
    return [
        title_block("How to run it", subtitle, width),
        Block(_ready(play, width, size), space=14),
        *rows,
        Block(_asides(play, width, size), space=14),
    ]


def _ready(play: Play, width: float, size: float) -> Frame:
    """Return what is needed beside what is made ready, each to be ticked."""
    left = LEFT * (width - GAP)
    right = width - GAP - left
    return side_by_side(
        [
            (0, _list("You need", play.needs, left, size)),
            (left + GAP, _list("Set up", play.setting, right, size)),
        ],
        width,
    )


def _list(title: str, entries: tuple[str, ...], width: float, size: float) -> Frame:
    rows = [_to_tick(entry, width, size) for entry in entries]
    return under_one_another([paragraph(title, width, STRONG), *rows], gap=AIR)


def _to_tick(entry: str, width: float, size: float) -> Frame:
    words = paragraph(entry, width - HANGING, Style(size))
    box = Box(0, words.height - size + 1, TICK, TICK, radius=1.5, stroke="rule")
    return Frame(width, words.height, (box, Placed(HANGING, 0, words)))


def _step(number: int, part: Part, width: float, size: float) -> Frame:
    """Return a step as a row: its number, what it is called, and how it is done."""
    strong = Style(size, strong=True)
    cells = [
        (0.0, paragraph(str(number), NUMBER, Style(size, strong=True, tone="quiet"))),
        (NUMBER, paragraph(part.title, TITLE - NUMBER - AIR, strong)),
        (TITLE, paragraph(part.text, width - TITLE, Style(size))),
    ]
    return ruled(side_by_side(cells, width, above=AIR, below=AIR))


def _asides(play: Play, width: float, size: float) -> Frame:
    each = (width + GAP) / len(play.asides)
    cells = [(n * each, _aside(part, each - GAP, size - 0.5)) for n, part in enumerate(play.asides)]
    return side_by_side(cells, width)


def _aside(part: Part, width: float, size: float) -> Frame:
    return under_one_another(
        [paragraph(part.title, width, STRONG), paragraph(part.text, width, Style(size))], gap=2
    )
