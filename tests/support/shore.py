"""A unit for the tests, and the command as a user runs it."""

import subprocess
import sys
from pathlib import Path

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


def fairdeal(*words: object, cwd: Path | None = None, **environment: str):
    """Run the command as a user does; return the finished process."""
    return subprocess.run(
        [sys.executable, "-m", "decks", *map(str, words)],
        capture_output=True,
        encoding="utf-8",
        errors="replace",
        check=False,
        cwd=cwd,
        env={"PATH": "", "PYTHONUTF8": "1", **environment},
    )
