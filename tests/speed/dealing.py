"""What dealing adds to a program's running time, as whole processes: prints a table.

Run by hand or in CI: `python tests/speed/dealing.py [runs]`. Each deck is dealt in a process of
its own, and the same process is run without dealing; of some runs the medians are compared. The
ratio says how growth goes, whatever the machine: cards, and time, as multiples of the first row
that has as many teams.
"""

# ruff: noqa: T201  (the table is what the script is for)

import statistics
import subprocess
import sys
import time
from pathlib import Path

from msgspec import Struct

ROOT = Path(__file__).parents[2]

SCRIPT = """
import random, sys
sys.path[:0] = [{root!r}]
from cards.item import Item, Kind, Level
from cards.place import Place
from decks.dealing import deal_shares
rng = random.Random("speed")
teams = [f"Team {{n}}" for n in range({teams})]
kinds = list(Kind)
def item(n):
    return Item(
        prompt=f"clue {{n}}", answer=f"word {{n}} " + "tide " * rng.randrange(9),
        kind=kinds[rng.randrange(4)], level=Level(rng.randint(1, 3)),
        topic=f"Topic {{rng.randrange({topics})}}",
        prompt_place=Place("Vocabulary", n + 2, 2), answer_place=Place("Vocabulary", n + 2, 1),
        team=rng.choice(teams[:{pinned_to}]) if rng.random() < {pinned} else None,
    )
items = [item(n) for n in range({cards})]
if {deal}:
    deal = deal_shares(items, teams, "speed")
    print(*(goal.reached - goal.bound for goal in deal.goals))
"""


class Case(Struct, frozen=True):
    """A deck; a share of its cards is pinned to the first `pinned_to` of its teams."""

    cards: int
    teams: int
    topics: int
    pinned: float = 0.0
    pinned_to: int = 1


CASES = (
    *(Case(cards, 4, topics) for cards, topics in ((24, 4), (240, 8), (2_400, 20), (10_000, 50))),
    *(Case(cards, 12, topics) for cards, topics in ((24, 4), (240, 8), (2_400, 20), (10_000, 50))),
    Case(240, 4, 8, pinned=0.3, pinned_to=4),
    Case(240, 4, 8, pinned=0.5),
    Case(2_400, 12, 50, pinned=0.7, pinned_to=12),
    Case(2_400, 12, 50, pinned=0.7, pinned_to=3),
    Case(2_400, 12, 50, pinned=0.3, pinned_to=3),
)


def run(case: Case, *, deal: bool) -> tuple[float, str]:
    """Return the seconds that a process takes, and what it prints."""
    script = SCRIPT.format(root=str(ROOT), deal=deal, **vars(case))
    began = time.perf_counter()
    done = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True
    )
    return time.perf_counter() - began, done.stdout.strip()


def measure(case: Case, runs: int) -> tuple[float, float, str]:
    """Return the median seconds without dealing and with it, and the gaps to the bounds."""
    without = statistics.median(run(case, deal=False)[0] for _ in range(runs))
    timed = [run(case, deal=True) for _ in range(runs)]
    return without, statistics.median(seconds for seconds, _said in timed), timed[0][1]


def main(runs: int) -> None:
    """Print the table."""
    print(f"{'cards':>6} {'teams':>5} {'topics':>6} {'pinned':>14} ", end="")
    print(
        f"{'without s':>9} {'with s':>7} {'adds s':>7} {'cards x':>8} {'time x':>7}  gaps to bounds"
    )
    first: dict[int, tuple[int, float]] = {}
    for case in CASES:
        without, dealt, gaps = measure(case, runs)
        cards, added = first.setdefault(case.teams, (case.cards, dealt - without))
        pinned = f"{case.pinned:.0%} to {case.pinned_to}" if case.pinned else "none"
        print(
            f"{case.cards:6} {case.teams:5} {case.topics:6} {pinned:>14} {without:9.2f} "
            f"{dealt:7.2f} {dealt - without:7.2f} {case.cards / cards:8.1f} "
            f"{(dealt - without) / added:7.1f}  {gaps}",
            flush=True,
        )


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3)
