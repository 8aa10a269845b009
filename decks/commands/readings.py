"""What a teacher read off the test page, from the command line."""

import re
from collections.abc import Mapping

from decks.commands.naming_printers import shown
from decks.printers import MOST_OFF, MOST_SKEW, Reading
from decks.recipe import Flip
from decks.settings import UsageError

LONGEST_NAME = 60
ROUNDING = 1e-9


def reading_of(numbers: Mapping[str, str], flip: Flip) -> Reading:
    """Return a reading from the texts given with `--right`, `--up` and `--foot` or `--skew`.

    Raises `UsageError` for what is no such number, or farther off than can be mended.
    """
    if not {"--right", "--up"} <= set(numbers):
        raise UsageError("--set needs both numbers from the head of the page: --right and --up.")
    if {"--foot", "--skew"} <= set(numbers):
        raise UsageError("--foot and --skew say the same: give one of them.")
    read = {option: _number(option, text) for option, text in numbers.items()}
    right = read["--right"]
    skew = right - read["--foot"] if "--foot" in read else read.get("--skew", 0.0)
    if abs(skew) > MOST_SKEW + ROUNDING or abs(right - skew) > MOST_OFF + ROUNDING:
        raise UsageError(
            f"Head and foot differ by {shown(abs(skew))} mm, and the foot is "
            f"{shown(abs(right - skew))} mm off: at most {MOST_SKEW:g} and {MOST_OFF:g} can be "
            "mended. Read the scales once more; if it is so, the printer pulls the paper in askew."
        )
    return Reading(right, read["--up"], round(skew, 3), flip)


def _number(option: str, text: str) -> float:
    """Read millimetres as teachers write them: with a point or a comma, a minus or a dash."""
    found = re.fullmatch(
        r"([+\-−–]?)([0-9]{1,4}(?:[.,][0-9]{1,3})?|[.,][0-9]{1,3})(?:\s*mm)?", text.strip()
    )
    if not found:
        raise UsageError(f"{option} {text}: this is a number of millimetres, as 1.2 or -0.8.")
    number = float(found[2].replace(",", ".")) * (-1 if found[1] in {"-", "−", "–"} else 1)
    if abs(number) > MOST_OFF:
        raise UsageError(
            f"{option} {text}: the scales end at {MOST_OFF:g} mm, and more cannot be mended. Was "
            "the page printed at actual size, and flipped on the edge that it names?"
        )
    return number + 0


def name_of(text: str) -> str:
    """Return a printer's name with single spaces. Raises `UsageError` for one that cannot be."""
    name = " ".join(text.split())
    if not name or len(name) > LONGEST_NAME or not name.isprintable():
        raise UsageError(
            f'A printer’s name is a short text, up to {LONGEST_NAME} letters: --set "Staff room"'
        )
    return name
