"""Delimited text as pandas reads it (pandas.read_csv): an independent reader of RFC 4180."""

from io import StringIO

import pandas as pd
from hypothesis import example, given
from hypothesis import strategies as st

from cards.reading.delimited import read_delimited

FIELD = st.text(st.sampled_from("abcé 1,;\"'\n"), max_size=6)
TABLE = st.integers(2, 4).flatmap(
    lambda width: st.lists(st.lists(FIELD, min_size=width, max_size=width), min_size=2, max_size=5)
)


def quoted(field):
    escaped = field.replace('"', '""')
    return f'"{escaped}"'


@given(TABLE)
@example([["", ";\n;", "1"], ["", "", ";\n;"]])
@example([["", "", ";\n;", "1"], ["", "", ";\n;", "1"]])
def test_every_field_is_where_another_reader_finds_it(table):
    text = "\n".join(",".join(map(quoted, record)) for record in [["Word", "Meaning"], *table])
    read = pd.read_csv(
        StringIO(text),
        header=None,
        names=range(4),
        dtype=str,
        keep_default_na=False,
        skip_blank_lines=False,
    )
    expected = {
        (row, column): field
        for row, record in enumerate(read.itertuples(index=False), start=1)
        for column, field in enumerate(record, start=1)
        if field.strip()
    }

    found = {
        (row.number, column): cell.text
        for row in read_delimited(text.encode(), "words.csv").rows
        for column, cell in row.cells.items()
        if cell.text.strip()
    }
    assert tidy(found) == tidy(expected)


def tidy(texts):
    """Return texts without the white space at the ends of their lines, which no card shows."""
    return {
        at: "\n".join(line.strip() for line in text.strip().splitlines())
        for at, text in texts.items()
    }
