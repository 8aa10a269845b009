"""Plain, General and scientific numbers."""

from collections.abc import Sequence
from decimal import Decimal

from cards.reading.shown.digits import part_shown, places_in, rounded, whole_shown
from cards.reading.shown.format import Section
from cards.reading.shown.tokens import Mark, Token

# Beyond these a General number is shown with a power of ten.
_LARGEST_EXPONENT = 16
_SMALLEST_EXPONENT = -10


def number_shown(number: Decimal, section: Section) -> str:
    """Return a number, zero or more, in a section such as `#,##0.00`, `000` or `0%`."""
    whole, point, part = _around_point(section.tokens)
    percents = sum(token.mark is Mark.PERCENT for token in section.tokens)
    scale = 2 * percents - 3 * (_closing_commas(whole) + _closing_commas(part))
    number = number.scaleb(scale)
    before, after = rounded(number, places_in(part))
    grouped = _is_grouped(whole)
    return whole_shown(before, whole, grouped=grouped) + point + part_shown(after, part)


def scientific_shown(number: Decimal, section: Section) -> str:
    """Return a number, zero or more, in a section such as `0.00E+00`."""
    at = next(i for i, token in enumerate(section.tokens) if token.mark is Mark.EXPONENT)
    mantissa, tail = section.tokens[:at], section.tokens[at + 1 :]
    whole, point, part = _around_point(mantissa)
    power, before, after = _mantissa(number, max(places_in(whole), 1), places_in(part))
    sign = "-" if power < 0 else section.tokens[at].text[1].replace("-", "")
    digits = str(abs(power)).lstrip("0")
    shown = whole_shown(before, whole) + point + part_shown(after, part)
    return f"{shown}E{sign}{whole_shown(digits, tail)}"


def _mantissa(number: Decimal, step: int, places: int) -> tuple[int, str, str]:
    """Return the power of ten, a multiple of `step`, and the digits around the point."""
    power = number.adjusted() // step * step if number else 0
    before, after = rounded(number.scaleb(-power), places)
    if len(before) > step:
        power += step
        before, after = rounded(number.scaleb(-power), places)
    return power, before, after


def general_shown(number: Decimal, section: Section | None = None) -> str:
    """Return a number, zero or more, as General shows it: 15 significant digits at the most."""
    text = _general(number)
    if section is None:
        return text
    pieces = {Mark.GENERAL: text, Mark.TEXT: text, Mark.CONDITION: ""}
    return "".join(pieces.get(token.mark, token.text) for token in section.tokens)


def _general(number: Decimal) -> str:
    number = number.normalize()
    if not number:
        return "0"
    if _SMALLEST_EXPONENT < number.adjusted() < _LARGEST_EXPONENT:
        return f"{number:f}"
    digits = f"{number.scaleb(-number.adjusted()).normalize():f}"
    return f"{digits}E{number.adjusted():+03d}"


def _around_point(tokens: Sequence[Token]) -> tuple[Sequence[Token], str, Sequence[Token]]:
    for i, token in enumerate(tokens):
        if token.mark is Mark.POINT:
            return tokens[:i], ".", tokens[i + 1 :]
    return tokens, "", ()


def _closing_commas(tokens: Sequence[Token]) -> int:
    """Count the commas right after the last placeholder: each divides by a thousand."""
    last = max((i for i, token in enumerate(tokens) if token.mark is Mark.DIGIT), default=-1)
    count = 0
    for token in tokens[last + 1 :] if last >= 0 else ():
        if token.mark is not Mark.COMMA:
            break
        count += 1
    return count


def _is_grouped(tokens: Sequence[Token]) -> bool:
    """Say whether a comma stands between two placeholders."""
    places = [i for i, token in enumerate(tokens) if token.mark is Mark.DIGIT]
    if not places:
        return False
    return any(token.mark is Mark.COMMA for token in tokens[places[0] : places[-1]])
