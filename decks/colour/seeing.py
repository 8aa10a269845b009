"""What is left of a colour for eyes that lack one kind of cone."""

from enum import StrEnum

from decks.colour.spaces import Lab, Light, Matrix, by, lab_of, light


class Sight(StrEnum):
    """How somebody sees."""

    NORMAL = "normal"
    PROTAN = "protan"
    DEUTAN = "deutan"
    TRITAN = "tritan"


MACHADO: dict[Sight, Matrix] = {
    Sight.PROTAN: (
        (0.152286, 1.052583, -0.204868),
        (0.114503, 0.786281, 0.099216),
        (-0.003882, -0.048116, 1.051998),
    ),
    Sight.DEUTAN: (
        (0.367322, 0.860646, -0.227968),
        (0.280085, 0.672501, 0.047413),
        (-0.011820, 0.042940, 0.968881),
    ),
    Sight.TRITAN: (
        (1.255528, -0.076749, -0.178779),
        (-0.078411, 0.930809, 0.147602),
        (0.004733, 0.691367, 0.303900),
    ),
}
"""Severity 1.0, for linear sRGB (Machado, Oliveira & Fernandes 2009, table 1)."""


def seen(code: str, sight: Sight) -> Lab:
    """Return what somebody sees of a `#RRGGBB` code, in CIELAB."""
    return lab_of(seen_light(light(code), sight))


def seen_light(amounts: Light, sight: Sight) -> Light:
    """Return the light that gives ordinary eyes the impression that `sight` has of `amounts`."""
    if sight is Sight.NORMAL:
        return amounts
    red, green, blue = by(MACHADO[sight], amounts)
    return _within(red), _within(green), _within(blue)


def _within(amount: float) -> float:
    return min(max(amount, 0.0), 1.0)
