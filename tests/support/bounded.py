"""Reading files that are absurd or hostile, where little memory is to be had.

Each is read in a process of its own that may take 1 GiB of addresses and has a minute until it is
stopped: what is not bounded fails by itself, on a slow computer as well.
"""

import os
import resource
import subprocess
import sys
from collections.abc import Iterator
from itertools import repeat
from pathlib import Path

ROOT = Path(__file__).parents[2]
MIB = 1 << 20
REFUSED = 3
CODE = """
import sys
from pathlib import Path
from cards.finding import UnusableFileError
from cards.reading import read
try:
    print(*(f"{item.prompt}: {item.answer}" for item in read(Path(sys.argv[1])).items), sep="; ")
except UnusableFileError as refused:
    print(refused)
    sys.exit(3)
"""


def run(path: Path) -> subprocess.CompletedProcess[str]:
    def bound() -> None:
        resource.setrlimit(resource.RLIMIT_AS, (1 << 30, 1 << 30))

    return subprocess.run(
        [sys.executable, "-c", CODE, path],
        capture_output=True,
        encoding="utf-8",
        check=False,
        cwd=ROOT,
        timeout=60,
        # Each thread of a numerical library reserves addresses that it never uses.
        env=os.environ | {"OPENBLAS_NUM_THREADS": "1"},
        preexec_fn=bound,
    )


def content(path: Path) -> str:
    done = run(path)
    assert done.returncode == 0, done.stdout + done.stderr[-2000:]
    return done.stdout.strip()


def refusal(path: Path) -> str:
    done = run(path)
    assert done.returncode == REFUSED, done.stdout + done.stderr[-2000:]
    assert done.stderr == ""
    [line] = done.stdout.splitlines()
    assert line.startswith(path.name)
    return line


def pieces(start: str, middle: bytes, times: int, end: str) -> Iterator[bytes]:
    """Yield a text with a long middle; written in pieces of about a mebibyte."""
    at_once = max(MIB // len(middle), 1)
    yield start.encode()
    yield from repeat(middle * at_once, times // at_once)
    yield middle * (times % at_once) + end.encode()


def parted(xml: str, mark: str = "<!-- here -->") -> tuple[str, str]:
    start, _, end = xml.partition(mark)
    return start, end
