"""The bare program that we are measured against: one reportlab call for each thing on a page.

Run by `building.py`: `python bare.py things.json out.pdf`. The lines are fitted already, the sizes
known and the places worked out; what is left is what any program that uses reportlab has to do.
"""

import json
import sys
from importlib.resources import as_file, files
from pathlib import Path

from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.pdfgen.canvas import Canvas


def draw(things: Path, out: Path) -> None:
    """Draw pages of texts, ribbons, boxes and lines."""
    for name in ("FiraSans-Regular", "FiraSans-SemiBold"):
        with as_file(files("fontpkg_fira_sans") / "files" / f"{name}.ttf") as path:
            pdfmetrics.registerFont(TTFont(name, str(path)))
    pages = json.loads(things.read_text(encoding="utf-8"))
    canvas = Canvas(str(out))
    for page in pages:
        canvas.setPageSize(page["size"])
        canvas.setLineWidth(0.5)
        for thing in page["things"]:
            kind, *rest = thing
            if kind == "text":
                x, y, text, font, size = rest
                canvas.setFont(font, size)
                canvas.drawString(x, y, text)
            elif kind == "ribbon":
                x, y, width, height, colour = rest
                canvas.setFillColor(colour)
                canvas.rect(x, y, width, height, stroke=0, fill=1)
                canvas.setFillColor("#000000")
            elif kind == "box":
                canvas.roundRect(*rest)
            elif kind == "line":
                canvas.line(*rest)
        canvas.showPage()
    canvas.save()


if __name__ == "__main__":
    draw(Path(sys.argv[1]), Path(sys.argv[2]))
