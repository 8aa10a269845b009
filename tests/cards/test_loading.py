"""What must stay cheap: a library is loaded for files of its own kind only."""

import subprocess
import sys
from pathlib import Path

import pytest
from support.workbooks import fill

HEAVY = ("pandas", "openpyxl")


def loaded_after(code: str) -> set[str]:
    """Run code in a fresh interpreter and return which of the heavy libraries it has loaded."""
    report = f"import sys; print(*(name for name in {HEAVY} if name in sys.modules))"
    command = [sys.executable, "-c", f"{code}\n{report}"]
    root = Path(__file__).parents[2]
    run = subprocess.run(command, capture_output=True, text=True, check=True, cwd=root)
    return set(run.stdout.split())


def test_importing_loads_neither() -> None:
    assert loaded_after("import cards.reading, cards.checking") == set()


@pytest.mark.parametrize(("name", "loads"), [("w.csv", set()), ("w.xlsx", {"openpyxl"})])
def test_reading_loads_only_what_the_file_needs(tmp_path: Path, name: str, loads: set[str]) -> None:
    path = tmp_path / name
    if path.suffix == ".csv":
        path.write_text("Tides a day,2\n")
    else:
        fill({"Facts": [["Tides a day", 2]]}).save(path)
    code = f"from pathlib import Path; from cards.reading import read; read(Path({str(path)!r}))"
    assert loaded_after(code) == loads
