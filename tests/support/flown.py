"""Blocks of the teacher's pages as texts and pages, before any PDF."""

from decks.layout.frame import Frame, Placed
from decks.press.type.pages import BOTTOM, column, page_paper, pages


def things(frame, kind, x=0.0, y=0.0):
    """Yield everything of a kind on a frame with its place; turned frames as if they were not."""
    for thing in frame.things:
        if isinstance(thing, Placed):
            yield from things(thing.frame, kind, x + thing.x, y + thing.y)
        elif isinstance(thing, kind):
            yield thing, x + thing.x, y + thing.y


def flown(deck, blocks_of) -> list[Frame]:
    """Return the pages of a chapter on the deck's paper."""
    paper = page_paper(deck.recipe.paper)
    return pages(blocks_of(column(paper)), paper, foot=("foot",))


def is_on_page(frame: Frame) -> bool:
    """Say whether all that a page's chapters hold stands above its foot."""
    return all(placed.y >= BOTTOM for placed in frame.things if isinstance(placed, Placed))
