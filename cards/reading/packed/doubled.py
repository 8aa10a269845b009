"""A sheet that a workbook names a thousand times would be read a thousand times."""

import posixpath
import re
from collections.abc import Iterator
from xml.etree import ElementTree as ET

from cards.finding import UnusableFileError
from cards.reading.limits import too_large
from cards.reading.packed.archive import WORKBOOK, damaged

_TIES = re.compile(r"(^|/)_rels/workbook\d*\.xml\.rels$", re.IGNORECASE)
_MOST_SHEETS = 1_000


def refuse_doubled_sheets(xml: bytes, part: str, name: str) -> None:
    """Raise `UnusableFileError` if a workbook names a sheet twice, or absurdly many sheets.

    `xml` is the text of the part, in which nothing is declared; `name` is the file's name.
    """
    if WORKBOOK.search(part):
        named = list(_sheet_ids(_parsed(xml, name)))
    elif _TIES.search(part):
        named = list(_targets(_parsed(xml, name)))
    else:
        return
    if len(named) > _MOST_SHEETS:
        raise too_large(name)
    if len(set(named)) < len(named):
        raise UnusableFileError(damaged(name))


def _parsed(xml: bytes, name: str) -> ET.Element:
    try:
        return ET.fromstring(xml)  # noqa: S314 (declarations have been refused)
    except ET.ParseError as error:
        raise UnusableFileError(damaged(name)) from error


def _sheet_ids(workbook: ET.Element) -> Iterator[str]:
    for element in workbook.iter():
        if element.tag.endswith("}sheet"):
            yield from (value for key, value in element.attrib.items() if key.endswith("}id"))


def _targets(ties: ET.Element) -> Iterator[str]:
    for element in ties.iter():
        if element.get("Type", "").endswith("/worksheet"):
            target = posixpath.join("/xl", element.get("Target", ""))
            yield posixpath.normpath(target)
