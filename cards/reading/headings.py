"""What a heading means, however it is worded."""

import re
import unicodedata
from collections.abc import Collection, Mapping
from functools import lru_cache

from cards.content import Cell
from cards.reading.near import near_miss
from cards.reading.role import Role
from cards.reading.wordings import HEADINGS

# A heading this much like a known one is taken for it, and said so. "Anwser" is .83 like "answer".
_CLOSENESS = 0.8
_BRACKETED = re.compile(r"\([^()]*\)|\[[^\[\]]*\]")
# What is longer says something itself.
_LONGEST = 60
_NUMBERED = re.compile(r"(?<=[^\W\d])\d+$")
_NUMBER_BEFORE = re.compile(r"\A\(?\d{1,2}[.)]\s*(?=[^\W\d_])")


def key(text: str) -> str:
    """Return a heading as it is compared: no case, accents, spaces, marks, or text in brackets."""
    bare = _BRACKETED.sub("", text)
    # “[Question]” is in brackets itself
    return "".join(filter(str.isalnum, unaccented(bare if bare.strip() else text)))


def unaccented(text: str) -> str:
    """Return a text without case, accents, and blanks at its ends."""
    parted = unicodedata.normalize("NFKD", text).casefold().strip()
    if parted.isascii():
        return parted
    return "".join(character for character in parted if not unicodedata.combining(character))


def keys_of(words: str) -> tuple[str, ...]:
    """Return wordings that commas part, each as it is compared."""
    return tuple(key(word) for word in words.split(","))


def is_among(text: str, forms: Collection[str]) -> bool:
    """Say whether a heading, or that of which it is the plural, is among those of `keys_of`."""
    bare = key(text)
    return bare in forms or bare.removesuffix("s") in forms


_ROLES = {
    form: role
    for wordings in HEADINGS.values()
    for role, words in wordings.items()
    for form in keys_of(words)
}


def role_of(text: str) -> Role | None:
    """Return what a heading means, or None if it is not known. Plurals and numbers are accepted.

    A number may stand before a heading, as in `1. Prompt`, or behind it.
    """
    if len(text) > _LONGEST:
        return None
    bare = key(_NUMBER_BEFORE.sub("", text.lstrip()))
    for form in (bare, bare.removesuffix("s"), _NUMBERED.sub("", bare).removesuffix("s")):
        if form in _ROLES:
            return _ROLES[form]
    return None


def roles_in(cells: Mapping[int, Cell]) -> dict[int, Role]:
    """Return what the headings that are known among some cells mean."""
    return {place: role for place, cell in cells.items() if (role := role_of(cell.text))}


def misspelt_role_of(text: str, roles: Collection[Role]) -> Role | None:
    """Return which of the roles a misspelt heading probably means: first letters must agree."""
    if len(text) > _LONGEST:
        return None
    bare = key(text)
    known = [form for form in _beginning_with(bare[:1]) if _ROLES[form] in roles]
    swapped = (form for form in known if sorted(form) == sorted(bare))
    near = next(swapped, None) or near_miss(bare, known, closeness=_CLOSENESS)
    return _ROLES[near] if near else None


@lru_cache(maxsize=64)
def _beginning_with(letter: str) -> tuple[str, ...]:
    return tuple(form for form in _ROLES if form[0] == letter and len(form) > 1)
