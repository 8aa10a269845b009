"""The text that is copied where letters do not stand on one line, as those of built fractions."""

from collections.abc import Iterator
from contextlib import contextmanager

from reportlab.pdfgen.canvas import Canvas


@contextmanager
def copied_as(canvas: Canvas, text: str) -> Iterator[None]:
    """Let what is drawn in this context be copied and read out as a text.

    ISO 32000-1, 14.9.4: replacement text, in UTF-16 with a byte order mark.
    """
    canvas.addLiteral(f"/Span <</ActualText <FEFF{text.encode('utf-16-be').hex().upper()}>>> BDC")
    yield
    canvas.addLiteral("EMC")
