"""Bytes become a picture."""

from cards.picture import Picture
from cards.reading.pictures.kinds import kind_in_pixels, of_another_kind
from cards.reading.pictures.unusable import broken

_DRAWING = (b"<svg", b":svg", "<svg".encode("utf-16-le"), "<svg".encode("utf-16-be"))
_START_OF_DRAWING = 100_000


def picture_in(data: bytes) -> Picture:
    """Return the picture that some bytes are; raise `UnusablePictureError` if they are none."""
    if not data:
        raise broken()
    kind = kind_in_pixels(data)
    if kind:
        from cards.reading.pictures.pixels import pixels_in  # noqa: PLC0415 - takes long to load

        return pixels_in(data, kind)
    if any(sign in data[:_START_OF_DRAWING] for sign in _DRAWING):
        from cards.reading.pictures.drawing import drawing_in  # noqa: PLC0415 - as above

        return drawing_in(data)
    raise of_another_kind(data)
