"""The command under watch: what each run says, takes, opens, starts and connects to.

All runs are in one process of its own, so that a hundred files cost one start of Python. Python
tells of every file, connection and process through its audit events (PEP 578), whoever asks.
"""

import json
import subprocess
import sys
from collections.abc import Iterable, Sequence
from pathlib import Path

from msgspec import Struct

ROOT = Path(__file__).parents[2]
CAN_BE_WATCHED = Path("/proc/self/clear_refs").exists()
"""Memory is measured by what Linux tells of a process."""

# The bounds that were promised; seconds are those of the processor, however busy it is.
MOST_SECONDS, MOST_BYTES = 5, 500 << 20
_SECONDS = 300


class Run(Struct, frozen=True):
    """One run: its status, what it printed, and what it took; `peak` is in bytes.

    `opened` are the files outside Python and the program itself, each with the mode; `changed` the
    paths that were made, moved or removed; `events` all other events that reach outside, such as
    connections, processes and removals.
    """

    status: int
    told: str
    warned: str
    seconds: float
    peak: int
    opened: tuple[tuple[str, str], ...]
    changed: tuple[str, ...]
    events: tuple[tuple[str, str], ...]

    @property
    def lines(self) -> list[str]:
        """All that was printed, line by line."""
        return (self.told + self.warned).splitlines()


def watched(runs: Iterable[Sequence[object]], settings: Path) -> list[Run]:
    """Run the command with each list of words.

    `settings` is a folder for the user's settings, also the home and that of temporary files.
    """
    asked = json.dumps([list(map(str, words)) for words in runs])
    done = subprocess.run(
        [sys.executable, str(Path(__file__)), str(settings)],
        input=asked,
        capture_output=True,
        encoding="utf-8",
        check=False,
        cwd=settings,
        timeout=_SECONDS,
        env={
            "HOME": str(settings),
            "TMPDIR": str(settings),
            "OPENBLAS_NUM_THREADS": "1",
            "PYTHONDONTWRITEBYTECODE": "1",
            "PYTHONPATH": str(ROOT),
            "PYTHONUTF8": "1",
        },
    )
    assert done.returncode == 0, done.stderr[-2000:]
    return [Run(**_tupled(line)) for line in done.stdout.splitlines()]


def _tupled(line: str) -> dict:
    run = json.loads(line)
    pairs = {key: tuple(map(tuple, run[key])) for key in ("opened", "events")}
    return run | pairs | {"changed": tuple(run["changed"])}


if __name__ == "__main__":
    from watching import watch

    watch(json.load(sys.stdin), sys.argv[1])
