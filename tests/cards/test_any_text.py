"""What must hold for any text: it comes back as typed, and nothing breaks."""

import csv
import io
import re
import tempfile
import unicodedata
from pathlib import Path

from hypothesis import example, given, settings
from hypothesis import strategies as st
from support.workbooks import fill

from cards.content import Content
from cards.finding import UnusableFileError
from cards.reading import read

# Any character that prints, and line breaks: no controls, surrogates, or unassigned code points.
PRINTABLE = st.text(
    st.one_of(
        st.characters(
            exclude_categories=["Cc", "Cf", "Cs", "Co", "Cn", "Zl", "Zp"],
            # blanks and hyphens that are read as their common kind
            exclude_characters="\u2007\u2009\u202f\u2011",
        ),
        st.sampled_from("\n\",;'=+-@<>&{}|%/ \u00a0"),
    ),
    max_size=30,
    # In a workbook such a text stands for another (ECMA-376 Part 1, 22.9.2.19).
).filter(lambda text: not re.search("_x[0-9A-Fa-f]{4}_", text))


def expected(text: str) -> str:
    """Return a text without blank ends; lines below the first are moved to the left with it."""
    whole = unicodedata.normalize("NFC", text)
    before = whole[: len(whole) - len(whole.lstrip())]
    blanks = len(before.rpartition("\n")[2])
    first, *others = whole.strip().split("\n")
    return "\n".join([first, *(line[_blanks(line, blanks) :] for line in others)])


def _blanks(line: str, most: int) -> int:
    return min(most, len(line) - len(line.lstrip(" ")))


def read_bytes(data: bytes, name: str) -> Content:
    with tempfile.TemporaryDirectory() as folder:
        path = Path(folder, name)
        path.write_bytes(data)
        return read(path)


@example(texts=[("", ' 0\n "')])
@given(texts=st.lists(st.tuples(PRINTABLE, PRINTABLE), max_size=6))
@settings(deadline=None, max_examples=60)
def test_any_text_in_a_csv_comes_back_as_typed(texts: list[tuple[str, str]]) -> None:
    buffer = io.StringIO(newline="")
    rows = [("Prompt", "Answer"), ("first", "one"), *texts]
    csv.writer(buffer, quoting=csv.QUOTE_ALL).writerows(rows)
    content = read_bytes(buffer.getvalue().encode(), "words.csv")
    wanted = [(expected(a), expected(b)) for a, b in texts if expected(a) or expected(b)]
    assert [(item.prompt, item.answer) for item in content.items] == [("first", "one"), *wanted]


@given(texts=st.lists(st.tuples(PRINTABLE, PRINTABLE), max_size=6))
@settings(deadline=None, max_examples=60)
def test_any_text_in_a_workbook_comes_back_as_typed(texts: list[tuple[str, str]]) -> None:
    book = fill({"Facts": [("Prompt", "Answer"), ("first", "one")]})
    for row, pair in enumerate(texts, start=3):
        for column, text in enumerate(pair, start=1):
            cell = book["Facts"].cell(row, column, text)
            cell.data_type = "s"
    buffer = io.BytesIO()
    book.save(buffer)
    content = read_bytes(buffer.getvalue(), "words.xlsx")
    wanted = [(expected(a), expected(b)) for a, b in texts if expected(a) or expected(b)]
    assert [(item.prompt, item.answer) for item in content.items] == [("first", "one"), *wanted]


@given(data=st.one_of(st.binary(max_size=80), PRINTABLE.map(str.encode)))
@settings(deadline=None, max_examples=200)
def test_any_bytes_are_read_or_refused_in_one_line(data: bytes) -> None:
    for name in ("words.csv", "words.xlsx"):
        try:
            content = read_bytes(data, name)
        except UnusableFileError as refused:
            assert "\n" not in str(refused)  # noqa: PT017
        else:
            assert content.items
