"""Which way a text runs, and in which order its letters stand on the line.

This is the implicit part of the Unicode bidirectional algorithm (UAX #9: P2–P3, W1–W7, N0–N2,
I1–I2, L1–L2), over one line. Embedding, override and isolate controls have no effect: a teacher's
text must not be able to turn the text round it.
"""

from collections.abc import Iterator, Sequence
from functools import lru_cache
from unicodedata import bidirectional, normalize

from decks.press.script.brackets import pairs_of

RIGHT = frozenset({"R", "AL"})
TURNED = RIGHT | {"AN"}
IGNORED = frozenset({"BN", "LRE", "RLE", "LRO", "RLO", "PDF", "LRI", "RLI", "FSI", "PDI"})
NEUTRAL = frozenset({"B", "S", "WS", "ON"})
"""What takes the direction of its neighbours once numbers and brackets have been settled."""


def turns(text: str) -> bool:
    """Whether some of a text runs from right to left, so that its order must be worked out."""
    return not text.isascii() and _turns(text)


@lru_cache(maxsize=32768)
def _turns(text: str) -> bool:
    return any(bidirectional(c) in TURNED for c in text)


def right_to_left(text: str) -> bool:
    """Whether a paragraph runs from right to left: whether its first strong letter does (P2–P3)."""
    if not turns(text):
        return False
    return next((kind in RIGHT for c in text if (kind := bidirectional(c)) in RIGHT | {"L"}), False)


def levels_of(text: str, base: int) -> list[int]:
    """Return the level of each character of a line in a paragraph of level `base` (0 or 1).

    An even level runs from left to right, an odd one from right to left. An ignored control has
    the level of the character before it.
    """
    kinds = [bidirectional(c) or "L" for c in text]
    kept = [n for n, kind in enumerate(kinds) if kind not in IGNORED]
    settled = _settled([kinds[n] for n in kept], [text[n] for n in kept], base)
    inner = dict(zip(kept, (_level(kind, base) for kind in settled), strict=True))
    levels: list[int] = []
    for n in range(len(text)):
        levels.append(inner.get(n, levels[-1] if levels else base))
    return _blanks_at_ends(kinds, levels, base)


def visual(levels: Sequence[int]) -> list[int]:
    """Return the places of things of these levels in the order they stand from the left (L2)."""
    order = list(range(len(levels)))
    odd = [level for level in levels if level % 2]
    for level in range(max(levels, default=0), min(odd, default=1) - 1, -1):
        for start, end in _stretches([levels[n] >= level for n in order]):
            order[start:end] = order[start:end][::-1]
    return order


def _stretches(marks: Sequence[bool]) -> Iterator[tuple[int, int]]:
    start = None
    for n, mark in enumerate([*marks, False]):
        if mark and start is None:
            start = n
        elif not mark and start is not None:
            yield start, n
            start = None


def _level(kind: str, base: int) -> int:
    """I1 and I2."""
    if base % 2:
        return base + (kind in {"L", "EN", "AN"})
    return base + {"R": 1, "AN": 2, "EN": 2}.get(kind, 0)


def _settled(kinds: list[str], letters: list[str], base: int) -> list[str]:
    """Return L, R, EN or AN for each character."""
    outside = "R" if base else "L"
    weak = _numbers(_marks(kinds, outside), outside)
    return _neutrals(_brackets(weak, kinds, letters, outside), outside)


def _marks(kinds: Sequence[str], outside: str) -> list[str]:
    """W1: a combining mark is of the kind of its letter. W2, W3: numbers after Arabic letters."""
    found: list[str] = []
    strong = outside
    for kind in kinds:
        kind = (found[-1] if found else outside) if kind == "NSM" else kind  # noqa: PLW2901
        strong = kind if kind in RIGHT | {"L"} else strong
        found.append("AN" if kind == "EN" and strong == "AL" else kind)
    return ["R" if kind == "AL" else kind for kind in found]


def _numbers(kinds: list[str], outside: str) -> list[str]:
    """W4 to W7: signs inside and beside numbers, and numbers after Latin letters."""
    for n in range(1, len(kinds) - 1):
        left, sign, right = kinds[n - 1 : n + 2]
        if left == right and (sign, left) in {("ES", "EN"), ("CS", "EN"), ("CS", "AN")}:
            kinds[n] = left
    for start, end in _stretches([kind == "ET" for kind in kinds]):
        if "EN" in (kinds[max(start - 1, 0)], kinds[min(end, len(kinds) - 1)]):
            kinds[start:end] = ["EN"] * (end - start)
    strong = outside
    for n, kind in enumerate(kinds):
        strong = kind if kind in {"L", "R"} else strong
        if kind in {"ES", "ET", "CS"}:
            kinds[n] = "ON"
        elif kind == "EN" and strong == "L":
            kinds[n] = "L"
    return kinds


def _brackets(
    kinds: list[str], first: Sequence[str], letters: list[str], outside: str
) -> list[str]:
    """N0: both brackets of a pair take one direction."""
    neutral = [c if kind == "ON" else "" for c, kind in zip(letters, kinds, strict=True)]
    for start, end in pairs_of([normalize("NFC", c) for c in neutral]):
        side = _side(kinds, start, end, outside)
        if side is None:
            continue
        for place in (start, end):
            kinds[place] = side
            for n in range(place + 1, len(kinds)):
                if first[n] != "NSM":
                    break
                kinds[n] = side
    return kinds


def _side(kinds: Sequence[str], start: int, end: int, outside: str) -> str | None:
    inside = {_strong(kind) for kind in kinds[start + 1 : end]} - {None}
    if outside in inside:
        return outside
    if not inside:
        return None
    before = (strong for kind in reversed(kinds[:start]) if (strong := _strong(kind)))
    return next(before, outside)


def _strong(kind: str) -> str | None:
    return {"L": "L", "R": "R", "EN": "R", "AN": "R"}.get(kind)


def _neutrals(kinds: list[str], outside: str) -> list[str]:
    """N1 and N2: what stands between two of one direction has it, else that of the paragraph."""
    for start, end in _stretches([kind in NEUTRAL for kind in kinds]):
        left = _strong(kinds[start - 1]) if start else outside
        right = _strong(kinds[end]) if end < len(kinds) else outside
        kinds[start:end] = [left if left == right and left else outside] * (end - start)
    return kinds


def _blanks_at_ends(kinds: Sequence[str], levels: list[int], base: int) -> list[int]:
    """L1: tabs, and blanks before them and at the end of the line, are of the paragraph's level."""
    ending = True
    for n in range(len(kinds) - 1, -1, -1):
        if kinds[n] in {"S", "B"}:
            ending = True
        elif kinds[n] != "WS" and kinds[n] not in IGNORED:
            ending = False
        if ending:
            levels[n] = base
    return levels
