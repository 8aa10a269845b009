"""All the papers of a deck."""

from collections.abc import Iterator, Sequence

from decks.deck import Deck
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.passes import order_of_backs
from decks.layout.stacking import Stack
from decks.press.cards.pages import Leaf, card_leaves
from decks.press.handouts.answers import answer_pages, has_answer_list
from decks.press.handouts.comparing import comparing_pages
from decks.press.handouts.guide import guide_pages, second_pages
from decks.press.handouts.planning import planning_pages
from decks.press.pdf import make_pdf
from decks.press.runs import runs_of
from decks.press.teacher import teacher_pages
from decks.recipe import Flip, Sides


def print_papers(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> dict[str, bytes]:
    """Return the deck's PDFs by file name."""
    papers = _cards(deck, grid, stacks)
    if has_answer_list(deck, grid):
        title = f"{deck.name} · answers"
        papers["answers.pdf"] = _pdf(deck, answer_pages(deck), title)
    for name, title, made in _for_students(deck):
        if made:
            papers[f"{name}.pdf"] = _pdf(deck, made, f"{deck.name} · {title}")
    teacher = teacher_pages(deck, grid, stacks)
    papers["teacher.pdf"] = _pdf(deck, teacher, f"{deck.name} · for the teacher")
    return papers


def _for_students(deck: Deck) -> Iterator[tuple[str, str, list[Frame]]]:
    """Yield what students write on: a file's name, its title and its pages, which may be none."""
    yield "study-guide", "study guide", guide_pages(deck)
    yield "study-guide-more", "study guide", second_pages(deck)
    yield "planning-sheet", "planning sheet", planning_pages(deck, deck.recipe.form)
    yield "comparison", "comparison", comparing_pages(deck)


def _pdf(deck: Deck, pages: Sequence[Frame], title: str, flip: Flip | None = None) -> bytes:
    # teams who do not own the cards are numbered after those who do
    owners = (*deck.owners, *deck.recipe.teams)
    return make_pdf(pages, title=title, owners=owners, ink=deck.recipe.ink, flip=flip)


def _cards(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> dict[str, bytes]:
    """Return the file of cards; two for two passes. Only duplex asks to print both sides."""
    leaves = card_leaves(deck, grid, stacks)
    flip = grid.flip if grid.sides is Sides.DUPLEX else None
    files = {"cards": [page for leaf in leaves for page in (leaf.front, leaf.back) if page]}
    if grid.sides is Sides.TWO_PASSES:
        files = {
            "cards-fronts": [leaf.front for leaf in leaves],
            "cards-backs": _backs(deck, grid, stacks, leaves),
        }
    return {
        f"{name}.pdf": _pdf(deck, pages, f"{deck.name} · {name.replace('-', ': ')}", flip)
        for name, pages in files.items()
    }


def _backs(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...], leaves: Sequence[Leaf]
) -> list[Frame]:
    runs = [leaves[run.first - 1 : run.last] for run in runs_of(deck, grid, stacks)]
    ordered = order_of_backs(runs, deck.recipe.comes_out)
    return [leaf.back for leaf in ordered if leaf.back]
