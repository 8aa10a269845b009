"""The many signs and words for few operations, made one."""

import re
import unicodedata

from cards.item import folded
from cards.style import Spans, TextStyle

_WORDS = (
    (r"\b(?:multiplied by|times)\b", "×"),
    (r"\bdivided by\b", "÷"),
    (r"\bplus\b", "+"),
    (r"\b(?:minus|take away)\b", " - "),
    (r"\s*\b(?:squared)\b", "^2"),
    (r"\s*\b(?:cubed)\b", "^3"),
    (r"\s*\bto the power(?: of)?\b", "^"),
    (r"\b(?:the )?square root of\b", "√"),
    (r"\b(?:the )?cube root of\b", "∛"),
    (r"\s*\b(?:percent|per cent)\b", "%"),
    (r"^(?:double|twice) (?=[\d.,]+$)", "2 × "),
    (r"^(?:treble|triple) (?=[\d.,]+$)", "3 × "),
    (r"\b(?:a |one )?half of\b", "1/2 of"),
    (r"\b(?:a |one )?third of\b", "1/3 of"),
    (r"\btwo[- ]thirds of\b", "2/3 of"),
    (r"\b(?:a |one )?quarter of\b", "1/4 of"),
    (r"\bthree[- ]quarters of\b", "3/4 of"),
    (r"\b(?:a |one )?fifth of\b", "1/5 of"),
    (r"\b(?:a |one )?tenth of\b", "1/10 of"),
    (r"\b(?:the )?product of ([\d.,/]+) and ([\d.,/]+)", r"\1 × \2"),
    (r"\b(?:the )?sum of ([\d.,/]+) and ([\d.,/]+)", r"\1 + \2"),
)
_SPOKEN = tuple((re.compile(word), sign) for word, sign in _WORDS)
_ONE_SIGN = str.maketrans(
    {
        **dict.fromkeys("*∗·⋅•✕✖⨯", "×"),
        **dict.fromkeys("⁄∕", "/"),
        **dict.fromkeys("−–—‒‐‑﹣－", "-"),
        **dict.fromkeys("\u00a0\u2007\u2008\u2009\u202f", " "),
        "➗": "÷",
        "’": "'",
    }
)
_RAISED = str.maketrans("⁰¹²³⁴⁵⁶⁷⁸⁹⁻", "0123456789-")
_RAISED_RUN = re.compile("⁻?[⁰¹²³⁴⁵⁶⁷⁸⁹]+")
# an x is a sign only where it stands the same way to both sides: "2x - 3" has an unknown in it
_X = re.compile(r"(?<=[\d)])x(?=[\d(])|(?<=[\d)%] )x(?= [\d(√.-])")
# A colon in 10:15 - 9:45 divides nothing.
_TIMES = re.compile(r"\d{1,2}:[0-5]\d(?!\d) ?[-+]|[-+] ?\d{1,2}:[0-5]\d(?!\d)")
_COLON = re.compile(r"(?<=[\d)]) ?: ?(?=[\d(])")


def plain_signs(text: str) -> str:
    """Return the text in small letters, with one sign for each operation: + - × ÷ / ^ √ ∛ % of."""
    # the sign for a power goes first: folding would leave it, but a numeral must not swallow it
    text = _RAISED_RUN.sub(lambda found: f"^({found[0].translate(_RAISED)})", text)
    text = "".join(map(_written_out, folded(text.translate(_ONE_SIGN))))
    for word, sign in _SPOKEN:
        text = word.sub(sign, text)
    return _X.sub("×", " ".join(text.split()))


def on_one_line(text: str, spans: Spans) -> str:
    """Return a text with its raised letters as powers and its lowered ones as no arithmetic."""
    signs = {TextStyle.RAISED: "^", TextStyle.LOWERED: "_"}
    for span in sorted(spans, reverse=True):
        if sign := signs.get(span.style):
            inside = text[span.start : span.end]
            text = f"{text[: span.start]}{sign}({inside}){text[span.end :]}"
    return text


def with_colons(text: str) -> str:
    """Return the text with colons between numbers as signs of division, but for times of day."""
    return text if _TIMES.search(text) else _COLON.sub(" ÷ ", text)


def _written_out(character: str) -> str:
    """Return ½ as 1/2, parted from a whole number before it; all others as they are."""
    if unicodedata.decomposition(character).startswith("<fraction>"):
        return " " + unicodedata.normalize("NFKC", character).replace("⁄", "/")
    return character
