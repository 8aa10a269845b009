"""The command in a process that tells what it opens, makes and calls, and what it costs."""

import json
import mimetypes
import os
import subprocess
import sys
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from support.bounded import ROOT

MOST_SECONDS = 5.0
MOST_MIB = 500
CODE = r'''
import contextlib, io, json, os, re, sys, time

CHANGES = {"os.mkdir", "os.rename", "os.remove", "os.rmdir", "os.link", "os.symlink", "os.chmod"}
OUTSIDE = ("socket.", "subprocess.", "os.system", "os.exec", "os.posix_spawn", "os.fork", "urllib.",
           "http.", "ftplib.", "webbrowser.")
seen = {"read": [], "changed": [], "called": []}


def whole(name, folder):
    """Return a path that may be told from an open folder on, which Linux knows the path of."""
    is_open = isinstance(folder, int) and folder >= 0
    start = os.readlink(f"/proc/self/fd/{folder}") if is_open else ""
    return os.path.join(start, os.fsdecode(name))


def heard(event, args):
    if event == "open" and isinstance(args[0], (str, bytes)):
        writes = args[2] & (os.O_WRONLY | os.O_RDWR | os.O_CREAT) if args[2] else False
        seen["changed" if writes else "read"].append(os.fsdecode(args[0]))
    elif event in CHANGES:
        names = [one for one in args[:2] if isinstance(one, (str, bytes, os.PathLike))]
        seen["changed"] += map(whole, names, args[-len(names):])
    elif event.startswith(OUTSIDE):
        seen["called"].append(event)


from decks.commands import main

sys.addaudithook(heard)
runs = []
for words in json.loads(sys.stdin.read()):
    sys.argv = ["fairdeal", *words]
    streams = [io.TextIOWrapper(io.BytesIO(), encoding="utf-8") for _ in range(2)]
    start, status = time.process_time(), 0
    with contextlib.redirect_stdout(streams[0]), contextlib.redirect_stderr(streams[1]):
        try:
            main()
        except SystemExit as end:
            status = end.code or 0
    for stream in streams:
        stream.flush()
    told = [stream.buffer.getvalue().decode() for stream in streams]
    runs.append({"status": status, "out": told[0], "err": told[1],
                 "seconds": time.process_time() - start})
noted = {kind: list(names) for kind, names in seen.items()}
# what the system says of a child also counts the parent that it was split off from
mib = int(re.search(r"VmHWM:\s+(\d+)", open("/proc/self/status").read())[1]) / 1024
print(json.dumps({"runs": runs, "mib": mib} | noted))
'''


@dataclass(frozen=True)
class Run:
    """One run of the command: how it ended, what it said, and its CPU time in seconds."""

    status: int
    out: str
    err: str
    seconds: float


@dataclass(frozen=True)
class Watched:
    """Several runs in one process: the paths that were opened or changed, and events outside."""

    runs: tuple[Run, ...]
    mib: float
    read: frozenset[str]
    changed: frozenset[str]
    called: tuple[str, ...]

    def strays(self, folder: Path) -> list[str]:
        """Return what was read or changed that neither is the folder's nor belongs to a program."""
        homes = [folder, ROOT, Path(sys.prefix), Path(sys.base_prefix)]
        kept = (*map(str, homes), *mimetypes.knownfiles)
        read = [path for path in self.read if not str(Path(path).absolute()).startswith(kept)]
        changed = [path for path in self.changed if not inside(path, folder)]
        return sorted({*read, *changed})


def inside(path: str, folder: Path) -> bool:
    """Say whether a path leads into a folder, or is the entry for nothing."""
    return path == os.devnull or os.path.realpath(path).startswith(os.path.realpath(folder))


def watched(calls: Sequence[Sequence[object]], folder: Path) -> Watched:
    """Run the command with each of some lines of words, one after the other in a new process.

    The folder is also the user's home and holds temporary files, which are seen if they are left.
    """
    done = subprocess.run(
        [sys.executable, "-c", CODE],
        input=json.dumps([[str(word) for word in words] for words in calls]),
        capture_output=True,
        encoding="utf-8",
        check=False,
        cwd=ROOT,
        timeout=300,
        env=os.environ
        | {
            "OPENBLAS_NUM_THREADS": "1",
            "PYTHONDONTWRITEBYTECODE": "1",
            "TMPDIR": str(folder),
            "HOME": str(folder),
        },
    )
    assert done.returncode == 0, done.stderr[-3000:]
    told = json.loads(done.stdout)
    return Watched(
        tuple(Run(**run) for run in told["runs"]),
        told["mib"],
        frozenset(told["read"]),
        frozenset(told["changed"]),
        tuple(told["called"]),
    )
