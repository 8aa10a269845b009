"""All the papers of a deck."""

from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.cards import card_pages
from decks.press.guide import guide_pages
from decks.press.pdf import make_pdf
from decks.press.teacher import teacher_pages


def print_papers(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> dict[str, bytes]:
    """Return the deck's PDFs by file name."""
    recipe = deck.recipe
    flip = None if grid.folded else recipe.flip
    papers = {
        "cards.pdf": make_pdf(
            card_pages(deck, grid, stacks), recipe, title=f"{deck.name} · cards", flip=flip
        )
    }
    guide = guide_pages(deck)
    if guide:
        papers["study-guide.pdf"] = make_pdf(guide, recipe, title=f"{deck.name} · study guide")
    teacher = teacher_pages(deck, grid, stacks)
    papers["teacher.pdf"] = make_pdf(teacher, recipe, title=f"{deck.name} · for the teacher")
    return papers
