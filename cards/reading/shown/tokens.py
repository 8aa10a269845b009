"""A format code, read as a row of tokens."""

import re
from enum import Enum, auto

from msgspec import Struct


class Mark(Enum):
    """What a token of a format code stands for."""

    LITERAL = auto()
    DIGIT = auto()
    POINT = auto()
    COMMA = auto()
    PERCENT = auto()
    EXPONENT = auto()
    SLASH = auto()
    DENOMINATOR = auto()
    GENERAL = auto()
    TEXT = auto()
    DATE = auto()
    ELAPSED = auto()
    HALF_DAY = auto()
    CONDITION = auto()
    SECTION = auto()


class Token(Struct, frozen=True):
    """A piece of a format code: what it stands for, how it is written, and a language it sets."""

    mark: Mark
    text: str
    language: str = ""


# The order matters: the first that fits is taken.
_PIECES = (
    (Mark.GENERAL, r"General"),
    (Mark.LITERAL, r'"(?P<quoted>[^"]*)"?'),
    (Mark.LITERAL, r"\\(?P<escaped>.)"),
    (Mark.LITERAL, r"_(?P<skipped>.)"),
    (Mark.LITERAL, r"\*(?P<filled>.)"),
    (Mark.ELAPSED, r"\[(?P<elapsed>h+|m+|s+)\]"),
    (Mark.DATE, r"(?<=s\])\.0+"),
    (Mark.CONDITION, r"\[(?P<condition>(?:<=|>=|<>|<|>|=)-?\d+(?:\.\d+)?)\]"),
    (Mark.LITERAL, r"\[\$(?P<currency>[^\]-]*)(?:-(?P<language>[0-9A-F]{1,8}))?[^\]]*\]"),
    (Mark.LITERAL, r"\[(?P<colour>[^\]]*)\]"),
    (Mark.HALF_DAY, r"AM/PM|A/P"),
    (Mark.EXPONENT, r"E[+-]"),
    (Mark.DATE, r"y+|m+|d+|h+|s+(?:\.0+)?"),
    (Mark.DENOMINATOR, r"(?<=/)[1-9]\d*"),
    (Mark.DIGIT, r"[0#?]"),
    (Mark.POINT, r"\."),
    (Mark.COMMA, r","),
    (Mark.PERCENT, r"%"),
    (Mark.SLASH, r"/"),
    (Mark.TEXT, r"@"),
    (Mark.SECTION, r";"),
    (Mark.LITERAL, r"."),
)
_PIECE = "|".join(f"(?P<p{i}>{pattern})" for i, (_, pattern) in enumerate(_PIECES))
_INSIDES = ("quoted", "escaped", "elapsed", "condition", "currency")


def tokens_of(number_format: str) -> tuple[Token, ...]:
    """Read a format code from left to right; every character is part of some token."""
    return tuple(
        _token(match) for match in re.finditer(_PIECE, number_format, re.IGNORECASE | re.DOTALL)
    )


def _token(match: re.Match[str]) -> Token:
    mark = next(mark for i, (mark, _) in enumerate(_PIECES) if match[f"p{i}"] is not None)
    return Token(mark, _inside(match), match["language"] or "")


def _inside(match: re.Match[str]) -> str:
    if match["skipped"] is not None:
        return " "
    if match["filled"] is not None or match["colour"] is not None:
        return ""
    return next((match[name] for name in _INSIDES if match[name] is not None), match[0])
