"""Pictures that would look coarse on their cards."""

from collections.abc import Iterator
from math import ceil

from cards.finding import Finding, Severity
from cards.item import Item
from cards.picture import PictureKind
from decks.layout.frame import Image
from decks.layout.units import POINTS_PER_INCH, in_mm
from decks.press.cards.arranging import SHARP, arrange
from decks.press.cards.shape import Shape


def proofread_picture(item: Item, front: Shape) -> Iterator[Finding]:
    """Note a picture that has too few pixels for the size at which its card shows it."""
    arranged = arrange(item, front) if item.image else None
    image = arranged.image if arranged else None
    if image is None or image.picture.kind is PictureKind.SVG:
        return
    dots = image.picture.width / image.width * POINTS_PER_INCH
    # what is a hair too coarse looks no different
    if round(dots) < SHARP:
        yield _coarse(item, image, dots)


def _coarse(item: Item, image: Image, dots: float) -> Finding:
    wide = in_mm(image.width)
    return Finding(
        "picture-coarse",
        Severity.NOTE,
        item.picture_place or item.prompt_place,
        item.picture,
        f"This picture will look coarse: it is printed {wide:.0f} mm wide, which shows "
        f"{dots:.0f} of its dots an inch.",
        f"Use one that is at least {ceil(image.width / POINTS_PER_INCH * SHARP)} pixels wide. "
        f"This one looks sharp up to {wide * dots / SHARP:.0f} mm.",
    )
