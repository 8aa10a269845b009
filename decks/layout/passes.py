"""The order of pages for paper that goes through a printer twice, by hand.

What happens, as the pile lies:

1. The fronts are printed from the tray in the order 1, 2, …, n. Every sheet comes out on top of
   those before it, so that sheet n lies on top: printed side down (`FACE_DOWN`) or up (`FACE_UP`).
2. The hand-feed tray prints the upper face of what lies in it and takes the top sheet first
   (common practice; the teacher's page has a trial for printers that do otherwise). The blank
   side therefore has to be up.
   - Face down: it is up already. The pile goes in as it lies, and sheet n goes in first: the
     backs are printed in the order n, …, 2, 1.
   - Face up: the whole pile is turned over. Sheet 1 is on top then and goes in first: the backs
     are printed in the order 1, 2, …, n.
3. Afterwards leaf 1 lies on top, fronts up, after the first way; after the second way the pile is
   turned over once more to lie like that.

Which edge goes in first is the matter of the flip, not of the order. A printer begins every page
at the same edge of its picture, whichever that is. Where a leaf is flipped on the long edge, front
and back have their heads on the same short edge of the paper: it leads both times. Where it is
flipped on the short edge, the other short edge leads the second time.
"""

from collections.abc import Sequence
from typing import TypeVar

from decks.recipe import ComesOut

Page = TypeVar("Page")


def order_of_backs(runs: Sequence[Sequence[Page]], comes_out: ComesOut) -> list[Page]:
    """Return the backs in the order in which their leaves go in again.

    A run is what is printed at one go, both times: the pages of one load of paper, in the order
    of their leaves.
    """
    if comes_out is ComesOut.FACE_UP:
        return [page for run in runs for page in run]
    return [page for run in runs for page in reversed(run)]
