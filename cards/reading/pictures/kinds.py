"""What kind of picture some bytes are; their first ones tell, not what the file is called."""

from cards.finding import UnusablePictureError
from cards.picture import PictureKind

_STARTS = {b"\x89PNG\r\n\x1a\n": PictureKind.PNG, b"\xff\xd8\xff": PictureKind.JPEG}
# The first bytes of what else is called a picture, as the formats' own descriptions give them.
_OTHERS = {
    b"GIF8": "a GIF",
    b"BM": "a BMP picture",
    b"II*\0": "a TIFF picture",
    b"MM\0*": "a TIFF picture",
    b"%PDF": "a PDF",
    b"8BPS": "a layered picture of a drawing program",
    b"\xd7\xcd\xc6\x9a": "a Windows metafile",
    b"\x01\0\0\0": "a Windows metafile",
    b"\0\0\x01\0": "an icon file",
    b"PK\x03\x04": "a packed file",
    b"\x1f\x8b": "a packed file",
}
# Where the kind stands behind a length or a name of the container.
_CONTAINED = {b"WEBP": "a WebP picture", b"avif": "an AVIF picture"}
_PHONES = (b"heic", b"heix", b"mif1", b"hevc")

_DRAWING = (b"<svg", b":svg", "<svg".encode("utf-16-le"), "<svg".encode("utf-16-be"))
_START_OF_DRAWING = 100_000


def is_drawing(data: bytes) -> bool:
    """Return whether something looks like an SVG drawing, in any of its encodings."""
    return any(sign in data[:_START_OF_DRAWING] for sign in _DRAWING)


def kind_in_pixels(data: bytes) -> PictureKind | None:
    """Return the kind of a picture in pixels that is printed, or None for anything else."""
    return next((kind for start, kind in _STARTS.items() if data.startswith(start)), None)


def of_another_kind(data: bytes) -> UnusablePictureError:
    """Say of what kind a picture is that is not printed."""
    return UnusablePictureError(
        "picture-of-another-kind",
        f"is {_name_of(data)}, which is not printed",
        "Open it in a program for pictures and save it as PNG (drawings) or JPEG (photographs).",
    )


def _name_of(data: bytes) -> str:
    if data[8:12] in _PHONES:
        return "a HEIC picture, as phones take them"
    inside = _CONTAINED.get(data[8:12])
    return inside or next(
        (name for start, name in _OTHERS.items() if data.startswith(start)),
        "no PNG, JPEG or SVG picture",
    )
