"""Contrast as WCAG 2.2 defines it."""

from decks.colour.spaces import luminance

WHITE = "#FFFFFF"


def contrast(code: str, ground: str = WHITE) -> float:
    """Return the contrast ratio of two `#RRGGBB` codes, 1 to 21, in either order."""
    low, high = sorted((luminance(code), luminance(ground)))
    return (high + 0.05) / (low + 0.05)
