"""Items for the tests."""

from cards.item import Item, Kind, Level
from cards.place import Place


def item(prompt="What digs?", answer="lugworm", *, row=2, **fields):
    """Return an item of the Vocabulary sheet: the answer stands in column A, the prompt in B."""
    given = {"kind": Kind.VOCABULARY, "level": Level.MEDIUM, "topic": "Life"} | fields
    return Item(
        prompt=prompt,
        answer=answer,
        prompt_place=Place("Vocabulary", row, 2),
        answer_place=Place("Vocabulary", row, 1),
        **given,
    )
