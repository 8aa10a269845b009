"""SVG drawings become pixels, in bounds.

A drawing of a few lines can ask for more time and memory than any computer has, and a fault in the
library that draws ends the process that it is in. Therefore one process is kept beside this one,
which is stopped, and started anew, when it takes too long.
"""

import atexit
import json
import subprocess
import sys
from collections.abc import Mapping
from pathlib import Path
from threading import Event, Timer

from msgspec import Struct

from cards.reading.pictures.unusable import broken, too_much_to_draw

_SCRIPT = Path(__file__).with_name("drawing_apart.py")
# Far more than a drawing takes, on an old computer as well: at any size, and for each pixel.
_SECONDS = 2.0
_SECONDS_A_PIXEL = 0.5e-6
# When one has taken too long, the others are given a part of that: a file may be full of them.
_LESS = 4


class _Beside(Struct):
    """The process that draws, if there is one, and how often it had to be stopped."""

    process: subprocess.Popen[bytes] | None = None
    stopped: int = 0

    def draw(self, svg: bytes, how: Mapping[str, object], seconds: float) -> bytes:
        """Return a PNG, or nothing if it cannot be drawn; raise if that takes too long."""
        process = self.process = self.process or _started()
        late = Event()

        def stop() -> None:
            late.set()
            process.kill()

        timer = Timer(seconds / _LESS if self.stopped else seconds, stop)
        timer.daemon = True
        timer.start()
        try:
            return _answer(process, svg, how)
        except (OSError, ValueError) as error:
            self.close()
            if late.is_set():
                self.stopped += 1
                raise too_much_to_draw("that takes too long to draw") from error
            return b""
        finally:
            timer.cancel()

    def close(self) -> None:
        """Stop the process."""
        if self.process:
            self.process.kill()
            self.process.communicate()
            self.process = None


_beside = _Beside()
atexit.register(_beside.close)


def drawn(svg: bytes, *, width: int, height: int, **how: object) -> bytes:
    """Return a drawing as a PNG of so many pixels; `how` are options of `resvg_py.svg_to_bytes`.

    Raises `UnusablePictureError` if it cannot be drawn, or not in a few seconds.
    """
    seconds = _SECONDS + _SECONDS_A_PIXEL * width * height
    png = _beside.draw(svg, {"width": width, "height": height, **how}, seconds)
    if not png:
        raise broken()
    return png


def _started() -> subprocess.Popen[bytes]:
    # The library writes to the error stream when it fails.
    return subprocess.Popen(  # noqa: S603 (our own script)
        [sys.executable, "-P", str(_SCRIPT)],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.DEVNULL,
    )


def _answer(process: subprocess.Popen[bytes], svg: bytes, how: Mapping[str, object]) -> bytes:
    if process.stdin is None or process.stdout is None:
        raise ValueError(process)
    process.stdin.write(json.dumps({**how, "bytes": len(svg)}).encode() + b"\n" + svg)
    process.stdin.flush()
    size = int(process.stdout.readline())
    png = process.stdout.read(size)
    if len(png) < size:
        raise ValueError(size)
    return png
