"""Who plays, and how a team is told: by name, by colour and by texture."""

import re
from collections.abc import Sequence
from functools import cache

from msgspec import Struct

from cards.item import folded
from decks.colour import choose, difference, lab

COLOURS = {
    "blue": "#03448C",
    "orange": "#F76716",
    "green": "#107A4E",
    "yellow": "#ECB706",
    "purple": "#7E52C0",
    "sky": "#009BEE",
    "red": "#C92944",
    "pink": "#D272B3",
    "teal": "#0C8E94",
    "brown": "#6B3606",
    "grey": "#66676C",
    "black": "#20222A",
    "lime": "#6EA02B",
}
"""Colour words and their inks, in the order in which teams are given them.

Each is told from each of the others with every kind of colour vision (`colour.apart`), but for
orange and lime; the first four, and black, also from each other when copied in grey. All but
yellow have 3:1 on white paper (WCAG 2.2, for marks): a yellow that dark is a brown.
"""

WHITE = "#FFFFFF"

WORDS = COLOURS | {"white": WHITE}
"""All colour words; white is for a team's stock, not for its ink."""

OTHER_WORDS = {
    "gray": "grey",
    "violet": "purple",
    "light blue": "sky",
    "sky blue": "sky",
    "dark blue": "blue",
    "navy": "blue",
    "light green": "lime",
    "dark green": "green",
    "turquoise": "teal",
    "gold": "yellow",
    "silver": "grey",
}

SHADES = (
    *WORDS.items(),
    *(("blue", "#0000FF"), ("blue", "#000080"), ("blue", "#4169E1"), ("sky", "#87CEEB")),
    *(("red", "#FF0000"), ("red", "#800000"), ("orange", "#FFA500"), ("yellow", "#FFFF00")),
    *(("green", "#008000"), ("lime", "#00FF00"), ("lime", "#90EE90"), ("teal", "#40E0D0")),
    *(("purple", "#800080"), ("purple", "#EE82EE"), ("pink", "#FF69B4"), ("pink", "#FFC0CB")),
    *(("brown", "#A52A2A"), ("brown", "#8B4513"), ("grey", "#C0C0C0"), ("black", "#000000")),
)
"""What our words mean in our inks and in the named colours of CSS Color 4, to name any code by."""

STOCK_WORDS = {"sky": "light blue", "lime": "light green", "teal": "turquoise"}
"""What a paper shelf calls a colour, where that is another word than ours."""

DARK_STOCK = "black"
"""Paper on which print cannot be read; brown paper is as light as parcels are wrapped in."""

STOCK = [word for word in WORDS if word != DARK_STOCK]

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
    "shells",
    "steps",
)

MOST_TEAMS = len(TEXTURES)


class Team(Struct, frozen=True):
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
    return WORDS.get(word)


def colour_word(colour: str) -> str:
    """Return the colour word for what `#RRGGBB` looks like; white is one of them."""
    by_ink = {ink: word for word, ink in WORDS.items()}
    return by_ink.get(colour) or _nearest_word(colour)


@cache
def _nearest_word(colour: str) -> str:
    own = lab(colour)
    word, _ = min(SHADES, key=lambda shade: difference(lab(shade[1]), own))
    return word


def stock_name(team: Team) -> str:
    """Return what a paper shelf calls the team's colour: `blue`, `light green`, `white`.

    Colours that are near each other have one name, so two teams may get the same: a finding.
    """
    word = colour_word(team.colour)
    return STOCK_WORDS.get(word, word)


def make_teams(
    names: Sequence[str | None], colours: Sequence[str | None], *, on_stock: bool = False
) -> tuple[Team, ...]:
    """Return up to `MOST_TEAMS` teams: colours and names that are None are chosen.

    The colours are those that go best with each other and with those given; with `on_stock`, of
    those that a paper can have. A team without a name is called by its colour.
    """
    names, colours = names[:MOST_TEAMS], colours[:MOST_TEAMS]
    words = _free_words(names, colours, on_stock=on_stock)
    given = [colour for colour in colours if colour]
    chosen = iter(choose(colours.count(None), [WORDS[word] for word in words], given))
    inks = [colour or next(chosen) for colour in colours]
    return tuple(
        Team(name or colour_word(ink).capitalize(), ink, texture)
        for name, ink, texture in zip(names, inks, TEXTURES, strict=False)
    )


def _free_words(
    names: Sequence[str | None], colours: Sequence[str | None], *, on_stock: bool
) -> list[str]:
    """Return the words that no team is called by and no given colour is the ink of."""
    taken = {folded(name) for name in names if name}
    taken |= {colour_word(colour) for colour in colours if colour}
    return [word for word in (STOCK if on_stock else COLOURS) if word not in taken]
