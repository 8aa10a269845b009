"""The cells of an item beside those of its prompt and its answer."""

from cards.item import Item
from cards.place import Place


def wrong_place(item: Item, number: int) -> Place:
    """Return the cell of a wrong choice, counted from 0; of the answer if that is not known."""
    return _nth(item.wrong_places, number) or item.answer_place


def also_right_place(item: Item, number: int) -> Place:
    """Return the cell of another right answer, counted from 0; of the answer if not known."""
    return _nth(item.also_right_places, number) or item.answer_place


def topic_place(item: Item) -> Place:
    """Return the cell of the topic; of the prompt if that is not known."""
    return item.topic_place or item.prompt_place


def _nth(places: tuple[Place, ...], number: int) -> Place | None:
    return places[number] if number < len(places) else None
