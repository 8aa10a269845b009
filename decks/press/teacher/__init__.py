"""The teacher's pages, in the order of use: make it, see that it is fair, check answers."""

from decks.deck import Deck
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.pages import column, page_paper, pages
from decks.press.teacher.fairness import fairness
from decks.press.teacher.keys import card_key, guide_key
from decks.press.teacher.making import making

__all__ = ["teacher_pages"]


def teacher_pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Frame]:
    """Return all of the teacher's pages."""
    paper = page_paper(deck.recipe.paper)
    width = column(paper)
    blocks = [
        *making(deck, grid, stacks, width),
        *(fairness(deck, deck.deal, width) if deck.deal else []),
        *guide_key(deck, width),
        *card_key(deck, width),
    ]
    return pages(blocks, paper, foot=f"{deck.name} · for the teacher")
