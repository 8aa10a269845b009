"""Which character parts the fields of a text."""

import csv
import io
import re
from collections import Counter
from collections.abc import Iterator, Sequence
from itertools import islice

# Where two part a text equally well and stand as delimiters do, the first wins: it is the rarer in
# running text.
_DELIMITERS = ("\t", "|", ";", ",")
_SAMPLE = 200
_SAMPLE_CHARACTERS = 100_000


# What spreadsheet programs take for no row of the table, but for the name of its delimiter.
_NAMED = re.compile(r'("?)sep=(.)\1(?:\n|$)', re.IGNORECASE)


def delimiter_named(text: str) -> tuple[str, int]:
    """Return the delimiter that a first line `sep=;` names, and how many characters it takes up."""
    named = _NAMED.match(text)
    return (named[2], named.end()) if named else ("", 0)


def delimiter_of(text: str) -> str:
    """Return the delimiter that gives the most records the same number of fields.

    What stands between quotes does not count, and one counts for half at which the quotes of a text
    neither begin nor end: it may stand in a field. A text of single fields has a comma.
    """
    scores = {
        delimiter: _consistency(text, delimiter) * (1 if _is_well_quoted(text, delimiter) else 0.5)
        for delimiter in _DELIMITERS
    }
    most = max(scores.values())
    tied = [delimiter for delimiter in _DELIMITERS if scores[delimiter] == most]
    if not most:
        return ","
    if len(tied) == 1:
        return tied[0]
    return next((one for one in tied if not _is_of_texts(text, one, tied)), tied[0])


def _is_of_texts(text: str, delimiter: str, others: Sequence[str]) -> bool:
    """Say whether it always stands as in a text.

    There it is followed by a blank or, at its end, by the delimiter; or a decimal has it.
    """
    around = re.findall(f"(.?){re.escape(delimiter)}(?=(.?))", text[:_SAMPLE_CHARACTERS])
    followed = {after for _, after in around}
    return (len(followed) == 1 and followed <= {" ", *others} - {delimiter}) or (
        delimiter == "," and all(before.isdigit() and after.isdigit() for before, after in around)
    )


def _consistency(text: str, delimiter: str) -> float:
    """Return the share of the first records that have the commonest number of fields above 1."""
    sample = islice(filter(None, records_of(text, delimiter)), _SAMPLE)
    try:
        widths = Counter(len(record) for record in sample)
    except csv.Error:
        return 0
    several = [count for width, count in widths.items() if width > 1]
    return max(several, default=0) / max(widths.total(), 1)


def _is_well_quoted(text: str, delimiter: str) -> bool:
    """Return whether the delimiter follows every quote that ends a field of the first records."""
    try:
        return bool(list(islice(records_of(text, delimiter, strict=True), _SAMPLE)))
    except csv.Error:
        return False


def records_of(text: str, delimiter: str, *, strict: bool = False) -> Iterator[list[str]]:
    """Return the fields of each record; a blank line is a record without any.

    Raises `csv.Error` if a field has more than 131,072 characters; where `strict`, also if anything
    else than a delimiter follows the quote at a field's end.
    """
    lines = io.StringIO(text, newline="\n")
    # a blank before a quote is how people write: the quote opens the field all the same
    return csv.reader(lines, delimiter=delimiter, strict=strict, skipinitialspace=True)
