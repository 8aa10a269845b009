"""Words that stay on one line: a number with its unit, a date, a reference, initials and a name."""

import re

NUMBER = re.compile(r"[(\[“‘~≈<>≤≥±+−–-]*[£$€¥₹]?\d[\d.,:/⁄×\u00a0–-]*(?<![,:])[%‰°]?")
GROUP = re.compile(r"[(\[£$€¥+−-]*\d{1,3}")
NEXT_GROUP = re.compile(r"\d{3}(?:[.,]\d+)?")
DAY = re.compile(r"\(?(?:[12]?\d|3[01])(?:st|nd|rd|th)?")
REFERRED = re.compile(r"\d+(?:[a-z]|[–-]\d+|\.\d+)*|[IVXLC]+|[A-Z]")
INITIALS = re.compile(r"\(?(?:[A-Z]\.-?)+")
ROMAN = re.compile(r"[IVX]{2,}")
EXPONENT = re.compile(r"[⁻−-]?[\d⁰¹²³⁴⁵⁶⁷⁸⁹]$|²|³|⁻¹")


def word_set(words: str) -> frozenset[str]:
    """Return the words of a list that is written as one text."""
    return frozenset(words.split())


UNITS = word_set(
    "km hm dam m dm cm mm µm μm nm mi yd ft in ha ac kg g mg µg μg t lb oz st l L dl dL cl cL "
    "ml mL gal qt pt d h min s sec ms hr hrs ° °C °F C F K J kJ MJ N kN Pa hPa kPa bar mbar W "
    "kW MW GW V kV A mA Ω kΩ Hz kHz MHz GHz kW·h kWh mol cal kcal cd lm lx dB B kB MB GB TB "
    "mph km/h kph fps % ‰ € £ $ ¥ c p ct pp AD BC CE BCE am pm a.m p.m AM PM o’clock o'clock "
    "metres meters litres liters grams degrees percent dozen hundred thousand million billion "
    "trillion"
)
"""Signs of the SI and of everyday measure, money, times and eras; written as they are written."""

MONTHS = word_set(
    "January February March April May June July August September October November December "
    "Jan Feb Mar Apr Jun Jul Aug Sep Sept Oct Nov Dec"
)
REFERENCES = word_set(
    "no nos nr page pages p pp chapter ch figure fig figs table part unit step question exercise "
    "section lesson level line lines verse volume vol act scene grade year class room week day "
    "stage type group zone map number equation eq appendix box set round card station § ad"
)
TITLES = word_set("Mr Mrs Ms Dr St Mt Prof Sir Dame Lord Lady King Queen Saint Lake Mount")

TRAILING = ".,;:?!…)]”’\"'"


def is_held(left: str, right: str) -> bool:
    """Return whether two neighbouring words belong on one line."""
    core = right.rstrip(TRAILING)
    return (
        (_is_number(left) and _is_unit(core))
        or (GROUP.fullmatch(left) is not None and NEXT_GROUP.fullmatch(core) is not None)
        or _is_date(left, core)
        or _is_reference(left, core)
        or _is_name(left, core)
    )


def _is_number(word: str) -> bool:
    """Return whether a word is a number, or asks for one, as in `250 mL + 1 L = ? mL`."""
    return word == "?" or NUMBER.fullmatch(word) is not None


def _is_unit(word: str) -> bool:
    """Return whether a word is a unit, or units multiplied and divided: `m/s²`, `kg·m³`."""
    if word in UNITS:
        return True
    parts = re.split(r"[/·]", word)
    return all(EXPONENT.sub("", part) in UNITS for part in parts)


def _is_date(left: str, right: str) -> bool:
    month = left.strip("(").rstrip(".")
    return (DAY.fullmatch(left) is not None and right in MONTHS) or (
        month in MONTHS and DAY.fullmatch(right) is not None
    )


def _is_reference(left: str, right: str) -> bool:
    word = left.strip("([“‘").rstrip(".").casefold()
    return word in REFERENCES and REFERRED.fullmatch(right) is not None


def _is_name(left: str, right: str) -> bool:
    """Return whether initials or a title stand before a name, or a numeral behind it."""
    if not right[:1].isupper():
        return False
    return (
        INITIALS.fullmatch(left) is not None
        or left.strip("(").rstrip(".") in TITLES
        or (left[:1].isupper() and ROMAN.fullmatch(right) is not None)
    )
