"""The language of the content, as teachers write it and as a PDF says it (RFC 5646).

ISO 32000-1, 14.9.2, names RFC 3066, which it has replaced; both are BCP 47 of their day.
"""

import difflib
import re
import unicodedata
from functools import cache

from cards.languages import LANGUAGES

ENGLISH = "en"

LONGEST_TAG = 35
"""Enough for any tag without extensions (RFC 5646, section 4.4.1)."""

NAMES = tuple(names.partition(",")[0] for names in LANGUAGES.values())
"""What the languages of the table are called in English."""

TWO_LETTERS = (
    "aa ab ae af ak am an ar as av ay az ba be bg bi bm bn bo br bs ca ce ch co cr cs cu cv cy "
    "da de dv dz ee el en eo es et eu fa ff fi fj fo fr fy ga gd gl gn gu gv ha he hi ho hr ht "
    "hu hy hz ia id ie ig ii ik io is it iu ja jv ka kg ki kj kk kl km kn ko kr ks ku kv kw ky "
    "la lb lg li ln lo lt lu lv mg mh mi mk ml mn mr ms mt my na nb nd ne ng nl nn no nr nv ny "
    "oc oj om or os pa pi pl ps pt qu rm rn ro ru rw sa sc sd se sg sh si sk sl sm sn so sq sr "
    "ss st su sv sw ta te tg th ti tk tl tn to tr ts tt tw ty ug uk ur uz ve vi vo wa wo xh yi "
    "yo za zh zu"
)
"""The codes of ISO 639-1. Others of two letters, as sp and jp, are slips of the pen."""

# RFC 5646, section 2.1, without what is no help to a reader: reserved lengths of the first part,
# tags of private use alone, and tags from before the standard. Compiled where it is first used:
# that takes longer than all else here, and most decks have no use for it.
_TAG = (
    r"[a-z]{2,3}(?:-[a-z]{3}){0,3}"
    r"(?:-[a-z]{4})?"
    r"(?:-(?:[a-z]{2}|[0-9]{3}))?"
    r"(?:-(?:[a-z0-9]{5,8}|[0-9][a-z0-9]{3}))*"
    r"(?:-[a-wyz0-9](?:-[a-z0-9]{2,8})+)*"
    r"(?:-x(?:-[a-z0-9]{1,8})+)?"
)
# "Frensh" is .83 like "French"
_CLOSENESS = 0.8
_REGION, _OF_THREE, _SCRIPT = 2, 3, 4


def read_language(text: str) -> str | None:
    """Return the tag of a language that is called by a name or a tag, or None for neither."""
    if len(text) > 2 * LONGEST_TAG:
        return None
    return _codes().get(_bare(text)) or tag_of(text.strip())


def tag_of(text: str) -> str | None:
    """Return a tag in the letters that are usual (RFC 5646, section 2.1.1), or None for no tag."""
    if text in LANGUAGES:
        return text
    tag = text.lower()
    # beyond ASCII some letters have a lower case within it
    if not text.isascii() or len(tag) > LONGEST_TAG or not re.fullmatch(_TAG, tag):
        return None
    first, *parts = tag.split("-")
    if len(first) < _OF_THREE and first not in TWO_LETTERS.split():
        return None
    return "-".join([first, *_usual(parts)])


def near_language(text: str) -> str | None:
    """Return the language that a text which cannot be read was probably to name, or None."""
    if len(text) > 2 * LONGEST_TAG:
        return None
    if tag := tag_of(re.sub("[_‐‑–]", "-", text.strip())):
        return tag
    # as in "Spanish (Mexico)"
    named = _bare(text.partition("(")[0])
    near = difflib.get_close_matches(named, _shown(), n=1, cutoff=_CLOSENESS)
    return _shown()[near[0]] if near else None


def _usual(parts: list[str]) -> list[str]:
    """Return the later parts of a tag: regions and scripts stand out, up to the first extension."""
    singles = [number for number, part in enumerate(parts) if len(part) == 1]
    end = singles[0] if singles else len(parts)
    cased = {_REGION: str.upper, _SCRIPT: str.capitalize}
    return [cased.get(len(part), str)(part) for part in parts[:end]] + parts[end:]


def _bare(text: str) -> str:
    parted = unicodedata.normalize("NFKD", text).casefold()
    return "".join(letter for letter in parted if letter.isalnum())


@cache
def _shown() -> dict[str, str]:
    names = (name.strip() for names in LANGUAGES.values() for name in names.split(","))
    return {_bare(name): name for name in names}


@cache
def _codes() -> dict[str, str]:
    return {_bare(name): code for code, names in LANGUAGES.items() for name in names.split(",")}
