"""The pages of cards: faces in their slots, and round them what printing and cutting need."""

from collections.abc import Iterable, Iterator, Sequence

from msgspec import Struct
from msgspec.structs import replace

from decks.card import Card
from decks.deck import Deck
from decks.layout.frame import Frame, Placed, Thing
from decks.layout.grid import Grid, Slot
from decks.layout.shifting import shifted
from decks.layout.stacking import Pile, Stack
from decks.lengths import NO_SHIFT, Shift
from decks.press.cards.faces import face
from decks.press.cards.forme import Forme, forme_of
from decks.press.cards.head import head
from decks.press.cards.leaf_side import Side
from decks.press.cards.shape import Shape
from decks.press.cards.spare import spare_face
from decks.recipe import Activity, Ink, Sides
from decks.team import Team, stock_name


class Leaf(Struct, frozen=True):
    """What is printed on one piece of paper; `back` is None where one side stays blank."""

    front: Frame
    back: Frame | None


class Filled(Struct, frozen=True):
    """A slot, whose it is, and its card; a spare card, where words get lost, has None."""

    slot: Slot
    team: int
    card: Card | None


def card_leaves(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Iterator[Leaf]:
    """Yield all leaves in the order of their stacks.

    For two passes by hand, pages on their side are turned to the left: sent to the printer upright,
    they go in as their arrows say, which no driver then turns round.
    """
    forme = forme_of(grid, deck.recipe)
    for printed, filled in _leaves(deck, grid, stacks):
        yield printed_leaf(deck, forme, printed, filled)


def printed_leaf(deck: Deck, forme: Forme, printed: Side, filled: Sequence[Filled]) -> Leaf:
    """Return a leaf with what fills its slots; `printed` is what its front is called."""
    grid = forme.grid
    front, back = forme.shapes
    fronts = _faces(filled, front, deck.owners)
    if grid.folded:
        page = _page(forme, printed, [*fronts, *_faces(filled, back, deck.owners)])
        return Leaf(page, None)
    if not grid.two_sided:
        return Leaf(_page(forme, printed, fronts), None)
    faces = _faces(filled, back, deck.owners)
    behind = _page(forme, replace(printed, back=True), faces, deck.recipe.shift)
    return _as_sent(grid, Leaf(_page(forme, printed, fronts), behind))


def card_pages(deck: Deck, grid: Grid, stacks: tuple[Stack, ...]) -> Iterator[Frame]:
    """Yield all pages: front and back of each leaf in turn, or one page a leaf."""
    return both_sides(card_leaves(deck, grid, stacks))


def both_sides(leaves: Iterable[Leaf]) -> Iterator[Frame]:
    """Yield what is printed on leaves, the back of each after its front."""
    for leaf in leaves:
        yield leaf.front
        if leaf.back:
            yield leaf.back


def _leaves(
    deck: Deck, grid: Grid, stacks: tuple[Stack, ...]
) -> Iterator[tuple[Side, list[Filled]]]:
    """Yield for each leaf what its front is called and the cards in its slots."""
    of = sum(stack.leaves for stack in stacks)
    number = 0
    for nth, stack in enumerate(stacks, start=1):
        for depth in range(stack.leaves):
            number += 1
            yield (
                Side(
                    title=deck.recipe.title,
                    deck=deck.number,
                    stack=(nth, len(stacks)) if len(stacks) > 1 else None,
                    leaf=(number, of),
                    back=False,
                    load=_paper_for(stack, deck.owners, deck.recipe.ink),
                ),
                [
                    Filled(slot, pile.team, card)
                    for slot, pile in zip(grid.slots, stack.piles, strict=False)
                    for card in [_card(deck, pile, pile.first + depth)]
                    if card or deck.recipe.activity is Activity.COLLECT
                ],
            )


def _card(deck: Deck, pile: Pile, number: int) -> Card | None:
    return deck.hands[pile.team][number] if number < pile.end else None


def _paper_for(stack: Stack, owners: Sequence[Team], ink: Ink) -> str | None:
    """Return the colour of paper to load for a stack, which is one team's where paper tells it."""
    return stock_name(owners[stack.piles[0].team]) if ink is Ink.STOCK else None


def _faces(filled: Sequence[Filled], shape: Shape, owners: Sequence[Team]) -> list[Placed]:
    placed = []
    for held in filled:
        spot = held.slot.back if shape.back else held.slot.front
        owner = owners[held.team]
        side = face(held.card, owner, shape) if held.card else spare_face(held.team, owner, shape)
        placed.append(Placed(spot.x, spot.y, side, spot.half_turn))
    return placed


def _page(forme: Forme, side: Side, faces: list[Placed], shift: Shift = NO_SHIFT) -> Frame:
    grid = forme.grid
    things: list[Thing] = [*forme.round_cards(back=side.back), *faces]
    if shift != NO_SHIFT:
        things = shifted(things, shift, grid.page)
    things = [*head(grid, side), *things, *forme.foot(back=side.back)]
    return Frame(grid.width, grid.height, tuple(things))


def _as_sent(grid: Grid, leaf: Leaf) -> Leaf:
    if grid.sides is not Sides.TWO_PASSES or not grid.page.turned:
        return leaf
    back = _to_the_left(leaf.back) if leaf.back else None
    return Leaf(_to_the_left(leaf.front), back)


def _to_the_left(page: Frame) -> Frame:
    """Return a page a quarter of a turn round, so that its right edge is its head."""
    x, y = (page.height - page.width) / 2, (page.width - page.height) / 2
    return Frame(page.height, page.width, (Placed(x, y, page, rotation=90),))
