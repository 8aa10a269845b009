"""Some cards of a deck once more: the same faces, packed on as few leaves as can be."""

from collections.abc import Sequence
from itertools import groupby

from msgspec import Struct

from decks.card import Card
from decks.deck import Deck
from decks.layout.grid import Grid
from decks.press.cards.arranging import arrange
from decks.press.cards.faces import shapes_to_read
from decks.press.cards.files import backs_in_order, leaf_pdf
from decks.press.cards.forme import forme_of
from decks.press.cards.leaf_side import Side
from decks.press.cards.pages import Filled, Leaf, both_sides, printed_leaf
from decks.press.type.fonts import unprintable
from decks.recipe import Ink, Sides
from decks.team import Team, stock_name


class Load(Struct, frozen=True):
    """Leaves of one paper and the cards on each; `owner` is whose stock it is, None for any."""

    owner: Team | None
    leaves: tuple[tuple[Card, ...], ...]

    @property
    def paper(self) -> str | None:
        """The colour of paper to load, or None where any will do."""
        return stock_name(self.owner) if self.owner else None


def loads_of(deck: Deck, cards: Sequence[Card], grid: Grid) -> tuple[Load, ...]:
    """Return the cards on as few leaves as hold them, slot after slot, in the order given.

    Where the paper tells the owner, the cards of each owner, which follow one another, have leaves
    of their own.
    """
    if deck.recipe.ink is not Ink.STOCK:
        return (Load(None, _packed(cards, grid)),)
    return tuple(
        Load(deck.owners[number], _packed(list(own), grid))
        for number, own in groupby(cards, key=lambda card: card.owner)
    )


def _packed(cards: Sequence[Card], grid: Grid) -> tuple[tuple[Card, ...], ...]:
    slots = len(grid.slots)
    return tuple(tuple(cards[start : start + slots]) for start in range(0, len(cards), slots))


def reprint_leaves(deck: Deck, grid: Grid, loads: Sequence[Load]) -> list[list[Leaf]]:
    """Return the leaves of every load."""
    of = sum(len(load.leaves) for load in loads)
    printed: list[list[Leaf]] = []
    forme = forme_of(grid, deck.recipe)
    number = 0
    for load in loads:
        printed.append([])
        for cards in load.leaves:
            number += 1
            side = Side(
                title=f"{deck.recipe.title} · reprint",
                deck=deck.number,
                stack=None,
                leaf=(number, of),
                back=False,
                load=load.paper,
            )
            printed[-1].append(printed_leaf(deck, forme, side, _filled(cards, grid)))
    return printed


def _filled(cards: Sequence[Card], grid: Grid) -> list[Filled]:
    return [Filled(slot, card.owner, card) for slot, card in zip(grid.slots, cards, strict=False)]


def reprint_files(deck: Deck, grid: Grid, loads: Sequence[Load]) -> dict[str, bytes]:
    """Return the PDF under a blank name; for two passes, two under `fronts` and `backs`."""
    runs = reprint_leaves(deck, grid, loads)
    leaves = [leaf for run in runs for leaf in run]
    if grid.sides is not Sides.TWO_PASSES:
        return {"": leaf_pdf(deck, grid, list(both_sides(leaves)), "reprint")}
    return {
        "fronts": leaf_pdf(deck, grid, [leaf.front for leaf in leaves], "reprint-fronts"),
        "backs": leaf_pdf(deck, grid, backs_in_order(deck, runs), "reprint-backs"),
    }


def why_not_printed(deck: Deck, cards: Sequence[Card], grid: Grid) -> str | None:
    """Return what stands in the way of printing some cards, or None.

    What is printed was proofread when the deck was built; a record can have been changed since.
    """
    shapes = shapes_to_read(grid, deck.recipe)
    names = [deck.recipe.title, *(owner.name for owner in deck.owners)]
    if any(unprintable(name) for name in names):
        return "a name has characters that the cards’ typeface has no letters for"
    for card in cards:
        if unprintable(f"{card.item.topic}{card.item.prompt}{card.item.answer}"):
            return f"card {card.label} has characters that the cards’ typeface has no letters for"
        if any(arrange(card.item, shape) is None for shape in shapes):
            return f"the text of card {card.label} does not fit on it"
    return None
