"""What a prompt asks to be worked out."""

import re

from msgspec import Struct

from cards.checking.sums.signs import plain_signs, with_colons

_LEAD = re.compile(
    r"^(?:(?:what|how much) (?:is|are|does|do|makes?)|what's|whats|calculate|compute|work out|find|"
    r"evaluate|simplify|solve|cuánto es|¿cuánto es|¿cuánto son|calcula|was ist|wie viel ist|"
    r"berechne|rechne|combien font|calcule|calculez|quanto é|quanto são|round)\b:? *"
)
_TAIL = re.compile(r"(?: *(?:\bequals?\b|\bmakes?\b|\bequal to|\?|!|:|\.))+$")
# 3! is 6, whatever else may be meant
_FACTORIAL = re.compile(r"[\d)] ?!")
_BLANK = re.compile(r"_+|\.{2,}|…|□|☐|⬜|\[ *\]|\( *\)")
_TO = r"(?:rounded |correct )?(?:to )?"
_ROUNDED = re.compile(
    rf",? *\(?{_TO}(?:the nearest (?:one|unit|whole number|ten|hundred|thousand|tenth|hundredth|"
    r"10|100|1,?000|0\.\d+)|(?:\d|one|two|three) ?(?:d\.? ?p\.?|s\.? ?f\.?|decimal places?|"
    r"significant (?:figures?|digits?)))\)?(?= *(?:$|[=?.,:]))"
)
# 1914-1918 is a time, 2026-11-25 a day, 3-5 a range and 3/4 a number: alone, they ask for nothing
_SPAN = re.compile(r"(\d+) ?- ?(\d+)")
_CHAIN = re.compile(r"\d+(?:-\d+){2,}")
_FRACTION = re.compile(r"(\d+) ?/ ?(\d+)")
BLANK = "□"


class Asked(Struct, frozen=True):
    """A sum: two sides, one of which is or has the blank; `rounded` says that digits may go."""

    left: str
    right: str
    rounded: bool

    @property
    def bare(self) -> str | None:
        """The side to be worked out where the other is the blank and nothing but that."""
        return next((one for one, other in self._both_ways() if other == BLANK), None)

    def _both_ways(self) -> tuple[tuple[str, str], tuple[str, str]]:
        return (self.left, self.right), (self.right, self.left)


def asked(prompt: str) -> Asked | None:
    """Return the sum that a prompt sets, in plain signs, or None if it sets none for certain."""
    if _FACTORIAL.search(prompt):
        return None
    text, led = _LEAD.subn("", plain_signs(prompt))
    text, rounded = _ROUNDED.subn("", text)
    if "=" in text or led:
        text = with_colons(text)
    sides = [_side(side) for side in text.split("=")]
    if len(sides) == 1:
        said = sides[0].removesuffix(BLANK).strip()
        certain = led or not _asks_nothing(said)
        return _sum(said, BLANK, rounded=bool(rounded)) if certain else None
    return _sum(*sides, rounded=bool(rounded)) if len(sides) == 2 else None  # noqa: PLR2004


def _side(text: str) -> str:
    """Return one side of a sum with its blank, which may be nothing or a question mark."""
    text = _BLANK.sub(f" {BLANK} ", text)
    text = re.sub(r"(?:^|(?<=[-+×÷/ ]))\?(?=$|[-+×÷/ ])", BLANK, text.strip())
    return " ".join(_TAIL.sub("", text).split()) or BLANK


def _sum(left: str, right: str, *, rounded: bool) -> Asked | None:
    blanks = left.count(BLANK) + right.count(BLANK)
    return Asked(left, right, rounded) if blanks == 1 and left != right else None


def _asks_nothing(text: str) -> bool:
    span, fraction = _SPAN.fullmatch(text), _FRACTION.fullmatch(text)
    if _CHAIN.fullmatch(text):
        return True
    if span:
        return int(span[1]) < int(span[2])
    if not fraction:
        return False
    above, below = map(int, fraction.groups())
    return not below or above % below > 0
