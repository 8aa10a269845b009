"""What a blank accepts."""

from cards.item import Item, folded


def accepted(item: Item) -> frozenset[str]:
    """Return, folded, every text that is right where an item's prompt stands."""
    return frozenset(map(folded, (item.answer, *item.also_right)))


def one_line(text: str) -> str:
    """Return a text as it stands in a bank: line breaks and runs of spaces become one space."""
    return " ".join(text.split())
