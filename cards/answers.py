"""What an item asks and what is right there, as items are compared."""

from cards.indents import indents
from cards.item import Item, folded
from cards.raised import written_out

LONGEST_SYMBOL = 3
_ROUND_WORDS = "?!.,;:…()[]{}'\"“”‘’«»+-−"
_SMALL_WORDS = (
    "am an as at be by do dr go he hi if in is it me mr ms mt my no of oh on or so st to up us we "
    "de du el en et la le ou un"
)
_COMMON = frozenset(_SMALL_WORDS.split())


def asked(item: Item) -> str:
    """Return what tells an item's prompt from others: its text, as it prints, and its picture."""
    prompt = as_meant(written_out(item.prompt, item.prompt_spans))
    return f"{prompt}\0{indents(item.prompt)}\0{item.image.digest if item.image else ''}"


def answered(item: Item) -> str:
    """Return what tells an item's answer from others."""
    return as_meant(written_out(item.answer, item.answer_spans))


def accepted(item: Item) -> frozenset[str]:
    """Return every text that is right where an item's prompt stands, as it is compared."""
    return frozenset((answered(item), *map(as_meant, item.also_right)))


def as_meant(text: str) -> str:
    """Return a text as answers are compared: equal where they are the same answer.

    Capitals tell symbols of up to three letters apart, as Co from CO, mW from MW and a from A; Sun,
    SUN and sun are one word, and so are Polish and polish.
    """
    words = text.replace("/", " ").split()
    capitals = [(n, word) for n, word in enumerate(words, start=1) if word != word.casefold()]
    symbols = [
        f"\0{n}{word}"
        for n, word in capitals
        if _is_symbol(word.strip(_ROUND_WORDS), last=n == len(words))
    ]
    return "".join((folded(text), *symbols))


def _is_symbol(word: str, *, last: bool) -> bool:
    """Say whether a word with capitals is a symbol: no article, no other small word, no name."""
    if not word.isalpha() or len(word) > LONGEST_SYMBOL:
        return False
    if word == "A":
        return last  # as an article it has a word after it
    if len(word) < LONGEST_SYMBOL:
        return word.casefold() not in _COMMON
    return not (word.islower() or word.istitle() or word.isupper())
