"""Arithmetic, as teachers write it: what a prompt asks for and whether the answer is right.

Nothing is ever run: a small grammar reads numbers and signs, and what it does not know, it leaves.
"""

from cards.checking.sums.wrong import wrong_sum

__all__ = ["wrong_sum"]
