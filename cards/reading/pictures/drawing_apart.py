"""Draws SVG drawings for `drawn.py`, in a process of its own; it is run as a script.

Nothing of this program is imported here: the process starts in the time of Python alone. Each
request is a line of JSON, the last of whose values is the number of bytes of drawing that follow;
each answer is a line with a number of bytes, and these bytes: a PNG, or nothing if it cannot be
drawn.
"""

import json
import sys
from collections.abc import Mapping
from typing import Any

_MOST_MEMORY = 448 << 20
"""Bytes of addresses: a page at 450 dots an inch is 67 million of them, and each layer as many."""


def main() -> None:
    """Answer every request until there are no more."""
    _bound_memory()
    import resvg_py  # noqa: PLC0415 (after the bound)

    del resvg_py
    while line := sys.stdin.buffer.readline():
        asked = json.loads(line)
        svg = sys.stdin.buffer.read(asked.pop("bytes")).decode()
        png = _drawn(svg, asked)
        sys.stdout.buffer.write(b"%d\n%b" % (len(png), png))
        sys.stdout.buffer.flush()


def _drawn(svg: str, how: Mapping[str, Any]) -> bytes:
    import resvg_py  # noqa: PLC0415 (as above)

    try:
        return bytes(resvg_py.svg_to_bytes(svg_string=svg, skip_system_fonts=True, **how))
    # What the library did not expect is no `Exception`.
    except BaseException:  # noqa: BLE001
        return b""


def _bound_memory() -> None:
    try:
        import resource  # noqa: PLC0415 (not on every system)
    except ImportError:
        return
    resource.setrlimit(resource.RLIMIT_AS, (_MOST_MEMORY, _MOST_MEMORY))


if __name__ == "__main__":
    main()
