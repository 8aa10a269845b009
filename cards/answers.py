"""What is right where an item's prompt stands."""

from cards.item import Item, folded


def accepted(item: Item) -> frozenset[str]:
    """Return, folded, every text that is right where an item's prompt stands."""
    return frozenset(map(folded, (item.answer, *item.also_right)))
