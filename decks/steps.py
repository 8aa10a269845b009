"""The steps of a run, for whoever wants to hear of them."""

from collections.abc import Callable

Tell = Callable[[str], None]
"""What hears of every step of a run: a few plain words, as “Dealing 24 cards”."""


def unheard(_step: str) -> None:
    """Hear of a step where nobody is to be told."""
