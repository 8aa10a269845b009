"""Files, made where a test can read them."""

from collections.abc import Callable
from pathlib import Path

import pytest
from support.workbooks import Sheets, fill

from cards.content import Content
from cards.reading import read


@pytest.fixture
def make_workbook(tmp_path: Path) -> Callable[[Sheets], Path]:
    def make(sheets: Sheets) -> Path:
        path = tmp_path / "Rocky shore.xlsx"
        fill(sheets).save(path)
        return path

    return make


@pytest.fixture
def read_sheets(make_workbook: Callable[[Sheets], Path]) -> Callable[[Sheets], Content]:
    """Read a workbook with the sheets given: `read_sheets({"Facts": [[...], ...]})`."""
    return lambda sheets: read(make_workbook(sheets))


@pytest.fixture
def read_csv(tmp_path: Path) -> Callable[..., Content]:
    """Read a text or bytes as a file: `read_csv("a,b", "words.csv")`."""

    def make(text: str | bytes, name: str = "words.csv") -> Content:
        path = tmp_path / name
        path.write_bytes(text if isinstance(text, bytes) else text.encode())
        return read(path)

    return make
