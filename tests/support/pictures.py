"""Pictures, drawn where a test needs them."""

from io import BytesIO

from openpyxl import Workbook
from openpyxl.drawing.image import Image as Pasted
from PIL import Image, ImageDraw

from cards.picture import Picture, PictureKind

SVG = (
    '<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" '
    'width="40mm" height="20mm" viewBox="0 0 40 20">{}</svg>'
)
SHELL = SVG.format('<rect width="40" height="20" fill="#C00000"/>')


def photograph(width: int, height: int) -> Image.Image:
    """Return a picture with many tones, darker towards the lower right."""
    across = Image.linear_gradient("L").rotate(90).resize((width, height))
    down = Image.linear_gradient("L").resize((width, height))
    return Image.merge("RGB", (across, down, Image.blend(across, down, 0.5)))


def coded(image: Image.Image, kind: str = "PNG", **options: object) -> bytes:
    """Return a picture as the bytes of a file."""
    buffer = BytesIO()
    image.save(buffer, kind, **options)
    return buffer.getvalue()


def disc(size: int, colour: tuple[int, int, int, int] = (0, 0, 200, 255)) -> Image.Image:
    """Return a disc on nothing."""
    image = Image.new("RGBA", (size, size), (0, 0, 0, 0))
    ImageDraw.Draw(image).ellipse([0, 0, size - 1, size - 1], fill=colour)
    return image


def picture(width: int, height: int, kind: PictureKind = PictureKind.PNG) -> Picture:
    """Return a picture of which only its size matters."""
    return Picture.of(b"", kind, width=width, height=height, alpha=False)


def paste(book: Workbook, sheet: str, data: bytes, cell: str) -> None:
    """Paste a picture into a sheet so that its corner lies in a cell."""
    book[sheet].add_image(Pasted(BytesIO(data)), cell)
