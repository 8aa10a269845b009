"""How many cards a deck can have and still be as hard, and as new, as is wanted."""

from collections.abc import Collection, Sequence

from cards.item import Item
from decks.choosing.choose import groups_of
from decks.choosing.stock import STEPS, Again, stock_of
from decks.dealing.loads import ShareOf
from decks.dealing.program import INFINITY, Program
from decks.dealing.solving import solve

_ROUNDING = 1e-6


def most_cards(  # noqa: PLR0913 (what to choose from, two bounds and three wishes)
    items: Sequence[Item],
    *,
    least: int,
    most: int,
    target: float,
    near: float,
    share: ShareOf,
    again: Again | None = None,
    liked: Collection[Item] = (),
) -> int | None:
    """Return the largest number of cards, `least` to `most`, that meets the wishes, or None.

    Larger decks that have fewer of the items in `liked` do not count.

    The wishes are those of `choose`: a mean expected share within `near` of the target, and with
    `again` no more than so many percent of the cards seen before. Exact.
    """
    groups = groups_of(items, share, again, liked)
    stock = stock_of(groups, [item.team is not None for item in items])
    program = Program()
    for group, must, have in zip(stock.groups, stock.must, stock.have, strict=True):
        program.column(must, have, cost=-1 - (most + 1) * group.liked)
    columns = range(len(stock.groups))
    program.row(least, most, [(column, 1) for column in columns])
    beyond = [group.steps - target * STEPS for group in stock.groups]
    for sign in (1, -1):
        terms = [(column, sign * beyond[column] - near * STEPS) for column in columns]
        program.row(-INFINITY, _ROUNDING, terms)
    if again:
        parts = [100 * group.seen - again.percent for group in stock.groups]
        program.row(-INFINITY, 0, [(column, part) for column, part in enumerate(parts)])
    values = solve(program).values
    return None if values is None else sum(values)
