"""The faces behind Fira Sans: which one has a letter, and its outlines at a weight.

Each script has one face, made to stand beside a plain sans serif; the rest is looked for in faces
with many letters and signs. Static files serve as they are. A variable file is set to its weight
when it is measured and when its letters are embedded, so that no instance need be made beforehand.
"""

from functools import cache
from types import MappingProxyType
from unicodedata import mirrored

import uharfbuzz as hb
from msgspec import Struct

from decks.press.script.signs import SIGNS
from decks.press.type.plain import file_in, rise_of

SET_APART = MappingProxyType({"kern": False, "liga": False, "calt": False, "clig": False})
"""What is asked of a face whose letters stand beside one another as they do in plain Fira Sans."""


class Source(Struct, frozen=True):
    """Where a face comes from, which blocks of Unicode it serves (all where none), and how.

    Those files and weights are taken that look as heavy as Fira Sans, whose stems measure 92 and
    142 thousandths of an em. `plain` is a plain letter, by which heights are measured.
    """

    package: str
    regular: str
    strong: str
    blocks: tuple[tuple[int, int], ...] = ()
    set_apart: bool = False
    weights: tuple[int, int] = (400, 600)
    plain: str = "x"

    @property
    def features(self) -> dict[str, bool]:
        """What is asked of the face beyond what its script needs."""
        return dict(SET_APART) if self.set_apart else {}

    def serves(self, letter: str) -> bool:
        """Whether the face is asked for this letter at all."""
        code = ord(letter)
        return not self.blocks or any(first <= code <= last for first, last in self.blocks)


FIRA = Source("fontpkg_fira_sans", "FiraSans-Regular.ttf", "FiraSans-SemiBold.ttf", set_apart=True)
SOURCES = (
    FIRA,
    Source(
        "fontpkg_assistant",
        "Assistant[wght].ttf",
        "Assistant[wght].ttf",
        blocks=((0x0590, 0x05FF), (0xFB1D, 0xFB4F)),
        plain="\u05d4",
        weights=(500, 690),
    ),
    Source(
        "fontpkg_ibm_plex_sans_arabic",
        "IBMPlexSansArabic-Regular.ttf",
        "IBMPlexSansArabic-Bold.ttf",
        blocks=((0x0600, 0x06FF), (0x0750, 0x077F), (0xFB50, 0xFDFF), (0xFE70, 0xFEFC)),
        plain="\u062d",
    ),
    Source(
        "fontpkg_mukta",
        "Mukta-Regular.ttf",
        "Mukta-Bold.ttf",
        blocks=((0x0900, 0x097F), (0x1CD0, 0x1CFF), (0xA8E0, 0xA8FF)),
        plain="\u0915",
    ),
    Source(
        "fontpkg_noto_sans",
        "NotoSans[wdth,wght].ttf",
        "NotoSans[wdth,wght].ttf",
        weights=(415, 660),
    ),
    Source("fontpkg_fira_code", "FiraCode[wght].ttf", "FiraCode[wght].ttf", set_apart=True),
)
"""The faces in the order they are asked; the first that has a letter sets it."""

SIGNS_LAST = SOURCES[-1]
"""Its signs are made for columns of code; ours are taken where we draw one."""


class Face(Struct, frozen=True, eq=False):
    """A face at a weight, ready to be measured and shaped."""

    source: Source
    strong: bool
    file: hb.Face
    font: hb.Font
    letters: frozenset[int]

    @property
    def axes(self) -> dict[str, float]:
        """Where on each axis of a variable file this face lies."""
        return {
            axis.tag: self.source.weights[self.strong] if axis.tag == "wght" else axis.default_value
            for axis in self.file.axis_infos
        }

    @property
    def name(self) -> str:
        """What the face is called in a PDF."""
        family = self.source.package.removeprefix("fontpkg_").replace("_", "-")
        return f"{family}-{'Strong' if self.strong else 'Regular'}"

    @property
    def mirror(self) -> dict[int, str]:
        """The sign that each glyph shows which has a mirror image: brackets and the like."""
        return _mirrored(self)

    def top(self, letter: str) -> float:
        """Return how far a letter rises above the baseline, in ems."""
        return rise_of(letter, self.font)


@cache
def open_face(source: Source, *, strong: bool) -> Face:
    """Return a face at a weight."""
    name = source.strong if strong else source.regular
    file = hb.Face(hb.Blob(file_in(source.package, name)))
    face = Face(source, strong, file, hb.Font(file), frozenset(file.unicodes))
    if face.axes:
        face.font.set_variations(face.axes)
    return face


@cache
def _mirrored(face: Face) -> dict[int, str]:
    signs = [chr(code) for code in sorted(face.letters) if mirrored(chr(code))]
    return {face.font.get_nominal_glyph(ord(sign)): sign for sign in signs}


@cache
def source_of(letters: str) -> Source | None:
    """Return the first face that has all these letters, in both weights; None where none has."""
    codes = {ord(letter) for letter in letters}
    for source in SOURCES:
        if source is SIGNS_LAST and drawn(letters):
            return None
        if all(map(source.serves, letters)) and all(
            codes <= open_face(source, strong=strong).letters for strong in (False, True)
        ):
            return source
    return None


def drawn(letter: str) -> bool:
    """Whether a letter is one of the signs that we draw ourselves."""
    return letter in SIGNS
