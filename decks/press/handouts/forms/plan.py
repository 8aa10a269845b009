"""What a planning sheet has room for, before it is drawn."""

from collections.abc import Sequence

from msgspec import Struct

from cards.item import Item
from decks.bank.hints import hint_of
from decks.lesson import Story
from decks.press.handouts.guide_type import GuideType
from decks.recipe import Form, Support

MOST_COLUMNS = 4
UNEVEN = 3
"""Headings that differ by more details than this have each its own number of places."""


class Heading(Struct, frozen=True):
    """A place for a heading, with its number, a hint or none, and how many details it has room for.

    `number` counts from 1.
    """

    number: int
    details: int
    hint: str = ""


class Plan(Struct, frozen=True):
    """The headings of a sheet, and the room for it in points: `first` on its first page."""

    headings: tuple[Heading, ...]
    sizes: GuideType
    width: float
    first: float
    page: float

    @property
    def pitch(self) -> float:
        """The distance of one line to write on from the next."""
        return self.sizes.next_line


def form_for(story: Story, wanted: Form | None) -> Form:
    """Return the form for a text: the one that is wanted, else columns where they suit.

    Columns are wide enough for up to four headings, and a waste of paper where one of them has far
    more details than another; there a tree suits.
    """
    if wanted is not None:
        return wanted
    counts = [len(items) for _heading, items in story.headings]
    suited = len(counts) <= MOST_COLUMNS and not _uneven(counts)
    return Form.COLUMNS if suited else Form.TREE


def _uneven(counts: Sequence[int]) -> bool:
    return max(counts, default=1) - min(counts, default=1) > UNEVEN


def by_alphabet(story: Story) -> list[tuple[str, tuple[Item, ...]]]:
    """Return the headings of a text with their details, in the order of the alphabet."""
    return sorted(story.headings, key=lambda heading: (heading[0].casefold(), heading[0]))


def headings_of(story: Story, support: Support) -> tuple[Heading, ...]:
    """Return the places for the headings of a text.

    They are in the order of the alphabet, or, without hints, of their number of details. All have
    room for as many details as the longest, so that nobody can tell them apart by counting; only
    where they are very uneven does each have its own number.
    """
    counts = [len(items) for _heading, items in story.headings]
    if not _uneven(counts):
        counts = [max(counts, default=1)] * len(counts)
    hints = support is Support.HINTS
    # two may be written alike, as 102 and a power of ten are
    named = zip((heading for heading, _items in story.headings), counts, strict=True)
    ordered = sorted(named, key=lambda one: (0 if hints else -one[1], one[0].casefold(), one[0]))
    return tuple(
        Heading(n, count, hint_of(text) if hints else "")
        for n, (text, count) in enumerate(ordered, start=1)
    )
