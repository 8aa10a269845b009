"""Every setting, and how a recipe comes from the Deck sheet, the command line and the defaults."""

from decks.settings.resolving import cell_of, read_option, resolve
from decks.settings.setting import Setting, UsageError
from decks.settings.table import SETTINGS

__all__ = [
    "SETTINGS",
    "Setting",
    "UsageError",
    "cell_of",
    "read_option",
    "resolve",
]
