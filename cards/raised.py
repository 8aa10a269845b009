"""Raised and lowered letters written with signs of their own, where a text has no styles."""

from collections.abc import Iterator

from cards.style import Span, Spans, TextStyle

# Those that Unicode has and the cards' typefaces print.
_SIGNS = {
    TextStyle.RAISED: str.maketrans(
        "0123456789+-−=()abcdefghijklmnoprstuvwxyz",
        "⁰¹²³⁴⁵⁶⁷⁸⁹⁺⁻⁻⁼⁽⁾ᵃᵇᶜᵈᵉᶠᵍʰⁱʲᵏˡᵐⁿᵒᵖʳˢᵗᵘᵛʷˣʸᶻ",
    ),
    TextStyle.LOWERED: str.maketrans(
        "0123456789+-−=()aehijklmnoprstuvx",
        "₀₁₂₃₄₅₆₇₈₉₊₋₋₌₍₎ₐₑₕᵢⱼₖₗₘₙₒₚᵣₛₜᵤᵥₓ",
    ),
}
_MARKS = {TextStyle.RAISED: "^", TextStyle.LOWERED: "_"}


def written_out(text: str, spans: Spans) -> str:
    """Return a text with signs for its raised and lowered letters: `10²`.

    Letters without signs are told by a mark before them: `x^Q`, `v_B`.
    """
    if not spans:
        return text
    pieces, end = [], 0
    for span in _shifted(spans):
        letters = text[span.start : span.end]
        signs = letters.translate(_SIGNS[span.style])
        marked = signs if _is_whole(signs, letters) else f"{_MARKS[span.style]}{letters}"
        pieces += [text[end : span.start], marked]
        end = span.end
    return "".join((*pieces, text[end:]))


def in_signs(text: str, spans: Spans) -> str | None:
    """Return a text with signs for its raised and lowered letters, or None if one has no sign."""
    out = written_out(text, spans)
    # a mark makes a text longer, a sign does not
    return out if len(out) == len(text) else None


def _shifted(spans: Spans) -> Iterator[Span]:
    return (span for span in sorted(spans) if span.style in _SIGNS)


def _is_whole(signs: str, letters: str) -> bool:
    """Say whether every letter has got a sign; a blank needs none."""
    pairs = zip(signs, letters, strict=True)
    return all(sign != letter or letter.isspace() for sign, letter in pairs)
