"""Setting plain type: paragraphs, rows of a table, steps, panels, as frames."""

from collections.abc import Sequence
from functools import lru_cache

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.breaking import fill_text
from decks.layout.fitting import shorten
from decks.layout.frame import Box, Frame, Line, Placed, Ribbon, Text, Thing
from decks.layout.runs import Line as SetLine
from decks.layout.runs import Styled, has_fractions, plain
from decks.layout.runs import width_of as width_of_runs
from decks.press.script.direction import right_to_left, turns
from decks.press.type.fonts import measure

TEXT_LEADING = 1.32
TEXT_ASCENT = 0.80
TEXT_DESCENT = 0.25
"""Running text in ems: from baseline to baseline, and the room above the first and below the last.

It is set wider than the few words on a card: see `layout/fitting.py`."""
PANEL_PADDING = 11
BESIDE_SWATCH = 18
BESIDE_HEADING = 12


class Style(Struct, frozen=True):
    """How a text is set: size in points, weight and tone."""

    size: float
    strong: bool = False
    tone: str = "ink"


TITLE = Style(20, strong=True)
SUBTITLE = Style(11, tone="quiet")
HEADING = Style(13, strong=True)
BODY = Style(11)
STRONG = Style(11, strong=True)
NOTE = Style(9, tone="quiet")
HEAD = Style(9, tone="quiet")


@lru_cache(maxsize=1024)
def paragraph(text: str | Styled, width: float, style: Style = BODY, *, first: float = 0) -> Frame:
    """Return a text in a column of `width` points, flush left.

    The lines of a text that runs from right to left are flush right with one another. The block
    they make stands at the left all the same, under the heading of its column.

    The first baseline lies `first` points below the top, or as far as the type needs. The weight
    is that of the style; a styled text keeps its bold, raised and lowered letters.
    """
    size = style.size
    styled = Styled(text) if isinstance(text, str) else text
    if styled.strong != style.strong:
        styled = Styled(styled.text, style.strong, styled.spans)
    lines = fill_text(styled, width / size, measure=measure)
    first = max(first, TEXT_ASCENT * size)
    depth = first + (len(lines) - 1) * TEXT_LEADING * size + TEXT_DESCENT * size
    to_left = right_to_left(styled.text)
    texts: list[Text] = []
    for n, (x, line) in enumerate(zip(_starts(lines, size, to_left=to_left), lines, strict=True)):
        y = depth - first - n * TEXT_LEADING * size
        texts += texts_of(line, size, x=x, y=y, tone=style.tone, to_left=to_left)
    return Frame(width, depth, tuple(texts))


def _starts(lines: Sequence[SetLine], size: float, *, to_left: bool) -> list[float]:
    """Return where each line begins: all at the left, or so that all end where the widest does."""
    if not to_left:
        return [0] * len(lines)
    widths = [width_of_runs(line, measure) * size for line in lines]
    return [max(widths) - width for width in widths]


def texts_of(  # noqa: PLR0913 (a place, a look and a direction)
    line: SetLine,
    size: float,
    *,
    x: float = 0,
    y: float = 0,
    tone: str = "ink",
    to_left: bool | None = None,
) -> list[Text]:
    """Return the runs of a line beside one another; its baseline begins at (x, y).

    `to_left` says whether the paragraph runs from right to left; without it the line tells.

    A line with letters that run from right to left is one text, ordered as a whole, and so is one
    with built fractions, which some viewers read back line by line.
    """
    letters = plain(line)
    if turns(letters) or (len(line) > 1 and has_fractions(line)):
        runs = line if len(line) > 1 or line[0].style else ()
        return [Text(x, y, letters, size, line[0].strong, tone, runs, to_left)]
    if len(line) == 1 and not line[0].style:
        return [Text(x, y, letters, size, line[0].strong, tone)]
    texts = []
    for run in line:
        height = y + run.rise * size
        texts.append(Text(x, height, run.text, run.scale * size, run.strong, tone))
        x += run.width(measure) * size
    return texts


def line_of(text: str, style: Style, *, x: float = 0, y: float = 0) -> Text:
    """Return one line of text whose baseline begins at (x, y)."""
    return Text(x, y, text, style.size, style.strong, style.tone)


def width_of(text: str, style: Style) -> float:
    """Return the width of one line of text in points."""
    return measure(text, style.strong) * style.size


def upright(text: str, style: Style, *, longest: float) -> Frame:
    """Return one line of text that reads upwards, shortened to `longest` points."""
    short = shorten(text, longest / style.size, measure=measure, strong=style.strong)
    long, high = width_of(short, style), style.size
    line = Frame(long, high, (line_of(short, style, y=0.22 * high),))
    # it is turned about its own centre
    return Frame(high, long, (Placed((high - long) / 2, (long - high) / 2, line, rotation=90),))


def under_one_another(frames: Sequence[Frame], *, gap: float = 0) -> Frame:
    """Return the frames in a column."""
    height = sum(frame.height for frame in frames) + gap * max(len(frames) - 1, 0)
    y = height
    placed = []
    for frame in frames:
        y -= frame.height
        placed.append(Placed(0, y, frame))
        y -= gap
    return Frame(max((frame.width for frame in frames), default=0), height, tuple(placed))


def side_by_side(
    cells: Sequence[tuple[float, Frame]], width: float, *, above: float = 0, below: float = 0
) -> Frame:
    """Return frames at their x in a row, tops level, with room above and below."""
    height = above + below + max(frame.height for _x, frame in cells)
    placed = [Placed(x, height - above - frame.height, frame) for x, frame in cells]
    return Frame(width, height, tuple(placed))


def ruled(frame: Frame, *, tone: str = "hairline") -> Frame:
    """Return the frame with a hairline along its foot."""
    return replace(frame, things=(*frame.things, Line(0, 0, frame.width, 0, 0.6, tone)))


def panel(title: str, text: str, width: float) -> Frame:
    """Return a pale panel for cautions: a title, and the text under it."""
    inner = width - 2 * PANEL_PADDING
    words = under_one_another(
        [paragraph(title, inner, STRONG), paragraph(text, inner, Style(10.5))], gap=3
    )
    height = words.height + 2 * PANEL_PADDING
    box = Box(0, 0, width, height, radius=6, fill="panel")
    return Frame(width, height, (box, Placed(PANEL_PADDING, PANEL_PADDING, words)))


def swatch(team: int, *, width: float = 9, height: float = 20) -> Frame:
    """Return a small piece of a team's ribbon."""
    return Frame(width, height, (Ribbon(0, 0, width, height, team),))


def headed(name: str, owner: int, width: float) -> Frame:
    """Return the heading of what belongs to one owner, with a piece of the owner's ribbon."""
    words = paragraph(name, width - BESIDE_SWATCH, HEADING)
    ribbon = swatch(owner, height=words.height)
    return side_by_side([(0, ribbon), (BESIDE_SWATCH, words)], width)


def headed_with(name: str, about: str, owner: int | None, width: float) -> Frame:
    """Return a heading with a note beside it, and a piece of the owner's ribbon, if it has one."""
    start = 0 if owner is None else BESIDE_SWATCH
    room = width - start
    left = min(width_of(name, HEADING) + BESIDE_HEADING, 0.8 * room)
    note = paragraph(about, room - left, NOTE, first=TEXT_ASCENT * HEADING.size)
    words = side_by_side([(0, paragraph(name, left, HEADING)), (left, note)], room)
    ribbon = [] if owner is None else [(0, swatch(owner, height=words.height))]
    return side_by_side([*ribbon, (start, words)], width)


def continued(name: str, owner: int | None, width: float) -> Frame:
    """Return what stands where something goes on to another page: what it is and whose."""
    return headed_with(name, "continued", owner, width)


def gap(height: float) -> Frame:
    """Return white space."""
    return Frame(0, height, ())


def framed(frame: Frame, things: Sequence[Thing]) -> Frame:
    """Return the frame with more things on it."""
    return replace(frame, things=(*frame.things, *things))
