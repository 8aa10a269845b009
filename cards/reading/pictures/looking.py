"""Bytes become a picture."""

from cards.picture import Picture
from cards.reading.pictures.kinds import is_drawing, kind_in_pixels, of_another_kind
from cards.reading.pictures.unusable import broken


def picture_in(data: bytes, *, may_be_blank: bool = False) -> Picture:
    """Return the picture that some bytes are; raise `UnusablePictureError` if they are none.

    `may_be_blank` lets a picture pass that shows nothing.
    """
    if not data:
        raise broken()
    kind = kind_in_pixels(data)
    if kind:
        from cards.reading.pictures.pixels import pixels_in  # noqa: PLC0415 (takes long to load)

        return pixels_in(data, kind, may_be_blank=may_be_blank)
    if is_drawing(data):
        from cards.reading.pictures.drawing import drawing_in  # noqa: PLC0415 (as above)

        return drawing_in(data, may_be_blank=may_be_blank)
    raise of_another_kind(data)
