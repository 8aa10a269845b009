"""Decks: what is dealt, placed and printed."""
