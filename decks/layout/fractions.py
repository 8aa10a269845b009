"""Fractions built of a raised numerator, a fraction slash and a low denominator."""

import re

from msgspec.structs import replace

from cards.style import Span, Spans, TextStyle
from decks.layout.runs import Styled
from decks.recipe import Fractions

SLASH = "\N{FRACTION SLASH}"
TIE = "\N{NO-BREAK SPACE}"
FRACTION = re.compile(rf"(?<!\d)([0-9]{{1,3}})[/{SLASH}]([0-9]{{1,3}})(?!\d)")
ROUND_THE_CLOCK = "24/7"

CHAINED = re.compile(rf"\d[/{SLASH}]\d{{1,3}}[-–−]$")
"""A fraction and a minus before another: `3/4-1/2`; else a figure and a dash begin a range."""


def with_fractions(styled: Styled, fractions: Fractions) -> Styled:
    """Return the text with its fractions built where that was asked for; else as it is.

    `3/4`, `-2/5` and `1 1/2` are fractions, up to three figures in each part. Dates (3/4/2025),
    years (2019/20), units (km/h, 3/s), addresses and `24/7` are not. A fraction in letters that are
    raised or lowered already stays as typed. The text keeps its length; copied out it is `3⁄4`,
    with U+2044, and `1 1⁄2` with a no-break space.
    """
    if fractions is Fractions.PLAIN or not re.search(rf"[/{SLASH}]", styled.text):
        return styled
    for found in FRACTION.finditer(styled.text):
        if _is_fraction(styled, found):
            styled = _built(styled, found)
    return styled


def _is_fraction(styled: Styled, found: re.Match[str]) -> bool:
    text, start, end = styled.text, found.start(), found.end()
    token = re.search(r"\S*$", text[:start])
    shifted = {s.style for s in styled.spans if s.start < end and s.end > start} - {TextStyle.BOLD}
    return (
        found[0] != ROUND_THE_CLOCK
        and int(found[2]) > 0
        and _is_free_before(text[:start])
        and re.match(rf"\w|[/{SLASH}°]|[.,:]\d|[-–]\d+(?![/{SLASH}\d])", text[end:]) is None
        and not (token and re.search(r"://|www\.|@|#|\?.*=", token[0]))
        and not shifted
    )


def _is_free_before(before: str) -> bool:
    """Return whether what stands right before a figure lets it begin a fraction."""
    if re.search(rf"[\w/{SLASH}.,:\\]$", before):
        return False
    return not re.search(r"\w[-–−]$", before) or bool(CHAINED.search(before))


def _built(styled: Styled, found: re.Match[str]) -> Styled:
    """Return the text with one fraction built; a whole number before it is tied to it."""
    top, foot = found.span(1), found.span(2)
    text = f"{styled.text[: top[1]]}{SLASH}{styled.text[foot[0] :]}"
    if _is_mixed(text[: top[0]], found):
        # the space is set small, as part of the numerator
        top = top[0] - 1, top[1]
        text = f"{text[: top[0]]}{TIE}{text[top[0] + 1 :]}"
    parts = Span(*top, TextStyle.NUMERATOR), Span(*foot, TextStyle.DENOMINATOR)
    spans = sorted((*_cut_out(styled.spans, top[0], foot[1]), *parts))
    return replace(styled, text=text, spans=tuple(spans))


def _is_mixed(before: str, found: re.Match[str]) -> bool:
    proper = int(found[1]) < int(found[2])
    return proper and re.search(rf"(?<![\w/{SLASH}.,:])[0-9]{{1,3}}[ {TIE}]$", before) is not None


def _cut_out(spans: Spans, start: int, end: int) -> list[Span]:
    """Return the spans without what lies between two places."""
    left = [replace(span, end=min(span.end, start)) for span in spans if span.start < start]
    right = [replace(span, start=max(span.start, end)) for span in spans if span.end > end]
    return [*left, *right]
