"""Fractions built of a raised numerator, a fraction slash and a low denominator."""

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterator, Sequence

from msgspec import Struct
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

_TAKEN = re.compile(rf"[\w/{SLASH}.,:\\]$")
_DASHED = re.compile(r"\w[-–−]$")
_RUN_ON = re.compile(rf"\w|[/{SLASH}°]|[.,:]\d|[-–]\d+(?![/{SLASH}\d])")
_TOKEN = re.compile(r"(?<!\S)\S*$")
_ADDRESS = re.compile(r"://|www\.|@|#|\?.*=")
_WHOLE = re.compile(rf"(?<![\w/{SLASH}.,:])[0-9]{{1,3}}[ {TIE}]\Z")
_LOOKED_BACK = 250
"""Letters before a fraction that an address may begin in: longer ones are seldom typed."""

_NEAR = 8
"""Letters before a fraction that all else is told from."""


class _Place(Struct, frozen=True):
    """Where a fraction stands: its numerator, with the space of a mixed number, and denominator."""

    top: Span
    foot: Span


def with_fractions(styled: Styled, fractions: Fractions) -> Styled:
    """Return the text with its fractions built where that was asked for; else as it is.

    `3/4`, `-2/5` and `1 1/2` are fractions, up to three figures in each part. Dates (3/4/2025),
    years (2019/20), units (km/h, 3/s), addresses and `24/7` are not. A fraction in letters that are
    raised or lowered already stays as typed. The text keeps its length; copied out it is `3⁄4`,
    with U+2044, and `1 1⁄2` with a no-break space.
    """
    if fractions is Fractions.PLAIN or not re.search(rf"[/{SLASH}]", styled.text):
        return styled
    places = list(_places(styled))
    return _built(styled, places) if places else styled


def _places(styled: Styled) -> Iterator[_Place]:
    shifted = sorted(span for span in styled.spans if span.style is not TextStyle.BOLD)
    for found in FRACTION.finditer(styled.text):
        before = _before(found, _NEAR)
        if _is_fraction(found, before) and not _is_within(shifted, found):
            yield _place(found, before)


def _before(found: re.Match[str], letters: int) -> str:
    return found.string[max(0, found.start() - letters) : found.start()]


def _is_fraction(found: re.Match[str], before: str) -> bool:
    return (
        found[0] != ROUND_THE_CLOCK
        and int(found[2]) > 0
        and _is_free_before(before)
        and not _RUN_ON.match(found.string, found.end())
        and not _is_in_address(found)
    )


def _is_in_address(found: re.Match[str]) -> bool:
    token = _TOKEN.search(_before(found, _LOOKED_BACK))
    return bool(token and _ADDRESS.search(token[0]))


def _is_free_before(before: str) -> bool:
    """Return whether what stands right before a figure lets it begin a fraction."""
    if _TAKEN.search(before):
        return False
    return not _DASHED.search(before) or bool(CHAINED.search(before))


def _is_within(spans: Sequence[Span], found: re.Match[str]) -> bool:
    """Return whether any of the spans, in their order, has letters of the fraction."""
    later = bisect_left(spans, found.end(), key=lambda span: span.start)
    return later > 0 and spans[later - 1].end > found.start()


def _place(found: re.Match[str], before: str) -> _Place:
    """Return where a fraction stands; the space before it, if it has a whole number, is its own."""
    proper = int(found[1]) < int(found[2])
    # the space is set small, as part of the numerator
    start = found.start() - bool(proper and _WHOLE.search(before))
    top = Span(start, found.end(1), TextStyle.NUMERATOR)
    return _Place(top, Span(*found.span(2), TextStyle.DENOMINATOR))


def _built(styled: Styled, places: Sequence[_Place]) -> Styled:
    """Return the text with its fractions built; a whole number before one is tied to it."""
    letters = list(styled.text)
    for place in places:
        letters[place.top.end] = SLASH
        if letters[place.top.start] == " ":
            letters[place.top.start] = TIE
    parts = [part for place in places for part in (place.top, place.foot)]
    spans = sorted((*_cut_out(styled.spans, places), *parts))
    return replace(styled, text="".join(letters), spans=tuple(spans))


def _cut_out(spans: Spans, places: Sequence[_Place]) -> Iterator[Span]:
    """Yield the spans without what lies in fractions."""
    for span in spans:
        at = span.start
        first = bisect_right(places, at, key=lambda place: place.foot.end)
        last = bisect_left(places, span.end, key=lambda place: place.top.start)
        for place in places[first:last]:
            if at < place.top.start:
                yield Span(at, place.top.start, span.style)
            at = place.foot.end
        if at < span.end:
            yield Span(at, span.end, span.style)
