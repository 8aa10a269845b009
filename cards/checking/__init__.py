"""Checking: content becomes findings."""

from cards.checking.check import check, sound_items

__all__ = ["check", "sound_items"]
