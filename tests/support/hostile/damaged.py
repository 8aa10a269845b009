"""Files cut off in the middle, and files of which a few bits have turned over."""

import random
from collections.abc import Iterator

from support.hostile.sound import OPENDOCUMENT, TEXT, WORKBOOK, archive, parts_in

_SOUND = {"xlsx": WORKBOOK, "ods": OPENDOCUMENT, "csv": TEXT}
_FLIPPED = 20
_FLIPS = 3


def flipped(data: bytes, luck: random.Random) -> bytes:
    """Return some bytes with a few bits turned over."""
    spoilt = bytearray(data)
    for _ in range(_FLIPS):
        spoilt[luck.randrange(len(spoilt))] ^= 1 << luck.randrange(8)
    return bytes(spoilt)


def _flipped_inside(data: bytes, luck: random.Random) -> bytes:
    """Return an archive that is sound, with bits turned over in one of the parts in it."""
    parts = parts_in(data)
    part = luck.choice(sorted(parts))
    return archive(parts | {part: flipped(parts[part], luck)})


def _damaged() -> Iterator[tuple[str, bytes]]:
    luck = random.Random(8)
    for kind, data in _SOUND.items():
        for tenth in range(1, 10):
            yield f"cut-{tenth}.{kind}", data[: len(data) * tenth // 10]
        yield f"headless.{kind}", data[300:]
        for number in range(_FLIPPED):
            yield f"flipped-{number}.{kind}", flipped(data, luck)
            if kind != "csv":
                yield f"flipped-inside-{number}.{kind}", _flipped_inside(data, luck)


DAMAGED = dict(_damaged())
