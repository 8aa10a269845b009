"""Other answers that are right, as papers tell them beside the answer."""

from cards.item import Item


def also_told(item: Item, lead: str = "also") -> str:
    """Return a line with the other right answers of an item, or nothing where it has none.

    Semicolons part them, as on the sheet, where a comma belongs to an answer: `cher, chère` and
    `cher` or `chère`, which would read as one answer of two words.
    """
    texts = (item.answer, *item.also_right)
    between = "; " if any("," in text for text in texts) else ", "
    return f"{lead}: {between.join(item.also_right)}" if item.also_right else ""
