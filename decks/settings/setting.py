"""What a setting is."""

from collections.abc import Callable
from enum import StrEnum

from msgspec import Struct

from cards.finding import FairdealError
from decks.settings.values import choice_of
from decks.words import listed


class UsageError(FairdealError):
    """A choice on the command line that cannot be."""


def none_near(_text: str) -> None:
    """Suggest nothing."""


class Setting(Struct, frozen=True):
    """One setting: its name on the Deck sheet, its key here and how its value is read.

    `read` returns the value, or None for a text that is none. `what` says in a sentence, without
    its full stop, what the setting is for. `choices` are the values that can be picked from
    a list, if there are few enough. `default` is the value that a Deck sheet may start with and
    still mean what a blank would: blank where that depends on other settings. `near` returns
    what a text that cannot be read was probably to be, or None.
    """

    name: str
    key: str
    expects: str
    read: Callable[[str], object | None]
    what: str
    choices: tuple[str, ...] = ()
    default: str = ""
    near: Callable[[str], str | None] = none_near

    @property
    def option(self) -> str:
        """The setting's name on the command line."""
        return "--size" if self.key == "card_size" else f"--{self.key.replace('_', '-')}"

    def meant(self, text: str) -> str:
        """Return a question after the value that was probably meant, or nothing if none is near."""
        near = self.near(text)
        return f"Did you mean {near}?" if near else ""


def one_of(
    name: str, key: str, values: type[StrEnum], what: str, default: StrEnum | None = None
) -> Setting:
    """Return a setting that can be one of some words."""
    choices = tuple(value.value for value in values)
    first = default.value if default else ""
    return Setting(name, key, listed(choices), choice_of(values), what, choices, first)
