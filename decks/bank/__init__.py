"""Word banks: what a study guide offers, what its blanks accept, and what guessing earns."""

from decks.bank.guide import Guide, GuidePart, make_guide
from decks.bank.hints import hint_of
from decks.bank.pool import Pool
from decks.bank.soundness import findings_about, has_one_word_each, is_sound, swappable
from decks.bank.wording import directions, noun_of

__all__ = [
    "Guide",
    "GuidePart",
    "Pool",
    "directions",
    "findings_about",
    "has_one_word_each",
    "hint_of",
    "is_sound",
    "make_guide",
    "noun_of",
    "swappable",
]
