"""What can be printed, how wide a text is, and how high its letters are.

Plain Latin, Greek and Cyrillic are set in Fira Sans letter by letter. Whatever else a text holds is
shaped, and only then are the other faces loaded, and what shapes them.
"""

import unicodedata
from functools import lru_cache

from decks.layout.runs import Run
from decks.press.type import plain


@lru_cache(maxsize=32768)
def measure(text: str, strong: bool = False) -> float:  # noqa: FBT001, FBT002 (it is a Measure)
    """Return the width of a text in ems."""
    if plain.is_plain(text):
        return plain.width_of(text, strong=strong)
    from decks.press.script.shaping import width_of  # noqa: PLC0415 (loaded when it is needed)

    return width_of((Run(text, strong),))


def letter_height(text: str, strong: bool = False) -> float:  # noqa: FBT001, FBT002 (as measure)
    """Return how high the letters are, in ems, that must be made out to read a text.

    It is the least over the faces that set the text. In Fira Sans and other faces with capitals it
    is the height of x where there are small letters, else that of H; in a script without capitals
    it is the height of a plain letter. All are measured in the very font.
    """
    if plain.is_plain(text.replace("\n", "")):
        small = any(map(str.islower, text))
        return plain.top_of("x" if small else "H", strong=strong)
    from decks.press.script.heights import least_height  # noqa: PLC0415 (loaded when it is needed)

    return least_height(text, strong=strong)


def unprintable(text: str) -> list[str]:
    """Return the characters of a text that no face has a letter for, in order, each once."""
    composed = unicodedata.normalize("NFC", text)
    if plain.is_plain(composed.replace("\n", "")):
        return []
    from decks.press.script.spelling import spelt  # noqa: PLC0415 (loaded when it is needed)

    return list(dict.fromkeys(c for c in composed if spelt(c) is None))
