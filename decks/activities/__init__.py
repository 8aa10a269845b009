"""Decks for each activity: what is asked, who owns the cards, and what else the lesson needs."""

from decks.activities.making import make_deck

__all__ = ["make_deck"]
