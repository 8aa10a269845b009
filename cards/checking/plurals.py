"""Whether an English word is one or many, where its ending tells."""

from cards.checking.words import word_set, words

_LEAST_LETTERS = 4
_NOT_PLURAL = ("ss", "us", "is", "ics", "as", "os", "ous", "'s")
_ONE_WITH_S = word_set(
    "news species series means measles mumps rickets rabies diabetes shingles hives scabies herpes "
    "molasses lens christmas thames draughts darts billiards skittles dominoes headquarters "
    "crossroads barracks gallows innings works mathematics scissors trousers binoculars tongs "
    "pliers glasses thanks aries pisces hercules mars faeces kudos ethos"
)
# endings of words for one thing among many; sand, water and silt end otherwise
_ONE = (
    *("ist", "ivore", "ephant", "brate", "mmal", "sect", "tile", "gon", "oid", "pod", "phyte"),
    *("cule", "ganism", "anet", "omet", "agnet", "ctron", "euron", "roton", "article", "orb"),
    *("eptor", "ctor", "dator", "ducer", "sumer", "poser", "feeder", "itant", "cian", "bian"),
    *("pool", "plant", "animal", "tree", "shell", "wing", "bone", "berg", "cano", "island"),
)


def is_plural(text: str) -> bool:
    """Say whether a text of small letters ends in a plural."""
    found = words(text)
    if not found or text != text.lower() or any(character.isdigit() for character in text):
        return False
    last = found[-1]
    if last in _ONE_WITH_S or len(last) < _LEAST_LETTERS or not last.isascii():
        return False
    return last.endswith("s") and not last.endswith(_NOT_PLURAL)


def is_one(text: str) -> bool:
    """Say whether a text of small letters is a word for one thing that can be counted."""
    found = words(text)
    return len(found) == 1 and text == text.lower() and found[0].endswith(_ONE)
