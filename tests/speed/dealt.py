"""What the measurements of drawing start from: a deck that was dealt, and what its pages hold.

`python dealt.py book.xlsx deck.pickle things.json`
"""

import json
import pickle
import sys
from collections.abc import Iterator
from pathlib import Path

from msgspec.structs import replace

from decks.activities import make_deck
from decks.commands.inspection import inspect
from decks.layout.frame import Box, Frame, Line, Placed, Ribbon, Text, Thing
from decks.layout.stacking import plan
from decks.press.cards.pages import card_leaves
from decks.press.type.plain import font_name

INK = "#000000"


def deal(workbook: Path, dealt: Path, things: Path) -> None:
    """Deal a workbook; keep the deck in `dealt`, and as plain values in `things` what it draws."""
    seen = inspect(workbook, {})
    deck = make_deck(seen.recipe, seen.asked, number=1, seed="speed")
    stacks = plan([len(hand) for hand in deck.hands], len(seen.grid.slots))
    cards_only = replace(deck, pool=(), deal=None, guides=())
    dealt.write_bytes(pickle.dumps((cards_only, seen.grid, stacks)))
    colours = [team.colour for team in deck.owners]
    leaves = card_leaves(deck, seen.grid, stacks)
    pages = [page for leaf in leaves for page in (leaf.front, leaf.back) if page]
    things.write_text(json.dumps([_page(page, colours) for page in pages]), encoding="utf-8")


def _page(page: Frame, colours: list[str]) -> dict[str, object]:
    placed = [_plain(thing, x, y, colours) for thing, x, y in _things(page, 0, 0)]
    return {"size": [page.width, page.height], "things": [thing for thing in placed if thing]}


def _things(frame: Frame, x: float, y: float) -> Iterator[tuple[Thing, float, float]]:
    for thing in frame.things:
        if isinstance(thing, Placed):
            yield from _things(thing.frame, x + thing.x, y + thing.y)
        else:
            yield thing, x, y


def _plain(thing: Thing, x: float, y: float, colours: list[str]) -> tuple[object, ...] | None:
    match thing:
        case Text():
            font = font_name(strong=thing.strong)
            return "text", x + thing.x, y + thing.y, thing.text, font, thing.size
        case Ribbon():
            colour = colours[thing.team]
            return "ribbon", x + thing.x, y + thing.y, thing.width, thing.height, colour
        case Box():
            return "box", x + thing.x, y + thing.y, thing.width, thing.height, thing.radius
        case Line():
            return "line", x + thing.x, y + thing.y, x + thing.end_x, y + thing.end_y
        case _:
            return None


if __name__ == "__main__":
    deal(*map(Path, sys.argv[1:4]))
