"""One thing for the teacher to do."""

from enum import StrEnum

from msgspec import Struct


class Shown(StrEnum):
    """What is drawn with a step."""

    NOTHING = ""
    LOADS = "what to load for each team"
    CAUTION = "the caution at the paper cutter"
    PLANS = "how to cut, and where the piles lie"
    LEAVES = "which leaves are whose"


class Step(Struct, frozen=True):
    """A title of a few words, how it is done, and what is drawn with it."""

    title: str
    text: str
    shown: Shown = Shown.NOTHING
