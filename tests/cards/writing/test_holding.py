"""Files that one holds while others wait for them."""

import subprocess
import sys
from pathlib import Path

import pytest

from cards.writing import holding
from cards.writing.holding import held

ROOT = Path(__file__).parents[3]
HOLDER = """
import sys
from pathlib import Path
from cards.writing.holding import held
with held(Path(sys.argv[1])):
    print("held", flush=True)
    sys.stdin.read()
"""


def begun(file):
    """Return a process that holds a file until its input ends."""
    process = subprocess.Popen(
        [sys.executable, "-c", HOLDER, file],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        encoding="utf-8",
        cwd=ROOT,
    )
    assert process.stdout.readline() == "held\n"
    return process


def test_what_was_held_is_gone_in_the_end(tmp_path):
    with held(tmp_path / "hold"):
        assert (tmp_path / "hold").exists()
    assert list(tmp_path.iterdir()) == []


def test_it_is_let_go_of_when_what_was_done_meanwhile_fails(tmp_path):
    with pytest.raises(ZeroDivisionError), held(tmp_path / "hold"):
        1 / 0  # noqa: B018
    with held(tmp_path / "hold"):
        pass
    assert list(tmp_path.iterdir()) == []


def test_nobody_holds_what_another_process_holds(tmp_path, monkeypatch):
    monkeypatch.setattr(holding, "_TRIES", 3)
    with begun(tmp_path / "hold"):
        with pytest.raises(TimeoutError), held(tmp_path / "hold"):
            pass
        assert (tmp_path / "hold").exists()


def test_who_waits_gets_it_when_the_other_is_done(tmp_path):
    with begun(tmp_path / "hold") as process:
        process.stdin.close()
        with held(tmp_path / "hold"):
            pass
    assert list(tmp_path.iterdir()) == []


def test_what_a_killed_process_held_is_free(tmp_path):
    with begun(tmp_path / "hold") as process:
        process.kill()
        process.wait()
    assert (tmp_path / "hold").exists()
    with held(tmp_path / "hold"):
        pass
    assert list(tmp_path.iterdir()) == []


def test_a_folder_that_is_not_there_is_not_waited_for(tmp_path):
    with pytest.raises(FileNotFoundError), held(tmp_path / "none" / "hold"):
        pass
