"""Which team gets which item, and how fair that is."""

from decks.dealing.copies import deal_copies
from decks.dealing.counts import tally
from decks.dealing.deal import Deal, Goal
from decks.dealing.shares import deal_shares
from decks.dealing.words import fairness_sentence

__all__ = ["Deal", "Goal", "deal_copies", "deal_shares", "fairness_sentence", "tally"]
