"""What a blank workbook offers to pick from; whoever makes decks says what there is."""

from collections.abc import Mapping

from msgspec import Struct


class SettingOffer(Struct, frozen=True):
    """A row of the Deck sheet: its name and first value, what it is for, and what it can be.

    `choices` are the values to pick from, `expects` says in words what can be written.
    """

    name: str
    value: str
    what: str
    expects: str
    choices: tuple[str, ...]


class Offers(Struct, frozen=True):
    """The settings, the colour words with their `#RRGGBB`, and the largest number of teams."""

    settings: tuple[SettingOffer, ...]
    colours: Mapping[str, str]
    most_teams: int
