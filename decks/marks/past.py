"""What the marks of several decks tell together, item by item."""

from collections import defaultdict
from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence

from cards.item import Item, Kind, Level, folded
from decks.aims import History, Last, Past, Result
from decks.deck import Deck
from decks.marks.estimate import STRENGTH, Belief, after
from decks.marks.interval import wilson
from decks.marks.summary import GOOD, needs_lesson
from decks.recipe import Aim

Marked = Mapping[int, Mapping[str, tuple[int, int]]]
"""By the number of a deck and the key of an item: how often right, of how many tries."""


def believed(item: Item, results: Iterable[Result], strength: float = STRENGTH) -> Belief:
    """Return what is believed of an item after some results; its level counts for `strength` tries.

    The level is the one that it has now, not the one it had in a deck before.
    """
    belief = Belief(item.level.expected_share, strength)
    for result in results:
        belief = after(belief, result.right, result.tries)
    return belief


def results_of(item: Item, decks: Iterable[int], marked: Marked) -> Iterator[Result]:
    """Yield the results of an item in those of the decks in which it was tried."""
    for number in decks:
        right, tries = marked.get(number, {}).get(item.key, (0, 0))
        if tries:
            yield Result(number, right, tries)


def history_of(
    decks: Collection[Deck], marked: Marked, items: Iterable[Item], *, asks: Collection[Kind]
) -> History:
    """Return what the decks, of which there is one at least, and their marks tell of the items.

    `items` are those of the content as it is now, whose levels may have been changed since. `asks`
    are the kinds that the next deck is made of: it is compared with the last deck that has any.
    """
    ordered = sorted(decks, key=lambda deck: deck.number)
    known: dict[str, Item] = {}
    numbers: dict[str, dict[int, None]] = {}
    for deck in ordered:
        for item in (card.item for card in deck.cards):
            known[item.key] = item
            numbers.setdefault(item.key, {})[deck.number] = None
    known.update((item.key, item) for item in items if item.key in known)
    past = {key: _past(known[key], tuple(numbers[key]), marked) for key in sorted(known)}
    comparable = [deck for deck in ordered if any(card.item.kind in asks for card in deck.cards)]
    return History(past, _last(comparable or ordered), frozenset(_behind(ordered, past)))


def _past(item: Item, decks: tuple[int, ...], marked: Marked) -> Past:
    results = tuple(results_of(item, decks, marked))
    return Past(item.key, decks, results, believed(item, results).mean)


def _behind(decks: Iterable[Deck], past: Mapping[str, Past]) -> Iterator[str]:
    """Yield the keys of items to go over although no item of their topic was missed by itself.

    A deck's marks say which topics need another lesson; they count for what was not tried since.
    """
    for deck in decks:
        topics = defaultdict(list)
        for item in _items(deck).values():
            topics[folded(item.topic)].append(past[item.key])
        for topic in topics.values():
            last = {one.key: r for one in topic for r in one.results[-1:] if r.deck == deck.number}
            right, tries = sum(r.right for r in last.values()), sum(r.tries for r in last.values())
            if needs_lesson(wilson(right, tries)) and not any(one.missed for one in topic):
                yield from (key for key, one in last.items() if one.right < GOOD * one.tries)


def _last(decks: Sequence[Deck]) -> Last:
    """Return the last of the decks, which stand in the order of their numbers."""
    deck = decks[-1]
    usual = next((d for d in reversed(decks) if d.recipe.aim is not Aim.RETEACH), deck)
    items = _items(deck)
    shares = [deck.expected(item) for item in items.values()]
    mean = sum(shares) / len(shares) if shares else 0.0
    return Last(deck.number, tuple(items), _levels(deck), _levels(usual), mean)


def _items(deck: Deck) -> dict[str, Item]:
    return {card.item.key: card.item for card in deck.cards}


def _levels(deck: Deck) -> tuple[int, int, int]:
    levels = [item.level for item in _items(deck).values()]
    easy, medium, hard = map(levels.count, Level)
    return easy, medium, hard
