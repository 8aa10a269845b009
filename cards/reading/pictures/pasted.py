"""A picture pasted into a row of a workbook."""

from collections.abc import Callable

from msgspec import Struct

from cards.finding import UnusablePictureError
from cards.picture import Picture
from cards.place import Place
from cards.reading.pictures.looking import picture_in


class Pasted(Struct, frozen=True):
    """A picture whose upper left corner lies in a cell.

    `part` is its part of the workbook, blank where it is only a link; `read` returns what the part
    holds. `crop` is the share cut off at the left, top, right and bottom.
    """

    place: Place
    part: str
    read: Callable[[str], bytes]
    crop: tuple[float, float, float, float] = (0, 0, 0, 0)

    @property
    def key(self) -> tuple[str, tuple[float, ...]]:
        """What tells one picture from another."""
        return self.part, self.crop

    def picture(self) -> Picture:
        """Return the picture; raise `UnusablePictureError` if it cannot be used."""
        if not self.part:
            raise UnusablePictureError(
                "picture-unreadable",
                "is only linked, not in the workbook",
                "Paste the picture itself, or put its file beside the workbook and name it.",
            )
        picture = picture_in(self.read(self.part))
        if not any(self.crop):
            return picture
        from cards.reading.pictures.pixels import cropped  # noqa: PLC0415 (takes long to load)

        return cropped(picture, self.crop)
