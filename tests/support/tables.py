"""The tables of published figures that stand beside the outside checks."""

import csv
from pathlib import Path

DATA = Path(__file__).parents[1] / "outside" / "data"


def table(name):
    """Return the rows of a table as dictionaries; its first lines say where it is from."""
    lines = (DATA / name).read_text(encoding="utf-8").splitlines()
    return list(csv.DictReader(line for line in lines if not line.startswith("#")))
