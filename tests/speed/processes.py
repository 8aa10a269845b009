"""Whole processes, timed: the processor's seconds and the most memory that they held.

A processor's seconds depend less than a clock's on what else the machine is doing.
"""

import compileall
import os
import statistics
import subprocess
import sys
import tempfile
from collections.abc import Callable, Mapping
from pathlib import Path

from msgspec import Struct, field

PYTHON = sys.executable
ROOT = Path(__file__).parents[2]

Command = list[str]


class Took(Struct, frozen=True):
    """Processor seconds and kibibytes, run by run."""

    seconds: list[float] = field(default_factory=list)
    kibibytes: list[int] = field(default_factory=list)

    @property
    def median(self) -> float:
        """The median of the seconds."""
        return statistics.median(self.seconds)

    @property
    def mebibytes(self) -> float:
        """The most memory that any run held."""
        return max(self.kibibytes) / 1024


def compile_as_installed() -> None:
    """Compile our modules, as pip does with a program that it installs.

    A tree that Python may not write to is otherwise compiled anew by every process: 0.25 s of them.
    """
    for package in ("cards", "decks"):
        compileall.compile_dir(ROOT / package, quiet=1)


def fairdeal(*arguments: object) -> Command:
    """Return our command with arguments, run from the tree."""
    return [PYTHON, "-m", "decks", *map(str, arguments)]


def time_all(commands: Mapping[str, Command], runs: Callable[[str], int]) -> dict[str, Took]:
    """Run the commands in turn, each as often as `runs` says of its name, in an empty folder."""
    compile_as_installed()
    took = {name: Took() for name in commands}
    for run in range(max(map(runs, commands))):
        for name, command in commands.items():
            if run < runs(name):
                with tempfile.TemporaryDirectory() as folder:
                    _time(command, took[name], folder)
    return took


def said(command: Command, folder: Path) -> str:
    """Return what a command prints."""
    done = subprocess.run(
        command, cwd=folder, env=_environment(), capture_output=True, text=True, check=True
    )
    return done.stdout


def _time(command: Command, took: Took, folder: str) -> None:
    started = subprocess.Popen(
        command,
        cwd=folder,
        env=_environment(),
        stdout=subprocess.DEVNULL,
        stderr=subprocess.DEVNULL,
    )
    _, status, usage = os.wait4(started.pid, 0)
    started.returncode = os.waitstatus_to_exitcode(status)
    took.seconds.append(usage.ru_utime + usage.ru_stime)
    took.kibibytes.append(usage.ru_maxrss)
    if status:
        raise SystemExit(f"It failed: {' '.join(command)}")


def _environment() -> dict[str, str]:
    return os.environ | {"PYTHONPATH": str(ROOT)}
