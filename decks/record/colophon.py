"""What a record tells besides the deck."""

from collections.abc import Mapping

from msgspec import Struct

from decks.deck import Deck


class Colophon(Struct, frozen=True):
    """What a record tells besides the deck: where it came from, and what was printed.

    `made_from` is the file's name, without its folder; `left_out` the rows that were left out,
    each a place and why; `papers` the SHA-256 of every paper by file name.
    """

    made_from: str
    digest: str
    left_out: tuple[tuple[str, str], ...]
    papers: Mapping[str, str]
    leaves: int


class Recorded(Struct, frozen=True):
    """A deck as its record tells it.

    What a record does not hold is not made up: the deck's pool is what is on its cards, a choice
    has no counts, and of an item's places only those of its prompt and answer are known.
    """

    deck: Deck
    colophon: Colophon

    @property
    def number(self) -> int:
        """The deck's number on its shelf."""
        return self.deck.number
