"""A line of runs becomes pieces from left to right, with a face for every letter."""

from collections.abc import Iterator, Sequence
from functools import cache, lru_cache
from itertools import groupby
from unicodedata import normalize

from msgspec import Struct
from msgspec.structs import replace

from decks.layout.runs import Run
from decks.press.script.direction import levels_of, right_to_left, visual
from decks.press.script.faces import FIRA, Source, open_face, source_of
from decks.press.script.glyphs import Cluster, Part, shape
from decks.press.script.signs import SIGNS
from decks.press.script.spelling import INVISIBLE, clusters, spelt
from decks.press.type import plain


class Piece(Struct, frozen=True):
    """Part of a line in one face, one direction and one style, from its left end.

    A source of None stands for the signs we draw. Where `letters` is not empty, plain Fira Sans
    sets them one beside the other and there are no clusters. The width is in ems of the line's
    size, with the run's own scale taken in.
    """

    source: Source | None
    run: Run
    clusters: tuple[Cluster, ...]
    letters: str
    width: float

    @property
    def text(self) -> str:
        """The characters of the piece from left to right."""
        return self.letters or "".join(cluster.text for cluster in self.clusters)


class _Letter(Struct, frozen=True):
    """A character that is set, the text it stands for, and how it is set."""

    shown: str
    text: str
    run: Run
    source: Source | None


@lru_cache(maxsize=8192)  # each holds the shapes of a word or line
def set_runs(runs: tuple[Run, ...], *, to_left: bool | None = None) -> tuple[Piece, ...]:
    """Return the pieces of a line from the left; characters that no face has are left out.

    `to_left` is how the line's paragraph runs; where it is None, the line's first letter tells.
    """
    letters = [letter for run in runs for letter in _letters(run)]
    line = "".join(letter.shown for letter in letters)
    levels = levels_of(line, int(right_to_left(line) if to_left is None else to_left))
    levelled = zip(letters, levels, strict=True)
    pieces: list[Piece] = []
    sides: list[int] = []
    start = 0
    for (_source, _run, level), same in groupby(levelled, lambda x: (x[0].source, x[0].run, x[1])):
        part = [letter for letter, _level in same]
        pieces.append(_piece(part, line, start, to_left=level % 2 == 1))
        sides.append(level)
        start += len(part)
    return tuple(pieces[n] for n in visual(sides))


def width_of(runs: tuple[Run, ...]) -> float:
    """Return the width of a line in ems of its size."""
    return sum(piece.width for piece in set_runs(runs))


def _letters(run: Run) -> Iterator[_Letter]:
    before = FIRA
    style = replace(run, text="")
    for cluster in clusters(normalize("NFC", run.text)):
        pairs, whole = _set(cluster)
        for letter, text in pairs:
            source = _source(letter, whole, before)
            before = source or FIRA
            yield _Letter(letter, text, style, source)


@cache
def _set(cluster: str) -> tuple[tuple[tuple[str, str], ...], Source | None]:
    """Return what is set for a cluster, each with the text it stands for, and a face with all."""
    pairs = [
        (c, "" if n else letter) for letter in cluster for n, c in enumerate(spelt(letter) or "")
    ]
    return tuple(pairs), source_of("".join(c for c, _text in pairs if c not in INVISIBLE))


def _source(letter: str, whole: Source | None, before: Source) -> Source | None:
    """Return the face for a letter: that of its cluster, and for blanks that of their neighbour."""
    if letter in INVISIBLE or (letter == " " and before.blocks):
        return before
    return whole or source_of(letter)


def _piece(letters: Sequence[_Letter], line: str, start: int, *, to_left: bool) -> Piece:
    source, run = letters[0].source, letters[0].run
    shown = "".join(letter.shown for letter in letters)
    texts = [letter.text for letter in letters]
    if source is FIRA and not to_left and shown == "".join(texts) and plain.is_plain(shown):
        wide = plain.width_of(shown, strong=run.strong)
        return Piece(FIRA, run, (), shown, wide * run.scale)
    if source is None:
        drawn = [_sign(letter) for letter in letters]
        glyphs = tuple(reversed(drawn) if to_left else drawn)
    else:
        face = open_face(source, strong=run.strong)
        places = range(start, start + len(letters))
        glyphs = shape(face, line, places, texts, to_left=to_left)
    return Piece(source, run, glyphs, "", sum(g.advance for g in glyphs) * run.scale)


def _sign(letter: _Letter) -> Cluster:
    return Cluster((Part(ord(letter.shown)),), SIGNS[letter.shown].width, letter.text)
