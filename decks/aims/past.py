"""What earlier decks and their marks tell of the items."""

from collections.abc import Collection, Mapping

from msgspec import Struct

from cards.item import Item

MISSED = 60
"""An item is missed if fewer percent than this were right. Below about 60 a card stops being
practice: our own judgement."""

KNOWN = 0.90
KNOWN_TRIES = 4
"""An item is known if this share is expected to get it right after at least so many tries. With a
level weighing eight tries, a medium item is known once 12 of 12 got it right, a hard one once 24 of
24 did: our own judgement."""


def is_missed(right: int, tries: int) -> bool:
    """Say whether too few answers to an item were right; nobody misses what nobody tried."""
    return 100 * right < MISSED * tries


class Result(Struct, frozen=True):
    """How often an item was right, of how many tries, in the deck of this number."""

    deck: int
    right: int
    tries: int


class Past(Struct, frozen=True):
    """What is known of one item: its decks and its results (with tries), both by rising number.

    `expected` is the share expected to get it right after all its marks, 0 to 1.
    """

    key: str
    decks: tuple[int, ...]
    results: tuple[Result, ...]
    expected: float

    @property
    def missed(self) -> bool:
        """Whether it was missed when it was last marked."""
        return any(is_missed(last.right, last.tries) for last in self.results[-1:])

    @property
    def back_since(self) -> bool:
        """Whether it has been in a deck after the one in which it was last marked."""
        return bool(self.results) and self.decks[-1] > self.results[-1].deck

    @property
    def known(self) -> bool:
        """Whether the class is sure of it."""
        tries = sum(result.tries for result in self.results)
        return self.expected >= KNOWN - 1e-9 and tries >= KNOWN_TRIES and not self.missed


class Last(Struct, frozen=True):
    """The last deck: its items, each once, and how many were easy, medium and hard.

    `usual` are the levels of the last deck that was not to reteach, whose size says little. `told`
    is the mean share that was expected to be right before the lesson.
    """

    number: int
    keys: tuple[str, ...]
    levels: tuple[int, int, int]
    usual: tuple[int, int, int]
    told: float


class History(Struct, frozen=True):
    """All earlier decks of a workbook: what each item's key stands for, and the last deck.

    `behind` are the keys of items that fewer than are good got right, of topics that need another
    lesson although none of their items was missed by itself.
    """

    past: Mapping[str, Past]
    last: Last
    behind: Collection[str] = ()

    @property
    def marked(self) -> bool:
        """Whether anything was marked at all."""
        return any(past.results for past in self.past.values())

    @property
    def last_marked(self) -> bool:
        """Whether anything was marked of the last deck."""
        return any(
            result.deck == self.last.number
            for past in self.past.values()
            for result in past.results
        )

    @property
    def mean(self) -> float:
        """The mean share expected to be right, by now, of the last deck's items."""
        shares = [self.past[key].expected for key in self.last.keys]
        return sum(shares) / len(shares) if shares else 0.0

    def of(self, item: Item) -> Past | None:
        """Return what is known of an item, or None where it is new."""
        return self.past.get(item.key)

    def share(self, item: Item) -> float:
        """Return the share expected to get an item right: by its marks, or else by its level."""
        past = self.past.get(item.key)
        return past.expected if past and past.results else item.level.expected_share

    def missed(self, item: Item) -> bool:
        """Say whether an item was missed when it was last marked."""
        past = self.past.get(item.key)
        return past is not None and past.missed

    def due(self, item: Item) -> bool:
        """Say whether an item was missed and has not been back since."""
        past = self.past.get(item.key)
        return past is not None and past.missed and not past.back_since

    def known(self, item: Item) -> bool:
        """Say whether the class is sure of an item."""
        past = self.past.get(item.key)
        return past is not None and past.known
