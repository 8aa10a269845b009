"""The files of cards: one, or fronts and backs apart for two passes."""

from collections.abc import Iterable, Iterator, Mapping, Sequence

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
from decks.steps import Tell, unheard


def card_files(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...], tell: Tell = unheard
) -> dict[str, bytes]:
    """Return the cards' PDFs by file name.

    Pages are drawn one by one, so that a large deck does not need them all at once; `tell` is
    called for each.
    """
    pictures = _pictures(deck, grid, stacks)
    return {
        f"{name}.pdf": leaf_pdf(deck, grid, _telling(pages, tell), name, pictures)
        for name, pages in _pages(deck, grid, stacks).items()
    }


def leaf_pdf(
    deck: Deck,
    grid: Grid,
    pages: Iterable[Frame],
    name: str,
    pictures: Mapping[str, Printed] | None = None,
) -> bytes:
    """Return pages of a deck's leaves as a PDF. Only duplex asks to print both sides."""
    return make_pdf(
        pages,
        title=f"{deck.name} · {name.replace('-', ': ')}",
        language=deck.recipe.language,
        owners=deck.owners,
        ink=deck.recipe.ink,
        flip=grid.flip if grid.sides is Sides.DUPLEX else None,
        pictures=pictures,
    )


def backs_in_order(deck: Deck, runs: Sequence[Sequence[Leaf]]) -> list[Frame]:
    """Return the backs of runs of leaves in the order in which the leaves go in again."""
    ordered = order_of_backs(runs, deck.recipe.comes_out)
    return [leaf.back for leaf in ordered if leaf.back]


def _telling(pages: Iterable[Frame], tell: Tell) -> Iterator[Frame]:
    for number, page in enumerate(pages, start=1):
        tell(f"Drawing page {number} of cards")
        yield page


def _pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> dict[str, Iterable[Frame]]:
    if grid.sides is not Sides.TWO_PASSES:
        return {"cards": card_pages(deck, grid, stacks)}
    return {
        "cards-fronts": (leaf.front for leaf in card_leaves(deck, grid, stacks)),
        "cards-backs": _backs(deck, grid, stacks),
    }


def _backs(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> list[Frame]:
    leaves = list(card_leaves(deck, grid, stacks))
    runs = runs_of(deck, grid, stacks)
    return backs_in_order(deck, [leaves[run.first - 1 : run.last] for run in runs])


def _pictures(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Mapping[str, Printed]:
    if all(card.item.image is None for card in deck.cards):
        return {}
    return printed_in(leaf.front for leaf in card_leaves(deck, grid, stacks))
