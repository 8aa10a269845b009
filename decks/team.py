"""Who plays, and how a team is told: by name, by colour and by texture."""

import re
from dataclasses import dataclass

COLOURS = {
    "blue": "#0072B2",
    "orange": "#D55E00",
    "green": "#009E73",
    "yellow": "#E0B000",
    "purple": "#7A4FA3",
    "sky": "#56B4E9",
    "pink": "#CC79A7",
    "brown": "#7B4B2A",
    "teal": "#00777F",
    "red": "#B5173A",
    "lime": "#8DAE10",
    "grey": "#7D828C",
    "black": "#2B2F3A",
}
"""Colour words and their inks; the first four and sky and pink are those of Okabe & Ito (2008),
with a darker yellow that holds on white paper."""

OTHER_WORDS = {"gray": "grey", "violet": "purple", "light blue": "sky", "dark green": "teal"}

TEXTURES = (
    "slant",
    "dots",
    "waves",
    "bricks",
    "bars",
    "chevrons",
    "rings",
    "crosses",
    "lattice",
    "dashes",
    "scales",
    "steps",
)

MOST_TEAMS = len(TEXTURES)


@dataclass(frozen=True, slots=True)
class Team:
    """A team; `colour` is `#RRGGBB`, `texture` one of `TEXTURES`."""

    name: str
    colour: str
    texture: str


def colour_named(text: str) -> str | None:
    """Return the ink for a colour word or `#RRGGBB`, or None where the text is neither."""
    word = " ".join(text.casefold().split())
    word = OTHER_WORDS.get(word, word)
    if re.fullmatch(r"#[0-9a-f]{6}", word):
        return word.upper()
    return COLOURS.get(word)


def make_teams(names: list[str], colours: list[str | None]) -> tuple[Team, ...]:
    """Return one team for each name; a team without a colour gets the first that none has yet."""
    taken = {colour for colour in colours if colour}
    free = iter([ink for ink in COLOURS.values() if ink not in taken])
    return tuple(
        Team(name, colour or next(free), texture)
        for name, colour, texture in zip(names, colours, TEXTURES, strict=False)
    )


def default_names(count: int) -> list[str]:
    """Return names for teams that the teacher has not named: those of their colours."""
    return [word.capitalize() for word in list(COLOURS)[:count]]
