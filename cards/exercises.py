"""The exercises that a blank workbook brings along, and that are done where it lists none."""

from collections.abc import Mapping
from typing import TypeAlias

Rows: TypeAlias = tuple[tuple[str, ...], ...]

EFFORTS = ("gentle", "moderate", "strong")
"""From the least effort to the most, as the Exercises sheet names them."""

EFFORT_WORDS: Mapping[str, str] = {
    "gentle": "gentle, light, easy, low, mild, 1",
    "moderate": "moderate, medium, middle, 2",
    "strong": "strong, vigorous, hard, high, intense, 3",
}
"""What teachers may write for them; light, moderate and vigorous are the compendium's words."""

_RANKS = {
    word.strip(): rank
    for rank, effort in enumerate(EFFORTS, start=1)
    for word in EFFORT_WORDS[effort].split(",")
}


def effort_called(text: str) -> int | None:
    """Return the rank of an effort from 1, the least, to 3, or None for a word not known."""
    return _RANKS.get(text.strip().casefold().removesuffix(".0"))


def rows(text: str) -> Rows:
    """Return a row for each line, whose cells are parted by upright bars."""
    return tuple(
        tuple(cell.strip() for cell in line.split("|")) for line in text.strip().splitlines()
    )


EXERCISES = rows("""
March on the spot | 20 steps | small steps; sitting: lift one heel, then the other | moderate
Circles with both arms | 8 each way | smaller circles; sitting: the same | gentle
Stand up, sit down | 8 times | hold the table; sitting: stretch one leg, then the other | moderate
Step wide and reach up | 12 times | reach as high as the shoulder; sitting: arms only | moderate
Rise onto your toes | 12 times | hold the table; sitting: lift both heels | gentle
Skip without a rope | 20 turns | no jump, lift the heels; sitting: turn the rope | strong
Lean to the wall, push away | 10 times | stand closer; sitting: press palm on palm | moderate
Run on the spot, knees high | 15 seconds | march; sitting: run with the arms | strong
Stand on one leg like a heron | 10 seconds each | a hand on the table; sitting: one foot up | gentle
Sidestep like a crab | 6 each way | small steps; sitting: tap a foot out and in | moderate
""")
"""A first list for a classroom. The effort is our own judgement: skipping and running stand well
above walking and strength exercises in the Youth Compendium (Butte et al. 2018)."""
