"""All the papers of a deck."""

from collections.abc import Iterator, Sequence

from decks.deck import Deck
from decks.languages import ENGLISH
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.cards.files import card_files
from decks.press.handouts.answers import answer_pages, has_answer_list
from decks.press.handouts.comparing import comparing_pages
from decks.press.handouts.guide import guide_pages, second_pages
from decks.press.handouts.planning import planning_pages
from decks.press.pdf import make_pdf
from decks.press.teacher import teacher_pages
from decks.steps import Tell


def print_papers(deck: Deck, grid: Grid, stacks: tuple[Stack, ...], tell: Tell) -> dict[str, bytes]:
    """Return the deck's PDFs by file name; `tell` is called with each step."""
    papers, language = card_files(deck, grid, stacks, tell), deck.recipe.language
    tell("Drawing what students write on")
    if has_answer_list(deck, grid):
        title = f"{deck.name} · answers"
        papers["answers.pdf"] = _pdf(deck, answer_pages(deck), title, language)
    for name, title, made in _for_students(deck):
        if made:
            papers[f"{name}.pdf"] = _pdf(deck, made, f"{deck.name} · {title}", language)
    tell("Drawing the teacher’s pages")
    teacher = teacher_pages(deck, grid, stacks)
    papers["teacher.pdf"] = _pdf(deck, teacher, f"{deck.name} · for the teacher", ENGLISH)
    return papers


def _for_students(deck: Deck) -> Iterator[tuple[str, str, list[Frame]]]:
    """Yield what students write on: a file's name, its title and its pages, which may be none."""
    yield "study-guide", "study guide", guide_pages(deck)
    yield "study-guide-more", "study guide", second_pages(deck)
    yield "planning-sheet", "planning sheet", planning_pages(deck)
    yield "comparison", "comparison", comparing_pages(deck)


def _pdf(deck: Deck, pages: Sequence[Frame], title: str, language: str) -> bytes:
    # teams who do not own the cards are numbered after those who do
    owners = (*deck.owners, *deck.recipe.teams)
    return make_pdf(pages, title=title, language=language, owners=owners, ink=deck.recipe.ink)
