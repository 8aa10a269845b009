"""A unit for the tests, and the command as a user runs it."""

import contextlib
import os
import subprocess
import sys
from io import BytesIO, TextIOWrapper
from pathlib import Path
from unittest import mock

from decks.commands import main

TOPICS = ("Tides", "Zones", "Life")
LEVELS = ("easy", "medium", "hard")
ITEMS = [
    (
        f"Clue number {n} of the shore, a plain sentence to be read",
        f"word{n}" if n % 4 else f"several words in answer {n}",
        TOPICS[n % 3],
        LEVELS[n // 3 % 3],
    )
    for n in range(1, 23)
]
"""22 items: not a multiple of any page's slots, so that the last leaves have blanks."""


READ_ANEW = {"FAIRDEAL_SETTINGS"}
"""The environment that the command reads at every run; the rest takes a new process."""


def fairdeal(*words: object, cwd: Path | None = None, **environment: str):
    """Run the command as a user does; return the finished process.

    It runs in this process, through the same entry, which saves starting Python hundreds of times;
    with an environment of its own it runs in a new one.
    """
    argv = list(map(str, words))
    if set(environment) <= READ_ANEW:
        return _run_here(argv, cwd or Path.cwd(), environment)
    return subprocess.run(
        [sys.executable, "-m", "decks", *argv],
        capture_output=True,
        encoding="utf-8",
        errors="replace",
        check=False,
        cwd=cwd,
        env={"PATH": "", "PYTHONUTF8": "1", **environment},
    )


def _run_here(argv: list[str], cwd: Path, environment: dict[str, str]):
    streams = [TextIOWrapper(BytesIO(), encoding="utf-8", write_through=True) for _ in range(2)]
    status = 0
    with (
        mock.patch.object(sys, "argv", ["fairdeal", *argv]),
        mock.patch.dict(os.environ, environment),
        contextlib.chdir(cwd),
        contextlib.redirect_stdout(streams[0]),
        contextlib.redirect_stderr(streams[1]),
    ):
        try:
            main()
        except SystemExit as end:
            status = end.code if isinstance(end.code, int) else int(end.code is not None)
    told = [stream.buffer.getvalue().decode() for stream in streams]
    return subprocess.CompletedProcess(argv, status, *told)
