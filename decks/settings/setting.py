"""What a setting is."""

from collections.abc import Callable
from dataclasses import dataclass

from cards.finding import FairdealError


class UsageError(FairdealError):
    """A choice on the command line that cannot be."""


@dataclass(frozen=True, slots=True)
class Setting:
    """One setting: its name on the Deck sheet, its key here and how its value is read.

    `read` returns the value, or None for a text that is none. `what` says in a sentence, without
    its full stop, what the setting is for. `choices` are the values that can be picked from
    a list, if there are few enough. `default` is the value that a Deck sheet may start with and
    still mean what a blank would: blank where that depends on other settings.
    """

    name: str
    key: str
    expects: str
    read: Callable[[str], object | None]
    what: str
    choices: tuple[str, ...] = ()
    default: str = ""

    @property
    def option(self) -> str:
        """The setting's name on the command line."""
        return "--size" if self.key == "card_size" else f"--{self.key.replace('_', '-')}"
