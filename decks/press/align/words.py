"""What the test page of `fairdeal align` says: how to read it, and what to type."""

from decks.layout.frame import Box, Frame, Placed
from decks.press.type.setting import (
    BODY,
    NOTE,
    STRONG,
    TITLE,
    Style,
    gap,
    paragraph,
    side_by_side,
    under_one_another,
)
from decks.recipe import Flip

STEP = 16
"""Room for the number of a step, in points."""
PADDING = 9

STEPS = (
    (
        "Hold the leaf against a window with this side towards you, so that the lines of the "
        "front shine through. On card too thick for that, push a pin through the middle of each."
    ),
    (
        "Read where each line crosses its scale, to a tenth of a millimetre, with the minus if "
        "there is one, and write it beside the scale."
    ),
    "Type this, with your own name for the printer and the numbers in place of the dots:",
)
SHORT = (
    "Hold the leaf to the light with this side towards you. Read where the lines cross the scales, "
    "then type:"
)


def command(*, turned: bool, flip: Flip, foot: bool) -> str:
    """Return what a teacher types for a leaf, with dots in place of the numbers."""
    words = ['fairdeal align --set "Staff room" --right … --up …']
    words += ["--foot …"] * foot + ["--turned"] * turned + ["--flip short"] * (flip is Flip.SHORT)
    return " ".join(words)


def how_to_read(typed: str, flip: Flip, *, turned: bool, foot: bool, width: float) -> Frame:
    """Return the directions for the back of a leaf, in a column of this width."""
    pages = "wider than high" if turned else "higher than wide"
    blocks = [
        paragraph("Where does the back land?", width, TITLE),
        paragraph(f"This leaf measures pages that are {pages}.", width, Style(11, tone="quiet")),
        gap(5),
        *[_step(n, text, width) for n, text in enumerate(STEPS, start=1)],
        _typed(typed, width),
        gap(1),
        paragraph(_cautions(flip, foot=foot), width, NOTE),
    ]
    return under_one_another(blocks, gap=5)


def in_short(typed: str, width: float) -> Frame:
    """Return the directions for a small page."""
    return under_one_another(
        [paragraph(SHORT, width, NOTE), paragraph(typed, width, Style(9, strong=True))], gap=3
    )


def before_reading(width: float) -> Frame:
    """Return what the front says."""
    text = "Nothing to read here. Turn the leaf over: the back says how to go on."
    return paragraph(text, width, Style(11, tone="quiet"))


def _cautions(flip: Flip, *, foot: bool) -> str:
    words = (
        "The dark corners must lie back to back. If they do not, the paper was flipped on the "
        f"other edge: print again, flipped on the {flip} edge."
    )
    if foot:
        words += " If the number at the foot is the same as right, leave --foot out."
    return f"{words} From then on, build with --printer."


def _step(number: int, text: str, width: float) -> Frame:
    figure = paragraph(str(number), STEP, STRONG)
    return side_by_side([(0, figure), (STEP, paragraph(text, width - STEP, BODY))], width)


def _typed(text: str, width: float) -> Frame:
    words = paragraph(text, width - 2 * PADDING, STRONG)
    height = words.height + 2 * PADDING
    box = Box(0, 0, width, height, radius=6, fill="panel")
    return Frame(width, height, (box, Placed(PADDING, PADDING, words)))
