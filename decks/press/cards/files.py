"""The files of cards: one, or fronts and backs apart for two passes."""

from collections.abc import Callable, Iterable, Iterator, Mapping

from decks.deck import Deck
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.passes import order_of_backs
from decks.layout.stacking import Stack
from decks.press.cards.pages import Leaf, card_leaves, card_pages
from decks.press.pdf import make_pdf
from decks.press.pictures import Printed, printed_in
from decks.press.runs import runs_of
from decks.recipe import Sides


def card_files(
    deck: Deck,
    grid: Grid,
    stacks: tuple[Stack, ...],
    told: Callable[[str], None] = lambda _step: None,
) -> dict[str, bytes]:
    """Return the cards' PDFs by file name. Only duplex asks to print both sides.

    Pages are drawn one by one, so that a large deck does not need them all at once; `told` hears of
    each.
    """
    pictures = _pictures(deck, grid, stacks)
    flip = grid.flip if grid.sides is Sides.DUPLEX else None
    return {
        f"{name}.pdf": make_pdf(
            _told_of(pages, told),
            title=f"{deck.name} · {name.replace('-', ': ')}",
            owners=deck.owners,
            ink=deck.recipe.ink,
            flip=flip,
            pictures=pictures,
        )
        for name, pages in _pages(deck, grid, stacks).items()
    }


def _told_of(pages: Iterable[Frame], told: Callable[[str], None]) -> Iterator[Frame]:
    for number, page in enumerate(pages, start=1):
        told(f"Drawing page {number} of cards")
        yield page


def _pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> dict[str, Iterable[Frame]]:
    if grid.sides is not Sides.TWO_PASSES:
        return {"cards": card_pages(deck, grid, stacks)}
    return {
        "cards-fronts": (leaf.front for leaf in card_leaves(deck, grid, stacks)),
        "cards-backs": _backs(deck, grid, stacks),
    }


def _backs(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Iterator[Frame]:
    leaves: list[Leaf] = list(card_leaves(deck, grid, stacks))
    runs = [leaves[run.first - 1 : run.last] for run in runs_of(deck, grid, stacks)]
    ordered = order_of_backs(runs, deck.recipe.comes_out)
    return (leaf.back for leaf in ordered if leaf.back)


def _pictures(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Mapping[str, Printed]:
    if all(card.item.image is None for card in deck.cards):
        return {}
    return printed_in(leaf.front for leaf in card_leaves(deck, grid, stacks))
