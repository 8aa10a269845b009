"""Builds in processes that come to grief, each begun with everything loaded, which saves minutes.

A script, run by `tests/abuse/test_interruption.py`. It builds a first deck, then does as it is
told, and tells in `ends.json` what came of it.
"""

import json
import os
import shutil
import signal
import sys
import tempfile
from collections.abc import Callable
from functools import partial
from itertools import cycle
from pathlib import Path

ROOT = Path(__file__).parents[2]
EARLY, LATE = 8, 12
"""Points of a build before its files are written, and from then on: twenty."""

WRITING = "tempfile.mkdtemp"
"""The audit event with which the writing begins."""

Spy = Callable[[], None]


def build(book: Path, out: Path, spy: Spy) -> int:
    """Run the command in a process of its own, and return its status; below 0 is a signal."""
    return ended(begun(book, out, spy))


def begun(book: Path, out: Path, spy: Spy) -> int:
    process = os.fork()
    if process:
        return process
    status = 1
    try:
        spy()
        status = run(book, out)
        sys.setprofile(None)
    finally:
        os._exit(status)


def ended(process: int) -> int:
    return os.waitstatus_to_exitcode(os.waitpid(process, 0)[1])


def run(book: Path, out: Path) -> int:
    """Run the command in this process and return its status; what it prints goes into files."""
    from decks.commands import main  # noqa: PLC0415 (the path to it is set below)

    for number, name in ((1, "told"), (2, "complaints")):
        file = os.open(out / name, os.O_WRONLY | os.O_CREAT)
        os.dup2(file, number)
        os.close(file)
    sys.argv = ["fairdeal", "build", str(book), "--teams", "2", "--out", str(out)]
    try:
        main()
    except SystemExit as end:
        return end.code or 0
    return 0


def at_call(number: int, do: Callable[[], None]) -> Spy:
    """Return what does something at a call of a function, by its number."""

    def spy() -> None:
        calls = 0

        def count(*_call) -> None:
            nonlocal calls
            calls += 1
            if calls == number:
                do()

        sys.setprofile(count)

    return spy


def at_event(number: int, do: Callable[[], None]) -> Spy:
    """Return what does something at an audit event of the writing, by its number."""

    def spy() -> None:
        events = 0

        def count(event: str, _args) -> None:
            nonlocal events
            events += bool(events) or event == WRITING
            if events == number:
                do()

        sys.addaudithook(count)

    return spy


def counts(book: Path, out: Path) -> tuple[int, int]:
    """Return how many calls, and events of the writing, there are in a build left in peace."""
    calls = events = 0

    def called(*_call) -> None:
        nonlocal calls
        calls += 1

    def audited(event: str, _args) -> None:
        nonlocal events
        events += bool(events) or event == WRITING

    process = os.fork()
    if not process:
        sys.addaudithook(audited)
        sys.setprofile(called)
        run(book, out)
        sys.setprofile(None)
        (out / "counts").write_text(f"{calls} {events}", encoding="utf-8")
        os._exit(0)
    ended(process)
    total, written = (out / "counts").read_text(encoding="utf-8").split()
    return int(total), int(written)


def killed(book: Path, folder: Path, names: list[str]) -> list[tuple[str, int]]:
    """Send signals in turn at twenty points of a build; return each one's folder and status."""
    signals = cycle(getattr(signal, name) for name in names)

    def with_first_deck() -> Path:
        out = Path(tempfile.mkdtemp(dir=folder))
        shutil.copytree(folder / "first" / "Shore decks", out / "Shore decks")
        return out

    def end() -> Callable[[], None]:
        return partial(signal.raise_signal, next(signals))

    calls, events = counts(book, with_first_deck())
    early = [at_call(calls * n // (EARLY + 2), end()) for n in range(1, EARLY + 1)]
    late = [at_event(1 + (events - 2) * n // (LATE - 1), end()) for n in range(LATE)]
    outs = [with_first_deck() for _ in range(EARLY + LATE)]
    return [(str(out), build(book, out, spy)) for out, spy in zip(outs, early + late, strict=True)]


def at_once(book: Path, folder: Path, many: int) -> list[tuple[str, int]]:
    """Run builds at the same time on one shelf; return each one's folder and status."""
    shelf = folder / "shelf"
    shelf.mkdir()
    processes = {}
    for number in range(many):
        out = folder / str(number)
        out.mkdir()
        (out / "Shore decks").symlink_to(shelf)
        processes[str(out)] = begun(book, out, lambda: None)
    return [(out, ended(process)) for out, process in processes.items()]


def main(doing: str, book: Path, folder: Path) -> None:
    (folder / "first").mkdir()
    run(book, folder / "first")
    ends = at_once(book, folder, 6) if doing == "at once" else killed(book, folder, doing.split())
    (folder / "ends.json").write_text(json.dumps(ends), encoding="utf-8")


if __name__ == "__main__":
    sys.path.insert(0, str(ROOT))
    main(sys.argv[1], Path(sys.argv[2]), Path(sys.argv[3]))
