"""Pictures made of pixels: PNG and JPEG."""

import warnings
from io import BytesIO
from typing import TYPE_CHECKING

from cards.finding import UnusablePictureError
from cards.picture import Picture, PictureKind
from cards.reading.pictures.stripping import stripped_jpeg, stripped_png
from cards.reading.pictures.unusable import broken, refuse_narrow, too_large, unseen

if TYPE_CHECKING:
    from PIL.Image import Image

MOST_PIXELS = {PictureKind.PNG: 40_000_000, PictureKind.JPEG: 60_000_000}
"""Above what scanners make of a page, and most phones; in memory four bytes each."""
MOST_SIDE = 3000
"""A quarter of a metre at 300 dots an inch: more is of no use on a card."""

_READERS = {PictureKind.PNG: "PNG", PictureKind.JPEG: "JPEG"}
_STRIPPED = {PictureKind.PNG: stripped_png, PictureKind.JPEG: stripped_jpeg}
_PRINTED = {
    PictureKind.PNG: frozenset(("1", "L", "LA", "P", "RGB", "RGBA")),
    PictureKind.JPEG: frozenset(("L", "RGB")),
}
_AVERAGED = frozenset(("L", "LA", "RGB", "RGBA", "CMYK"))
_QUALITY = 92
_FEW = 16
_WHITE = 250
"""Of 255: a JPEG’s white is not quite white."""
_ORIENTATION = 0x0112  # the tag's number in Exif 2.32, table 4

Crop = tuple[float, float, float, float]


def pixels_in(data: bytes, kind: PictureKind, *, may_be_blank: bool = False) -> Picture:
    """Return the picture, upright, without anything written beside it, and not larger than needed.

    Raises `UnusablePictureError` if it is too large or damaged, or if it shows nothing and may not
    do so.
    """
    image = _loaded(data, kind)
    if not may_be_blank:
        refuse_narrow(*image.size)
        _refuse_unseen(image)
    return _as_it_is(data, image, kind) or _written(_upright(image), kind)


def cropped(picture: Picture, crop: Crop) -> Picture:
    """Return what is left of a picture when shares of it (left, top, right, bottom) are cut off."""
    if picture.kind is PictureKind.SVG or not any(crop):
        return picture
    image = _loaded(picture.data, picture.kind)
    left, top, right, bottom = crop
    width, height = image.size
    x, y = round(left * width), round(top * height)
    end_x, end_y = round((1 - right) * width), round((1 - bottom) * height)
    if x >= end_x or y >= end_y:
        return picture
    return _written(_upright(image).crop((x, y, end_x, end_y)), picture.kind)


def _loaded(data: bytes, kind: PictureKind) -> "Image":
    """Decode a picture, and scale it down at once if it is too large: all else makes copies of it.

    A JPEG far too large is decoded at a half, a quarter or an eighth.
    """
    from PIL import Image  # noqa: PLC0415 (takes long to load)

    try:
        with warnings.catch_warnings():
            # They tell of sizes, which are looked at here, and of odd things that are stripped.
            warnings.simplefilter("ignore")
            image: Image.Image = Image.open(BytesIO(data), formats=[_READERS[kind]])
            _refuse_large(image.size, kind)
            image.draft(image.mode, (MOST_SIDE, MOST_SIDE))
            image.load()
            image.getexif()
            if max(image.size) > MOST_SIDE:
                image = _scalable(image)
                image.thumbnail((MOST_SIDE, MOST_SIDE))
    except (UnusablePictureError, MemoryError):
        raise
    except Image.DecompressionBombError as error:
        raise too_large(f"has more than {_most(kind)} million pixels") from error
    # A damaged picture can fail anywhere in the library, in whatever way.
    except Exception as error:
        raise broken() from error
    return image


def _refuse_large(size: tuple[int, int], kind: PictureKind) -> None:
    if size[0] * size[1] > MOST_PIXELS[kind]:
        raise too_large(f"has {size[0]:,} × {size[1]:,} pixels, more than {_most(kind)} million")


def _most(kind: PictureKind) -> int:
    return MOST_PIXELS[kind] // 1_000_000


def _scalable(image: "Image") -> "Image":
    """Return a picture whose pixels can be averaged, in as few copies as can be."""
    if image.mode.startswith("I"):
        return image.convert("I")
    averaged = image.mode in _AVERAGED and "transparency" not in image.info
    return image if averaged else _plain(image)


def _refuse_unseen(image: "Image") -> None:
    from PIL.Image import Resampling  # noqa: PLC0415 (takes long to load)

    # a few pixels tell nearly always, and whole pictures take long
    few = image.resize((_FEW, _FEW), Resampling.NEAREST)
    if _is_white(few) and _is_white(image):
        raise unseen()


def _is_white(image: "Image") -> bool:
    """Say whether nothing of a picture shows on white paper."""
    from PIL import Image  # noqa: PLC0415 (takes long to load)

    shown = _plain(image).convert("RGBA")
    shown = Image.alpha_composite(Image.new("RGBA", shown.size, "white"), shown)
    return shown.convert("RGB").point(lambda value: value < _WHITE).getbbox() is None


def _as_it_is(data: bytes, image: "Image", kind: PictureKind) -> Picture | None:
    """Return the picture as it was coded, if nothing about it needs to be changed."""
    turned = image.getexif().get(_ORIENTATION, 1) != 1
    if turned or image.mode not in _PRINTED[kind]:
        return None
    try:
        bare = _STRIPPED[kind](data)
    except (ValueError, IndexError):
        return None
    width, height = _size_in(bare, kind)
    if (width, height) != image.size:
        return None
    return Picture.of(bare, kind, width=width, height=height, alpha=shows_paper(image))


def _size_in(data: bytes, kind: PictureKind) -> tuple[int, int]:
    """Return the size of the coded picture: a JPEG may have been decoded at less."""
    from PIL import Image  # noqa: PLC0415 (takes long to load)

    with Image.open(BytesIO(data), formats=[_READERS[kind]]) as image:
        return image.size


def shows_paper(image: "Image") -> bool:
    """Say whether any of a picture is not wholly opaque."""
    if "transparency" in image.info:
        image = image.convert("RGBA")
    if "A" not in image.getbands():
        return False
    low, _high = image.getchannel("A").getextrema()
    return low != 255  # noqa: PLR2004 (all of eight bits)


def _upright(image: "Image") -> "Image":
    """Return a picture in grey or RGB, with alpha if it needs it, turned."""
    from PIL import ImageOps  # noqa: PLC0415 (takes long to load)

    turned = ImageOps.exif_transpose(image)
    plain = _plain(turned)
    plain.info = {}
    return plain


def _plain(image: "Image") -> "Image":
    if shows_paper(image):
        return image.convert("RGBA")
    if image.mode.startswith("I"):
        return image.convert("I").point(lambda value: value * (1 / 257)).convert("L")
    return image.convert("L" if image.mode in {"1", "L", "LA"} else "RGB")


def _written(image: "Image", kind: PictureKind) -> Picture:
    buffer = BytesIO()
    if kind is PictureKind.JPEG:
        image.save(buffer, "JPEG", quality=_QUALITY, subsampling=0)
    else:
        image.save(buffer, "PNG")
    width, height = image.size
    alpha = shows_paper(image)
    return Picture.of(buffer.getvalue(), kind, width=width, height=height, alpha=alpha)
