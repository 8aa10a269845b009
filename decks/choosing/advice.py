"""What to add to the content, or to change, so that what was asked for can be had."""

from collections.abc import Iterator, Sequence

from cards.item import Item, Level, topics_of
from decks.choosing.adding import Added, fewest_added, fewest_new
from decks.choosing.stages import Wishes, excess, off
from decks.choosing.stock import Again, Range, Stock
from decks.words import counted, listed


def about_cards(offered: int, asked: int, taken: int) -> Iterator[str]:
    """Say what would do where there are fewer items than asked for, or more that must be in."""
    if offered < asked:
        lacking = asked - offered
        yield (
            f"There are {counted(offered, 'item')} for the {counted(asked, 'card')} asked for: "
            f"{lacking} more would do."
        )
    elif taken > asked:
        yield (
            f"{counted(taken, 'item is', 'items are')} set to be in, more than the "
            f"{counted(asked, 'card')} asked for. Ask for more cards, or set fewer items to a team "
            "(column Team)."
        )


def about_next(
    items: Sequence[Item],
    stock: Stock,
    wishes: Wishes,
    counts: Sequence[int],
    again: Again | None,
) -> Iterator[str]:
    """Say what to write so that a next deck is as much new, and as hard, as is wanted."""
    many = again is not None and off(wishes.seen, counts) > 0
    far = excess(stock, counts, wishes) > 0
    if not many and not far:
        return
    part = f"{again.percent} % of the cards have been seen before" if again else ""
    met = [
        f"{'no more than' if again and again.at_most else 'only'} {part}" if many else "",
        "the mean comes to the target" if far else "",
    ]
    for parts in _named(items, fewest_new(stock, wishes)):
        yield f"Write {listed(parts, 'and')}: then {listed([told for told in met if told], 'and')}."


def about_mix(
    items: Sequence[Item],
    stock: Stock,
    wishes: Wishes,
    counts: Sequence[int],
    mix: Sequence[int] | None,
) -> Iterator[str]:
    """Say what would let the levels meet the mix, or else the topics keep their proportions."""
    if off(wishes.levels, counts):
        yield from _blocked(stock, wishes.levels)
        added = fewest_added(stock, wishes, mix, topics_too=False)
        yield from _to_add(items, added, "would meet the mix.")
    elif off(wishes.topics, counts):
        added = fewest_added(stock, wishes, mix, topics_too=True)
        told = list(_to_add(items, added, "would keep the topics in proportion."))
        yield from told or _uneven(items, wishes.topics, counts)


def _blocked(stock: Stock, levels: Sequence[Range]) -> Iterator[str]:
    for level in levels:
        must = level.held(stock.must)
        if must > level.most:
            name = Level(int(str(level.value))).name.lower()
            noun = counted(must, f"{name} item is", f"{name} items are")
            yield (
                f"{noun} set to be in, where the mix has room for {level.most or 'none'}. "
                "Change the mix, or let fewer be set to a team (column Team) or come back as "
                "missed."
            )


def _to_add(items: Sequence[Item], added: Added, meets: str) -> Iterator[str]:
    for parts in _named(items, added):
        yield f"{listed(parts, 'and')} {meets}"


def _named(items: Sequence[Item], added: Added) -> Iterator[list[str]]:
    """Yield what is to be added, in words, if there is anything."""
    shown = topics_of(items)
    parts = []
    for group, number in added:
        kind = f"more {Level(group.level).name.lower()} item"
        topic = shown[group.topic]
        where = f" in {topic}" if topic and len(shown) > 1 else ""
        parts.append(counted(number, kind) + where)
    if parts:
        yield parts


def _uneven(items: Sequence[Item], topics: Sequence[Range], counts: Sequence[int]) -> Iterator[str]:
    shown = topics_of(items)
    parts = [
        f"{shown[str(topic.value)] or 'no topic'} has {topic.held(counts)} instead of "
        f"{listed(sorted({str(topic.least), str(topic.most)}, key=int))}"
        for topic in topics
        if topic.off(counts)
    ]
    yield (
        "The mix and the items that are set to be in do not let every topic keep its part of the "
        f"cards: {', '.join(parts)}."
    )
