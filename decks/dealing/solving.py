"""Solving a program in whole numbers, by a library that is loaded only then."""

from decks.dealing.program import Outcome, Program


def solve(program: Program) -> Outcome:
    """Minimise the cost; nothing but the program decides on the outcome."""
    from decks.dealing import solver  # noqa: PLC0415 (heavy, and often not needed)

    return solver.solve(program)
