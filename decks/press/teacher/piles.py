"""Where the piles lie: the cut plans of the stacks, or lists, and what to load."""

from decks.deck import Deck
from decks.layout.frame import Frame
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.runs import runs_of
from decks.press.teacher.plan import cut_plan, long_edge
from decks.press.type.setting import paragraph, side_by_side, swatch
from decks.recipe import Ink
from decks.team import stock_name
from decks.words import counted

BETWEEN = 14.0


def plans(deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float) -> list[Frame]:
    """Return the stacks' plans in rows, as many side by side as `width` takes."""
    longest = long_edge(deck, grid, stacks)
    drawn = [
        cut_plan(deck, grid, stack, title=_title(deck, stacks, n), longest=longest)
        for n, stack in enumerate(stacks)
    ]
    each = drawn[0].width + BETWEEN
    across = max(1, int((width + BETWEEN) // each))
    rows = [drawn[start : start + across] for start in range(0, len(drawn), across)]
    return [
        side_by_side([(n * each, plan) for n, plan in enumerate(row)], len(row) * each - BETWEEN)
        for row in rows
    ]


def _title(deck: Deck, stacks: tuple[Stack, ...], number: int) -> str:
    if deck.recipe.ink is Ink.STOCK:
        team = deck.owners[stacks[number].teams[0]]
        return f"{team.name} · {stock_name(team)}"
    return f"stack {number + 1} of {len(stacks)}" if len(stacks) > 1 else ""


def leaf_rows(deck: Deck, stacks: tuple[Stack, ...], width: float) -> list[Frame]:
    """Return a line for each team: which leaves are its cards."""
    rows = []
    first = 1
    for stack in stacks:
        (team,) = stack.teams
        last = first + stack.leaves - 1
        leaves = f"leaf {first}" if first == last else f"leaves {first} to {last}"
        cells = [
            (0.0, swatch(team, width=9, height=12)),
            (18.0, paragraph(deck.owners[team].name, 190)),
            (212.0, paragraph(leaves, width - 212)),
        ]
        rows.append(side_by_side(cells, width, above=3))
        first = last + 1
    return rows


def load_rows(deck: Deck, grid: Grid, stacks: tuple[Stack, ...], width: float) -> list[Frame]:
    """Return a line for each load of stock: how many sheets of what, which pages, and whose."""
    rows = []
    for run, stack in zip(runs_of(deck, grid, stacks), stacks, strict=True):
        (team,) = stack.teams
        cells = [
            (0.0, swatch(team, width=9, height=12)),
            (18.0, paragraph(f"Load {counted(run.sheets, 'sheet')} of {run.paper}", 190)),
            (212.0, paragraph(f"print {run.pages}", 110)),
            (326.0, paragraph(deck.owners[team].name, width - 326)),
        ]
        rows.append(side_by_side(cells, width, above=3))
    return rows
