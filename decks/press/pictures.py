"""Pictures made ready for the press: as many dots as paper shows, and nothing but the picture."""

from collections.abc import Iterable, Iterator, Mapping
from contextlib import ExitStack
from importlib.resources import as_file, files
from io import BytesIO
from typing import TYPE_CHECKING

from msgspec import Struct

from cards.finding import FairdealError, UnusablePictureError
from cards.picture import Picture, PictureKind
from decks.layout.frame import Frame, Image, Placed
from decks.layout.units import POINTS_PER_INCH
from decks.press.type.plain import is_plain

if TYPE_CHECKING:
    from importlib.resources.abc import Traversable

    from PIL.Image import Image as Pixels
    from reportlab.lib.utils import ImageReader

FINEST = 300
"""Dots an inch; more are not seen on paper."""

FINEST_DRAWN = 450
"""Dots an inch of a drawing, whose edges are sharp."""

_QUALITY = 90
_FAMILY = "Fira Sans"


class Printed(Struct, frozen=True):
    """A picture at the largest size, in points, at which any page shows it."""

    picture: Picture
    width: float
    height: float


def printed_in(pages: Iterable[Frame]) -> Mapping[str, Printed]:
    """Return each picture of some pages once, by its digest, however often it is shown."""
    largest: dict[str, Printed] = {}
    for image in (image for page in pages for image in _images(page)):
        before = largest.get(image.picture.digest)
        if before is None or before.width < image.width:
            largest[image.picture.digest] = Printed(image.picture, image.width, image.height)
    return largest


def ready_all(pictures: Mapping[str, Printed], *, grey: bool) -> dict[str, "ImageReader"]:
    """Return pictures by digest, each for reportlab to embed once."""
    return {digest: ready(printed, grey=grey) for digest, printed in pictures.items()}


def ready(printed: Printed, *, grey: bool) -> "ImageReader":
    """Return a picture for reportlab to embed, at most at the finest that paper shows.

    A photograph that need not be changed is embedded as it was coded.
    """
    from reportlab.lib.utils import ImageReader  # noqa: PLC0415 (for decks with pictures only)

    picture = printed.picture
    pixels = _drawn(printed) if picture.kind is PictureKind.SVG else _scaled(printed)
    if pixels is None and not grey and picture.kind is PictureKind.JPEG:
        return ImageReader(BytesIO(picture.data))
    image = _plain(pixels or _opened(picture.data), grey=grey)
    if picture.kind is not PictureKind.JPEG:
        return ImageReader(image)
    coded = BytesIO()
    image.save(coded, "JPEG", quality=_QUALITY, subsampling=0)
    coded.seek(0)
    return ImageReader(coded)


def _images(frame: Frame) -> Iterator[Image]:
    for thing in frame.things:
        if isinstance(thing, Image):
            yield thing
        elif isinstance(thing, Placed):
            yield from _images(thing.frame)


def _dots(points: float, finest: int) -> int:
    return max(1, round(points / POINTS_PER_INCH * finest))


def _scaled(printed: Printed) -> "Pixels | None":
    """Return a picture with fewer pixels, or None where it has no more than paper shows."""
    from PIL.Image import Resampling  # noqa: PLC0415 (for decks with pictures only)

    size = _dots(printed.width, FINEST), _dots(printed.height, FINEST)
    if printed.picture.width <= size[0] or printed.picture.height <= size[1]:
        return None
    return _with_all_tones(_opened(printed.picture.data)).resize(size, Resampling.LANCZOS)


def _drawn(printed: Printed) -> "Pixels":
    """Draw a drawing. Its letters are set in the cards' typeface, the same on every machine."""
    from cards.reading.pictures.drawn import drawn  # noqa: PLC0415 (for decks with drawings only)

    with ExitStack() as opened:
        faces = [opened.enter_context(as_file(face)) for face in _faces_for(printed.picture)]
        try:
            png = drawn(
                printed.picture.data,
                width=_dots(printed.width, FINEST_DRAWN),
                height=_dots(printed.height, FINEST_DRAWN),
                font_files=[str(path) for path in faces],
                font_family=_FAMILY,
                sans_serif_family=_FAMILY,
                serif_family=_FAMILY,
            )
        except UnusablePictureError as error:
            raise FairdealError(f"A drawing on a card {error.wrong}. {error.mend}") from error
    return _opened(png)


def _faces_for(drawing: Picture) -> list["Traversable"]:
    """Return the files of Fira Sans, and of all faces where a drawing may have other letters."""
    from decks.press.script.faces import FIRA, SOURCES  # noqa: PLC0415 (as above)

    sources = [FIRA] if is_plain(drawing.data.decode().replace("\n", "")) else SOURCES
    names = dict.fromkeys((s.package, name) for s in sources for name in (s.regular, s.strong))
    return [files(package) / "files" / name for package, name in names]


def _opened(data: bytes) -> "Pixels":
    from PIL import Image as Pixels  # noqa: PLC0415 (for decks with pictures only)

    image = Pixels.open(BytesIO(data), formats=["PNG", "JPEG"])
    image.load()
    return image


def _with_all_tones(image: "Pixels") -> "Pixels":
    """Return a picture in tones that can be mixed: a palette cannot."""
    if "transparency" in image.info or image.mode in {"LA", "RGBA"}:
        return image.convert("RGBA")
    return image.convert("L" if image.mode in {"1", "L"} else "RGB")


def _plain(image: "Pixels", *, grey: bool) -> "Pixels":
    """Return a picture in grey or RGB, with its alpha if any paper shows through."""
    image = _with_all_tones(image)
    image.info = {}
    if image.mode == "RGBA" and image.getchannel("A").getextrema()[0] == 255:  # noqa: PLR2004
        image = image.convert("RGB")
    if grey:
        return image.convert("LA" if image.mode == "RGBA" else "L")
    return image
