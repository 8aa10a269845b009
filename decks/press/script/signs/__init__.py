"""Signs that hardly any face has, drawn by us: ticks, crosses, arrows, shapes, maths, notes."""

from collections.abc import Mapping
from types import MappingProxyType

from decks.press.script.signs.arrows import arrows, ticks
from decks.press.script.signs.maths import brackets, maths
from decks.press.script.signs.notes import notes
from decks.press.script.signs.shapes import shapes
from decks.press.script.signs.sign import Sign

SIGNS: Mapping[str, Sign] = MappingProxyType(
    {**ticks(), **arrows(), **maths(), **brackets(), **shapes(), **notes()}
)
"""The signs we draw where no face has them."""
