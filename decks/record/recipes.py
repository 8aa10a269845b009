"""The recipe of a record, and its teams."""

import re
from collections.abc import Iterator, Mapping
from functools import partial
from typing import Any

from decks.languages import tag_of
from decks.lengths import (
    LEAST_CARD,
    LEAST_DISTANCE,
    MOST_BLEED,
    MOST_CARD,
    MOST_DISTANCE,
    MOST_MARGIN,
    CardMeasure,
)
from decks.printers import MOST_OFF, MOST_SKEW
from decks.recipe import Recipe
from decks.record.damage import WrongValueError
from decks.record.values import each, made, number, part
from decks.team import MOST_TEAMS, TEXTURES, Team

_ROUNDING = 1e-6


def teams_read(record: object) -> tuple[Team, ...]:
    """Return teams that can be told by their names, colours and textures.

    Raises `WrongValueError` where there are none, too many, or two of one name.
    """
    teams = tuple(each(record, _team))
    names = {team.name for team in teams}
    if not teams or len(teams) > MOST_TEAMS or len(names) < len(teams):
        raise WrongValueError(record)
    return teams


def _team(record: object) -> Team:
    team = made(Team, record)
    if not re.fullmatch("#[0-9A-Fa-f]{6}", team.colour) or team.texture not in TEXTURES:
        raise WrongValueError(record)
    return team


def recipe_read(record: Mapping[str, Any]) -> Recipe:
    """Return the recipe, with a language and lengths that a page can be made of."""
    teams = part(record, "teams", teams_read)
    return part(record, "recipe", lambda given: _checked(made(Recipe, given, teams=teams)))


def _checked(recipe: Recipe) -> Recipe:
    for name, length, least, most in _lengths(recipe):
        part({name: length}, name, partial(number, least=least, most=most))
    part({"language": recipe.language}, "language", _tag)
    return recipe


def _tag(value: str) -> str:
    if tag_of(value) != value:
        raise WrongValueError(value)
    return value


def _lengths(recipe: Recipe) -> Iterator[tuple[str, float, float, float]]:
    """Yield each length of a recipe by its field, with the least and the most that it can be."""
    margins, shift, size = recipe.margins, recipe.shift, recipe.card_size
    for margin in (margins.top, margins.right, margins.bottom, margins.left):
        yield "margins", margin, 0, MOST_MARGIN
    yield "bleed", recipe.bleed, 0, MOST_BLEED
    yield "read_from", recipe.read_from, LEAST_DISTANCE, MOST_DISTANCE
    for length, most in ((shift.right, MOST_OFF), (shift.up, MOST_OFF), (shift.skew, MOST_SKEW)):
        yield "shift", length, -most - _ROUNDING, most + _ROUNDING
    if isinstance(size, CardMeasure):
        for side in (size.width, size.height):
            yield "card_size", side, LEAST_CARD, MOST_CARD
