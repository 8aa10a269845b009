"""A card: what stands between an item and the paper it is printed on."""

from msgspec import Struct

from cards.item import Item


class Card(Struct, frozen=True):
    """One card of a deck: its label, the number of its owner (from 0), and what it asks."""

    label: str
    owner: int
    item: Item
