"""A card: what stands between an item and the paper it is printed on."""

from dataclasses import dataclass

from cards.item import Item


@dataclass(frozen=True, slots=True)
class Card:
    """One card of a deck: its label, the number of its owner (from 0), and what it asks."""

    label: str
    team: int
    item: Item
