"""A picture that belongs to an item."""

import hashlib
from enum import StrEnum

from msgspec import Struct


class PictureKind(StrEnum):
    """What the bytes of a picture are; the value is the ending of a file's name."""

    PNG = "png"
    JPEG = "jpg"
    SVG = "svg"


class Picture(Struct, frozen=True):
    """A picture that can be printed as it is, without what a camera or program wrote beside it.

    `width` and `height` are in pixels as it stands upright; in a drawing (SVG) they tell its
    proportions only. `alpha` says that paper may show through. `digest` is the hexadecimal SHA-256
    of `data`, which is what names the picture.
    """

    data: bytes
    width: int
    height: int
    kind: PictureKind
    alpha: bool
    digest: str

    @classmethod
    def of(
        cls, data: bytes, kind: PictureKind, *, width: int, height: int, alpha: bool
    ) -> "Picture":
        """Return a picture with the digest of its bytes."""
        return cls(data, width, height, kind, alpha, hashlib.sha256(data).hexdigest())

    @property
    def file_name(self) -> str:
        """The name of a file that holds the picture, the same for the same bytes."""
        return f"{self.digest[:16]}.{self.kind}"
