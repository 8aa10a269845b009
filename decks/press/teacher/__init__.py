"""The teacher's pages, in the order of use: make it, run it, score it, check it, keep it."""

from collections.abc import Iterator, Sequence
from itertools import accumulate

from msgspec import Struct
from msgspec.structs import replace

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.paper import Paper
from decks.layout.stacking import Stack
from decks.lesson import Bases, Called, Telling
from decks.press.teacher.bases import base_plan, set_list
from decks.press.teacher.calling import call_sheet
from decks.press.teacher.checking_grid import checking_grid
from decks.press.teacher.fairness import fairness
from decks.press.teacher.how_to import how_to
from decks.press.teacher.keeping import keeping
from decks.press.teacher.keys import card_key, guide_key
from decks.press.teacher.making import making
from decks.press.teacher.organizing import organizing_key
from decks.press.teacher.rotation import rotation
from decks.press.teacher.score import score_sheet
from decks.press.teacher.seats import seats
from decks.press.teacher.setting_up import reckoning
from decks.press.type.pages import column, foot_of, page_paper, pages
from decks.recipe import Activity, Dealing

__all__ = ["teacher_pages"]


class Chapter(Struct, frozen=True):
    """Some pages of the file, and what they are called where its contents are told."""

    name: str
    blocks: Sequence[Block]


def teacher_pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Frame]:
    """Return all of the teacher's pages."""
    paper = page_paper(deck.recipe.paper)
    width = column(paper)
    chapters = [chapter for chapter in _chapters(deck, width) if chapter.blocks]
    made = making(deck, grid, stacks, width)
    # what is told of the other chapters takes room itself
    for _again in range(2):
        contents = _contents([Chapter("make it", made), *chapters], paper)
        made = making(deck, grid, stacks, width, contents=contents)
    blocks = [*made, *(block for chapter in chapters for block in _on_a_new_page(chapter))]
    return pages(blocks, paper, foot=foot_of(deck, "for the teacher"))


def _chapters(deck: Deck, width: float) -> Iterator[Chapter]:
    """Yield what follows the page that says how to make the deck, in the order of use."""
    if deck.plan:
        from decks.press.teacher.changes import changes  # noqa: PLC0415 (not for a first deck)

        yield Chapter("what is new", changes(deck, deck.plan, width))
    yield Chapter("run it", how_to(deck, width))
    yield from _lesson(deck, width)
    yield Chapter("study guide answers", guide_key(deck, width))
    if not isinstance(deck.lesson, Bases | Telling):
        yield Chapter("card answers", card_key(deck, width))
    if deck.deal and deck.recipe.deal is Dealing.SHARES and len(deck.owners) > 1:
        yield Chapter("how fair it is", fairness(deck, deck.deal, width))
    yield Chapter("keep it", keeping(deck, width))


def _lesson(deck: Deck, width: float) -> Iterator[Chapter]:
    """Yield what an activity needs besides: to set up, to run and to score."""
    lesson = deck.lesson
    if deck.recipe.activity is Activity.COLLECT:
        yield Chapter("enough words?", reckoning(deck, width))
    if isinstance(lesson, Called):
        yield Chapter("call sheet", call_sheet(deck, lesson, width))
        yield Chapter("seats", seats(deck, width))
        yield Chapter("score sheet", score_sheet(deck, lesson, width))
    if isinstance(lesson, Bases):
        yield Chapter("base plan", base_plan(deck, lesson, width))
        yield Chapter("rotation", rotation(deck, lesson, width))
        yield Chapter("set list", set_list(deck, lesson, width))
    if isinstance(lesson, Telling):
        yield Chapter("checking grid", checking_grid(deck, lesson, width))
        yield Chapter("detail answers", organizing_key(deck, lesson, width))


def _contents(chapters: Sequence[Chapter], paper: Paper) -> str:
    """Return what is on which page; every chapter begins a page."""
    lengths = [len(pages(chapter.blocks, paper, foot=())) for chapter in chapters]
    firsts = accumulate(lengths[:-1], initial=1)
    names = zip((chapter.name for chapter in chapters), firsts, strict=True)
    return f"Pages: {' · '.join(f'{name} {first}' for name, first in names)}"


def _on_a_new_page(chapter: Chapter) -> list[Block]:
    first, *others = chapter.blocks
    return [replace(first, new_page=True), *others]
