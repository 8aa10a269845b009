"""Word banks: what a study guide offers, what its blanks accept, and what guessing earns."""

from decks.bank.accepting import one_line
from decks.bank.guide import Guide, GuidePart, make_guide
from decks.bank.soundness import Swap, findings_about, has_one_word_each, is_sound, swappable
from decks.bank.wording import directions

__all__ = [
    "Guide",
    "GuidePart",
    "Swap",
    "directions",
    "findings_about",
    "has_one_word_each",
    "is_sound",
    "make_guide",
    "one_line",
    "swappable",
]
