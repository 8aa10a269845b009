"""Draws the card pages of a deck that was dealt before: `python card_pages.py deck.pickle out`."""

import atexit
import gc
import pickle
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parents[2]))

# as the command does
gc.set_threshold(20_000, 50, 1_000)
atexit.register(gc.freeze)

from decks.press.cards.files import card_files  # noqa: E402 (what comes first is meant for it)


def draw(dealt: Path, out: Path) -> None:
    """Fit and draw the cards and write the files into a folder."""
    deck, grid, stacks = pickle.loads(dealt.read_bytes())  # noqa: S301 (written by building.py)
    for name, pdf in card_files(deck, grid, stacks).items():
        (out / name).write_bytes(pdf)


if __name__ == "__main__":
    draw(Path(sys.argv[1]), Path(sys.argv[2]))
