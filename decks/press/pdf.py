"""Frames become a PDF. This walks and draws; it decides nothing."""

from collections.abc import Mapping, Sequence
from contextlib import nullcontext
from dataclasses import dataclass, replace
from functools import singledispatchmethod
from io import BytesIO

from reportlab import rl_config
from reportlab.lib.colors import HexColor
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from decks.layout.frame import Box, Curve, Frame, Image, Line, Placed, Ribbon, Text, Wedge
from decks.layout.runs import Run, has_fractions
from decks.press import textures
from decks.press.inks import GREY_RIBBON, TONES
from decks.press.pictures import ready_for
from decks.press.told import told
from decks.press.type import plain
from decks.press.type.plain import REGULAR, load
from decks.recipe import Flip, Ink
from decks.team import Team

DUPLEX = {Flip.LONG: "DuplexFlipLongEdge", Flip.SHORT: "DuplexFlipShortEdge", None: "Simplex"}
"""Viewer preferences of ISO 32000-1, Table 150. Viewers may ignore them."""


@dataclass(frozen=True, slots=True)
class Pen:
    """Draws things on a canvas; nothing of one thing's colour or font is left for the next."""

    canvas: Canvas
    owners: Sequence[Team]
    ink: Ink
    pictures: Mapping[str, ImageReader]

    @singledispatchmethod
    def draw(self, thing: object, x: float, y: float) -> None:
        """Draw a thing whose frame has its lower left corner at (x, y)."""
        raise TypeError(thing, x, y)

    @draw.register
    def _(self, frame: Frame, x: float, y: float) -> None:
        for thing in frame.things:
            self.draw(thing, x, y)

    @draw.register
    def _(self, placed: Placed, x: float, y: float) -> None:
        if placed.rotation:
            self._rotated(placed, x, y)
            return
        if not placed.half_turn:
            self.draw(placed.frame, x + placed.x, y + placed.y)
            return
        self.canvas.saveState()
        self.canvas.translate(x + placed.x + placed.frame.width, y + placed.y + placed.frame.height)
        self.canvas.rotate(180)
        self.draw(placed.frame, 0, 0)
        self.canvas.restoreState()

    def _rotated(self, placed: Placed, x: float, y: float) -> None:
        half_width, half_height = placed.frame.width / 2, placed.frame.height / 2
        straight = replace(placed, x=-half_width, y=-half_height, rotation=0)
        self.canvas.saveState()
        self.canvas.translate(x + placed.x + half_width, y + placed.y + half_height)
        self.canvas.rotate(placed.rotation)
        self.draw(straight, 0, 0)
        self.canvas.restoreState()

    @draw.register
    def _(self, text: Text, x: float, y: float) -> None:
        self.canvas.setFillColor(HexColor(TONES[text.tone]))
        runs = text.runs or (Run(text.text, text.strong),)
        fractions = has_fractions(text.runs)
        with told(self.canvas, text.text) if fractions else nullcontext():
            if plain.is_plain(text.text):
                plain.draw(self.canvas, runs, x + text.x, y + text.y, text.size)
                return
            from decks.press.script import drawing, shaping  # noqa: PLC0415 (when it is needed)

            line = shaping.set_runs(runs, to_left=text.to_left)
            drawing.draw(self.canvas, line, x + text.x, y + text.y, text.size)

    @draw.register
    def _(self, line: Line, x: float, y: float) -> None:
        self.canvas.setStrokeColor(HexColor(TONES[line.tone]))
        self.canvas.setLineWidth(line.width)
        self.canvas.setDash([2, 2] if line.dashed else [])
        self.canvas.line(x + line.x, y + line.y, x + line.end_x, y + line.end_y)

    @draw.register
    def _(self, box: Box, x: float, y: float) -> None:
        self.canvas.setDash([])
        self.canvas.setLineWidth(0.8)
        if box.fill:
            self.canvas.setFillColor(HexColor(TONES[box.fill]))
        if box.stroke:
            self.canvas.setStrokeColor(HexColor(TONES[box.stroke]))
        self.canvas.roundRect(
            x + box.x,
            y + box.y,
            box.width,
            box.height,
            box.radius,
            stroke=int(box.stroke is not None),
            fill=int(box.fill is not None),
        )

    @draw.register
    def _(self, wedge: Wedge, x: float, y: float) -> None:
        path = self.canvas.beginPath()
        path.moveTo(x + wedge.points[0][0], y + wedge.points[0][1])
        for point_x, point_y in wedge.points[1:]:
            path.lineTo(x + point_x, y + point_y)
        path.close()
        self.canvas.setFillColor(HexColor(TONES[wedge.tone]))
        self.canvas.drawPath(path, stroke=0, fill=1)

    @draw.register
    def _(self, curve: Curve, x: float, y: float) -> None:
        path = self.canvas.beginPath()
        start, *points = [(x + point_x, y + point_y) for point_x, point_y in curve.points]
        path.moveTo(*start)
        for n in range(0, len(points), 3):
            path.curveTo(*points[n], *points[n + 1], *points[n + 2])
        self.canvas.setDash([])
        self.canvas.setLineWidth(curve.width)
        if curve.stroke:
            self.canvas.setStrokeColor(HexColor(TONES[curve.stroke]))
        if curve.fill:
            self.canvas.setFillColor(HexColor(TONES[curve.fill]))
        self.canvas.drawPath(path, stroke=int(bool(curve.stroke)), fill=int(bool(curve.fill)))

    @draw.register
    def _(self, image: Image, x: float, y: float) -> None:
        picture = self.pictures[image.picture.digest]
        at = (x + image.x, y + image.y, image.width, image.height)
        self.canvas.drawImage(picture, *at, mask="auto")

    @draw.register
    def _(self, ribbon: Ribbon, x: float, y: float) -> None:
        name = f"ribbon-{ribbon.team}-{ribbon.width:.2f}-{ribbon.height:.2f}"
        if not self.canvas.hasForm(name):
            self._ribbon_form(name, ribbon)
        self.canvas.saveState()
        self.canvas.translate(x + ribbon.x, y + ribbon.y)
        self.canvas.doForm(name)
        self.canvas.restoreState()

    def _ribbon_form(self, name: str, ribbon: Ribbon) -> None:
        """Keep a ribbon as a form: drawn once, and clipped to its own edges."""
        team = self.owners[ribbon.team]
        colour = GREY_RIBBON if self.ink is Ink.GREY else team.colour
        self.canvas.beginForm(name, 0, 0, ribbon.width, ribbon.height)
        self.canvas.setFillColor(HexColor(colour))
        self.canvas.rect(0, 0, ribbon.width, ribbon.height, stroke=0, fill=1)
        if self.ink is not Ink.STOCK:
            # on the teacher's pages: plain, as the stock is
            textures.draw(self.canvas, team.texture, width=ribbon.width, height=ribbon.height)
        self.canvas.endForm()


def make_pdf(
    pages: Sequence[Frame],
    *,
    title: str,
    owners: Sequence[Team] = (),
    ink: Ink = Ink.COLOUR,
    flip: Flip | None = None,
) -> bytes:
    """Return the pages as a PDF; `flip` is how it asks the printer to print both sides.

    A ribbon's number is that of its owner.

    The same pages give the same bytes: no clock and no machine enters.
    """
    load()
    rl_config.useA85 = 0
    buffer = BytesIO()
    canvas = Canvas(buffer, invariant=1, pdfVersion=(1, 7), lang="en", initialFontName=REGULAR)
    canvas.setTitle(title)
    canvas.setAuthor("Fairdeal")
    canvas.setCreator("Fairdeal")
    canvas.setViewerPreference("PrintScaling", "None")
    canvas.setViewerPreference("Duplex", DUPLEX[flip])
    canvas.setViewerPreference("DisplayDocTitle", "true")
    pen = Pen(canvas, owners, ink, ready_for(pages, grey=ink is Ink.GREY))
    for page in pages:
        canvas.setPageSize((page.width, page.height))
        pen.draw(page, 0, 0)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()
