"""Blocks that follow one another down a column, and the pages that they fill."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.frame import Frame, Placed


class Block(Struct, frozen=True):
    """A frame that is not parted, with `space` points above it.

    `with_next` keeps it on the page of the block after it; `new_page` begins a page with it.
    `head` is set again, above, where a page begins with this block and both fit.
    """

    frame: Frame
    space: float = 0
    with_next: bool = False
    new_page: bool = False
    head: Frame | None = None


def flow(blocks: Sequence[Block], *, x: float, top: float, bottom: float) -> list[list[Placed]]:
    """Place the blocks under one another from `top` down to `bottom`, page after page.

    A run of blocks that belong together is parted only where it is taller than a page, but not
    before its last block, and a block that is taller than a page is placed all the same, alone.
    """
    pages: list[list[Placed]] = [[]]
    y = top
    for run in _runs(blocks):
        for n, block in enumerate(run):
            needed = height_of(run[n:] if n in {0, len(run) - 2} else [block])
            if pages[-1] and (block.new_page or y - needed < bottom):
                pages.append([])
                y = top
            if not pages[-1] and block.head and _fits(block, top - bottom):
                y -= block.head.height
                pages[-1].append(Placed(x, y, block.head))
            y -= (block.space if pages[-1] else 0) + block.frame.height
            pages[-1].append(Placed(x, y, block.frame))
    return pages


def kept_at_the_ends(blocks: Sequence[Block], *, first: int, last: int) -> list[Block]:
    """Return the blocks with the first few of them on one page, and the last few on one page."""
    start = len(blocks) - last
    return [
        replace(block, with_next=n < len(blocks) - 1 and (n < first - 1 or n >= start))
        for n, block in enumerate(blocks)
    ]


def _runs(blocks: Sequence[Block]) -> list[list[Block]]:
    """Part the blocks into runs that stay on one page."""
    runs: list[list[Block]] = [[]]
    for block in blocks:
        runs[-1].append(block)
        if not block.with_next:
            runs.append([])
    return [run for run in runs if run]


def _fits(block: Block, page: float) -> bool:
    return block.head is not None and block.head.height + block.frame.height <= page


def height_of(blocks: Sequence[Block]) -> float:
    """Return how high blocks are one under another, with the space above each."""
    return sum(block.space + block.frame.height for block in blocks)
