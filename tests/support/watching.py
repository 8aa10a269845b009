"""The watcher's side of `watched`: it runs the command and writes a line for each run."""

import json
import os
import re
import resource
import sys
import time
import traceback
from collections.abc import Iterator, Sequence
from contextlib import contextmanager, redirect_stderr, redirect_stdout
from io import BytesIO, TextIOWrapper
from pathlib import Path

_ROOT = Path(__file__).parents[2]
_STARTS = tuple(
    f"{Path(folder).resolve()}/"
    for folder in (sys.prefix, sys.base_prefix, _ROOT / "cards", _ROOT / "decks")
)
# What of the system is asked: its processors, its own names for kinds of files, the hour.
_SYSTEM = ("/proc/", "/sys/", "/dev/null", "/etc/mime.types", "/etc/localtime", "/usr/share/zone")
_OUTSIDE = re.compile(
    r"socket\.|subprocess\.|os\.(system|exec|fork|spawn|posix_spawn|startfile|kill"
    r"|remove|rename|rmdir|mkdir|link|symlink|chmod|chown|truncate|utime)|shutil\."
    r"|urllib\.|http\.|ftplib\.|smtplib\.|webbrowser\.|pty\.|sqlite3\.|tempfile\."
)
_CHANGES = {"os.mkdir", "os.rename", "os.remove", "os.rmdir", "os.link", "os.symlink", "os.chmod"}
_MOST_MEMORY = 3 << 30
_PATHS = {"open", "change"}
_recording: list[tuple[str, str, str]] | None = None


def _hear(event: str, given: tuple[object, ...]) -> None:
    if _recording is None:
        return
    if event == "open":
        path = given[0] if isinstance(given[0], str | bytes | os.PathLike) else None
        if path is not None:
            _recording.append((event, os.path.realpath(os.fsdecode(path)), str(given[1])))
    elif _OUTSIDE.match(event):
        _recording.append((event, " ".join(map(repr, given))[:300], ""))
        if event in _CHANGES:
            names = [one for one in given[:2] if isinstance(one, str | bytes | os.PathLike)]
            paths = map(_whole, names, given[-len(names) :])
            _recording.extend(("change", path, "") for path in paths)


def _whole(name: str | bytes | os.PathLike, folder: object) -> str:
    """Return a path that may be told from an open folder on, which Linux knows the path of."""
    is_open = isinstance(folder, int) and folder >= 0
    start = Path(f"/proc/self/fd/{folder}").readlink() if is_open else Path()
    return os.path.realpath(start / os.fsdecode(name))


@contextmanager
def _recorded() -> Iterator[list[tuple[str, str, str]]]:
    global _recording  # noqa: PLW0603 (a hook cannot be taken out again)
    heard: list[tuple[str, str, str]] = []
    _recording = heard
    try:
        yield heard
    finally:
        _recording = None


def watch(runs: Sequence[Sequence[str]], settings: str) -> None:
    """Run the command with each list of words, and write what was seen of it, line by line."""
    resource.setrlimit(resource.RLIMIT_AS, (_MOST_MEMORY, _MOST_MEMORY))
    os.environ["FAIRDEAL_SETTINGS"] = settings
    sys.addaudithook(_hear)
    for words in runs:
        sys.stdout.write(json.dumps(_watched(words)) + "\n")
        sys.stdout.flush()


def _watched(words: Sequence[str]) -> dict[str, object]:
    Path("/proc/self/clear_refs").write_text("5")
    start = time.process_time()
    with _recorded() as heard:
        status, told, warned = _run(words)
    opened = {(path, mode) for event, path, mode in heard if event == "open"}
    return {
        "status": status,
        "told": told,
        "warned": warned,
        "seconds": time.process_time() - start,
        "peak": _peak(),
        "opened": sorted(one for one in opened if _is_other(one[0])),
        "changed": sorted({path for event, path, _ in heard if event == "change"}),
        "events": sorted({(event, what) for event, what, _ in heard if event not in _PATHS}),
    }


def _is_other(path: str) -> bool:
    # reportlab looks for settings of its own in the user's home, which is that folder here
    return not path.startswith((*_STARTS, *_SYSTEM, os.environ["FAIRDEAL_SETTINGS"]))


def _run(words: Sequence[str]) -> tuple[int, str, str]:
    from decks.commands import main  # noqa: PLC0415 (what it opens is to be heard)

    streams = [TextIOWrapper(BytesIO(), encoding="utf-8", write_through=True) for _ in range(2)]
    sys.argv = ["fairdeal", *words]
    status = 0
    with redirect_stdout(streams[0]), redirect_stderr(streams[1]):
        try:
            main()
        except SystemExit as end:
            status = end.code if isinstance(end.code, int) else int(end.code is not None)
        except BaseException:  # noqa: BLE001 (whatever it is, it is told)
            status = -1
            traceback.print_exc()
    told, warned = (stream.buffer.getvalue().decode() for stream in streams)
    return status, told, warned


def _peak() -> int:
    """Return the most memory that was resident since the run began, in bytes (proc(5), VmHWM)."""
    found = re.search(r"VmHWM:\s+(\d+) kB", Path("/proc/self/status").read_text())
    return int(found[1]) * 1024 if found else 0
