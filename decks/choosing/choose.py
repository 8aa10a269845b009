"""Choosing k of n items."""

import random
from collections.abc import Collection, Mapping, Sequence

from msgspec.structs import replace

from cards.item import Item
from decks.choosing.advice import about_cards, about_mix, about_next
from decks.choosing.choice import Choice
from decks.choosing.goals import goals_of
from decks.choosing.stages import Wishes, best
from decks.choosing.stock import (
    STEPS,
    Again,
    Group,
    Stock,
    group_of,
    level_ranges,
    liked_ranges,
    most_for_mix,
    seen_ranges,
    stock_of,
    target_of,
    topic_ranges,
)
from decks.dealing.loads import ShareOf, share_by_level

_ROUNDING = 1e-9


def choose(  # noqa: PLR0913 (what to choose from, and one argument for each goal)
    items: Sequence[Item],
    *,
    count: int,
    seed: str,
    mix: Sequence[int] | None = None,
    target: float | None = None,
    required: Collection[Item] = (),
    share: ShareOf = share_by_level,
    near: float | None = None,
    again: Again | None = None,
    liked: Collection[Item] = (),
    levels: Sequence[int] | None = None,
    topics: Mapping[str, int] | None = None,
    any_level: bool = False,
) -> Choice:
    """Choose `count` of the items, and say how near that comes to what is wanted.

    Items that are pinned to a team and those in `required` are always in, even where they are more
    than `count`. A count of `ALL` asks for every item, or with a mix for as many as meet it.

    The goals, each as near as can be given those before it: the number of cards; with `again`, how
    many of them have been seen before; with `near`, that the mean expected share is no further
    from `target` than that; as many as can be of the items in `liked`; the shares of easy, medium
    and hard in `mix`, within one card, or without a mix those in `levels`, or else those of the
    content, or none with `any_level`; the topics in the content's proportions, or those of the
    weights in `topics` (by folded topic), within one card; the mean expected share next to
    `target` (0 to 1), or without one to what the mix comes to. `share` gives an item's expected
    share, 0 to 1, which is rounded to half a percent. The seed alone decides among choices that
    are equally good. Raises ValueError for a negative count.
    """
    if count < 0:
        raise ValueError("A choice needs a number of cards that is not negative.")
    needed = set(required)
    must = [item.team is not None or item in needed for item in items]
    groups = groups_of(items, share, again, liked)
    stock = stock_of(groups, must)
    asked = count or (mix and most_for_mix(stock, mix)) or len(items)
    taken = min(max(asked, sum(must)), len(items))
    usual = level_ranges(stock, taken, mix or levels)
    aimed = target_of(stock, usual) if target is None else round(target * STEPS * taken)
    ranges = () if any_level else usual, topic_ranges(stock, taken, topics)
    wishes = _for_next(Wishes(taken, *ranges, aimed), stock, again, near)
    rng = random.Random(f"{seed}/choice")
    result = best(stock, wishes, rng)
    chosen = _pick(items, groups, must, dict(zip(stock.groups, result.counts, strict=True)), rng)
    advice = [*about_cards(len(items), asked, taken)]
    if taken >= asked:
        advice += about_next(items, stock, wishes, result.counts, again)
        # a next deck asks for levels and topics as far as they come by themselves
        if mix is not None or not (again or topics):
            advice += about_mix(items, stock, wishes, result.counts, mix)
    goals = goals_of(items, stock, wishes, result, asked)
    return Choice(chosen, goals, mean_share(chosen, share), tuple(advice))


def _for_next(wishes: Wishes, stock: Stock, again: Again | None, near: float | None) -> Wishes:
    """Return the wishes with those of a next deck: new, as hard as wanted, and with what is liked.

    `near` is how far from its target the mean expected share may be, 0 to 1.
    """
    return replace(
        wishes,
        seen=seen_ranges(stock, wishes.count, again),
        near=None if near is None else int(near * STEPS * wishes.count + _ROUNDING),
        liked=liked_ranges(stock),
    )


def groups_of(
    items: Sequence[Item], share: ShareOf, again: Again | None, liked: Collection[Item] = ()
) -> list[Group]:
    """Return the group of each item; one is seen if its key is among those seen before."""
    seen, wanted = again.keys if again else frozenset(), set(liked)
    return [group_of(item, share, seen=item.key in seen, liked=item in wanted) for item in items]


def mean_share(items: Collection[Item], share: ShareOf) -> float:
    """Return the mean expected share of the items, or 0 where there are none."""
    return sum(map(share, items)) / len(items) if items else 0.0


def _pick(
    items: Sequence[Item],
    groups: Sequence[Group],
    must: Sequence[bool],
    counts: dict[Group, int],
    rng: random.Random,
) -> tuple[Item, ...]:
    taken = {number for number, needed in enumerate(must) if needed}
    free: dict[Group, list[int]] = {group: [] for group in counts}
    for number, group in enumerate(groups):
        if must[number]:
            counts[group] -= 1
        else:
            free[group].append(number)
    for group, count in counts.items():
        taken |= set(rng.sample(free[group], count))
    return tuple(item for number, item in enumerate(items) if number in taken)
