"""Frames become a PDF. This walks and draws; it decides nothing."""

from collections.abc import Iterable, Mapping, Sequence
from contextlib import nullcontext
from io import BytesIO
from math import cos, radians, sin

from msgspec import Struct
from reportlab import rl_config
from reportlab.lib.colors import HexColor
from reportlab.lib.utils import ImageReader
from reportlab.pdfgen.canvas import Canvas

from decks.languages import ENGLISH
from decks.layout.frame import Box, Curve, Frame, Image, Line, Placed, Ribbon, Text, Wedge
from decks.layout.runs import Run, has_fractions
from decks.press import operators, textures
from decks.press.copied_as import copied_as
from decks.press.inks import GREY_RIBBON
from decks.press.pictures import Printed, printed_in, ready_all
from decks.press.type import plain
from decks.press.type.embedded import load
from decks.press.type.plain import REGULAR
from decks.press.type.showing import Letters
from decks.recipe import Flip, Ink
from decks.team import Team

DUPLEX = {Flip.LONG: "DuplexFlipLongEdge", Flip.SHORT: "DuplexFlipShortEdge", None: "Simplex"}
"""Viewer preferences of ISO 32000-1, Table 150. Viewers may ignore them."""


class Pen(Struct, frozen=True):
    """Draws things on a canvas; nothing of one thing's colour or font is left for the next."""

    canvas: Canvas
    letters: Letters
    owners: Sequence[Team]
    ink: Ink
    pictures: Mapping[str, ImageReader]

    def draw(self, frame: Frame, x: float, y: float) -> None:
        """Draw what is on a frame whose lower left corner lies at (x, y)."""
        for thing in frame.things:
            match thing:
                case Text():
                    self._text(thing, x, y)
                case Placed():
                    self._placed(thing, x, y)
                case Line():
                    self._line(thing, x, y)
                case Box():
                    self._box(thing, x, y)
                case Ribbon():
                    self._ribbon(thing, x, y)
                case Wedge():
                    self._wedge(thing, x, y)
                case Curve():
                    self._curve(thing, x, y)
                case Image():
                    at = (x + thing.x, y + thing.y, thing.width, thing.height)
                    self.canvas.drawImage(self.pictures[thing.picture.digest], *at, mask="auto")

    def _placed(self, placed: Placed, x: float, y: float) -> None:
        frame = placed.frame
        if not (placed.half_turn or placed.rotation):
            self.draw(frame, x + placed.x, y + placed.y)
            return
        angle = radians(placed.rotation + (180 if placed.half_turn else 0))
        half_width, half_height = frame.width / 2, frame.height / 2
        centre = x + placed.x + half_width, y + placed.y + half_height
        self.canvas.addLiteral(f"q {operators.turned(*centre, cos(angle), sin(angle))}")
        self.draw(frame, -half_width, -half_height)
        self.canvas.addLiteral("Q")

    def _text(self, text: Text, x: float, y: float) -> None:
        at = (x + text.x, y + text.y, text.size)
        fill = operators.filling(text.tone)
        if not text.runs and plain.is_plain(text.text):
            shown = self.letters.text(text.text, *at, strong=text.strong)
            self.canvas.addLiteral(f"{fill} {shown}")
            return
        self.canvas.addLiteral(fill)
        runs = text.runs or (Run(text.text, text.strong),)
        with copied_as(self.canvas, text.text) if has_fractions(text.runs) else nullcontext():
            if plain.is_plain(text.text):
                self.canvas.addLiteral(self.letters.runs(runs, *at))
                return
            from decks.press.script import drawing, shaping  # noqa: PLC0415 (when it is needed)

            line = shaping.set_runs(runs, to_left=text.to_left)
            drawing.draw(self.canvas, line, *at)

    def _line(self, line: Line, x: float, y: float) -> None:
        ends = (x + line.x, y + line.y, x + line.end_x, y + line.end_y)
        self.canvas.addLiteral(operators.line(ends, line.width, line.tone, dashed=line.dashed))

    def _box(self, box: Box, x: float, y: float) -> None:
        drawn = operators.box(box.width, box.height, box.radius, box.fill, box.stroke)
        self.canvas.addLiteral(operators.in_place(x + box.x, y + box.y, drawn))

    def _wedge(self, wedge: Wedge, x: float, y: float) -> None:
        drawn = operators.painted(operators.path(wedge.points), 0, wedge.tone, None)
        self.canvas.addLiteral(operators.in_place(x, y, drawn))

    def _curve(self, curve: Curve, x: float, y: float) -> None:
        outline = operators.curves(curve.points)
        drawn = operators.painted(outline, curve.width, curve.fill, curve.stroke)
        self.canvas.addLiteral(operators.in_place(x, y, drawn))

    def _ribbon(self, ribbon: Ribbon, x: float, y: float) -> None:
        name = f"ribbon-{ribbon.team}-{ribbon.width:.2f}-{ribbon.height:.2f}"
        if not self.canvas.hasForm(name):
            self._ribbon_form(name, ribbon)
        self.canvas.addLiteral(f"q 1 0 0 1 {x + ribbon.x:.3f} {y + ribbon.y:.3f} cm")
        self.canvas.doForm(name)
        self.canvas.addLiteral("Q")

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


def make_pdf(  # noqa: PLR0913 (what is printed, and how)
    pages: Iterable[Frame],
    *,
    title: str,
    language: str = ENGLISH,
    owners: Sequence[Team] = (),
    ink: Ink = Ink.COLOUR,
    flip: Flip | None = None,
    pictures: Mapping[str, Printed] | None = None,
) -> bytes:
    """Return the pages as a PDF; `flip` is how it asks the printer to print both sides.

    `language` is the tag (RFC 5646) of what most of their text is in, for readers that speak.
    A ribbon's number is that of its owner. Where `pictures` tells what the pages show, they are
    drawn as they come; otherwise they are looked through first.

    The same pages give the same bytes: no clock and no machine enters.
    """
    load()
    rl_config.useA85 = 0
    buffer = BytesIO()
    canvas = Canvas(buffer, invariant=1, pdfVersion=(1, 7), lang=language, initialFontName=REGULAR)
    canvas.setTitle(title)
    canvas.setAuthor("Fairdeal")
    canvas.setCreator("Fairdeal")
    canvas.setViewerPreference("PrintScaling", "None")
    canvas.setViewerPreference("Duplex", DUPLEX[flip])
    canvas.setViewerPreference("DisplayDocTitle", "true")
    if pictures is None:
        pages = list(pages)
        pictures = printed_in(pages)
    pen = Pen(canvas, Letters(canvas), owners, ink, ready_all(pictures, grey=ink is Ink.GREY))
    for page in pages:
        canvas.setPageSize((page.width, page.height))
        pen.draw(page, 0, 0)
        canvas.showPage()
    canvas.save()
    return buffer.getvalue()
