"""Which team gets which item, and how fair that is."""

from decks.dealing.copies import deal_copies
from decks.dealing.counts import tally
from decks.dealing.deal import CARDS, PAIRS, THOUSANDTHS, WORDS, Deal, Goal
from decks.dealing.loads import ShareOf, share_by_level
from decks.dealing.shares import deal_shares
from decks.dealing.words import chance_sentence, deal_warnings, fairness_sentence

__all__ = [
    "CARDS",
    "PAIRS",
    "THOUSANDTHS",
    "WORDS",
    "Deal",
    "Goal",
    "ShareOf",
    "chance_sentence",
    "deal_copies",
    "deal_shares",
    "deal_warnings",
    "fairness_sentence",
    "share_by_level",
    "tally",
]
