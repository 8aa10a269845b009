"""One thing for the teacher to do."""

from dataclasses import dataclass
from enum import StrEnum


class Shown(StrEnum):
    """What is drawn with a step."""

    NOTHING = ""
    LOADS = "what to load for each team"
    CAUTION = "the caution at the paper cutter"
    PLANS = "how to cut, and where the piles lie"
    LEAVES = "which leaves are whose"


@dataclass(frozen=True, slots=True)
class Step:
    """A title of a few words, how it is done, and what is drawn with it."""

    title: str
    text: str
    shown: Shown = Shown.NOTHING
