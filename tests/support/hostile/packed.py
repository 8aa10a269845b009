"""Workbooks whose parts lie: about sizes, names, places, and about what they lead to."""

import re
import warnings
import zipfile
from collections.abc import Mapping
from io import BytesIO

from support.hostile.sound import PARTS, WORKBOOK, archive
from support.packed import SHEET, sheet_xml, text_row

_HEADINGS, _TIDES = text_row(1, "Prompt", "Answer"), text_row(2, "Tides a day", "2")
LAUGHS = (
    '<!DOCTYPE a [<!ENTITY a0 "ha">'
    + "".join(f'<!ENTITY a{n} "{f"&a{n - 1};" * 10}">' for n in range(1, 12))
    + "]>"
)
OUTSIDE = '<!DOCTYPE a [<!ENTITY a11 SYSTEM "file:///etc/hostname">]>'
_PARAMETER = '<!DOCTYPE a [<!ENTITY % p SYSTEM "http://127.0.0.1:9/p.dtd"> %p;]>'
_R = 'xmlns:r="http://schemas.openxmlformats.org/officeDocument/2006/relationships"'
_RELS = "xl/_rels/workbook.xml.rels"
_TYPES = "[Content_Types].xml"


def _with(parts: Mapping[str, str | bytes], without: tuple[str, ...] = ()) -> bytes:
    given = {n: part.encode() if isinstance(part, str) else part for n, part in parts.items()}
    return archive({n: part for n, part in (PARTS | given).items() if n not in without})


def _rows(rows: str, **beside: str) -> bytes:
    return _with({SHEET: sheet_xml(_HEADINGS + _TIDES + rows, **beside)})


def _cell(ref: str, inside: str = "<v>7</v>", **given: str) -> str:
    attributes = "".join(f' {name}="{value}"' for name, value in given.items())
    return f'<row r="9"><c r="{ref}"{attributes}>{inside}</c></row>'


def _rels(target: str, mode: str = "Internal") -> bytes:
    rels = PARTS[_RELS].decode()
    return _with(
        {
            _RELS: rels.replace(
                'Target="/xl/worksheets/sheet1.xml"', f'Target="{target}" TargetMode="{mode}"'
            )
        }
    )


def _doubled() -> bytes:
    buffer = BytesIO(WORKBOOK)
    with warnings.catch_warnings(), zipfile.ZipFile(buffer, "a") as packed:
        warnings.simplefilter("ignore")
        packed.writestr(zipfile.ZipInfo(SHEET), sheet_xml(_HEADINGS + text_row(2, "Ebb", "out")))
    return buffer.getvalue()


def _overlapping() -> bytes:
    """Return an archive whose directory lists one large part five thousand times."""
    start = archive({"xl/worksheets/sheet1.xml": b"<worksheet>" + b" " * 2_000_000})
    at = start.index(b"PK\x01\x02")
    end = start.rindex(b"PK\x05\x06")
    entry, tail = start[at:end], bytearray(start[end:])
    entries = b"".join(entry.replace(b"sheet1.xml", b"s%05d.xml" % n) for n in range(5000))
    tail[8:12] = (5000).to_bytes(2, "little") * 2
    tail[12:16] = len(entries).to_bytes(4, "little")
    return start[:at] + entries + bytes(tail)


def _encrypted() -> bytes:
    """Return an archive that says that each of its parts is locked (APPNOTE 4.4.4, bit 0)."""
    data = bytearray(WORKBOOK)
    for mark, at in ((b"PK\x01\x02", 8), (b"PK\x03\x04", 6)):
        found = data.find(mark)
        while found >= 0:
            data[found + at] |= 1
            found = data.find(mark, found + 4)
    return bytes(data)


_PLACES = (
    *("XFD1048576", "XFE1", "A0", "A1048577", "AAAA1", "a9", "A-9", "9", "A", "", "$A$9", "A9:B9"),
    *("ZZZ9999999", "A99999999999999999999", "R1C1", "\u0661"),
)
_WORKBOOK_XML = PARTS["xl/workbook.xml"].decode()

_MERGED = "".join(f'<mergeCell ref="C{n}:C{n + 1}"/>' for n in range(1, 9000, 2))


def _many_sheets() -> bytes:
    """Return a workbook of 50 sheets, each of fewer cells than are too many."""
    rows = "".join(text_row(n, *"abcdefghij") for n in range(1, 301))
    part = sheet_xml(_HEADINGS + rows)
    ids = range(50, 100)
    sheets = "".join(f'<sheet name="S{n}" sheetId="{n}" {_R} r:id="rId{n}"/>' for n in ids)
    kind = "http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet"
    ties = "".join(
        f'<Relationship Id="rId{n}" Type="{kind}" Target="worksheets/s{n}.xml"/>' for n in ids
    )
    return _with(
        {
            "xl/workbook.xml": _WORKBOOK_XML.replace("<sheets>", f"<sheets>{sheets}"),
            _RELS: PARTS[_RELS].decode().replace("</Relationships>", f"{ties}</Relationships>"),
            **{f"xl/worksheets/s{n}.xml": part for n in ids},
        }
    )


_STYLES = PARTS["xl/styles.xml"].decode()


def _styled(number: str, font: str) -> bytes:
    """Return a workbook all of whose cells have a style of these numbers of format and font."""
    old = re.search("(?<=<cellXfs).*?</cellXfs>", _STYLES, re.DOTALL)
    assert old
    new = f'><xf numFmtId="{number}" fontId="{font}" fillId="0" borderId="0"/></cellXfs>'
    return _with({"xl/styles.xml": _STYLES.replace(old[0], new)})


def _formatted(code: str) -> bytes:
    """Return a workbook of very many styles with one number format."""
    old = re.search("(?<=<cellXfs).*?</cellXfs>", _STYLES, re.DOTALL)
    assert old
    formats = f'<numFmts count="1"><numFmt numFmtId="200" formatCode="{code}"/></numFmts><fonts'
    styles = '<xf numFmtId="200"/>' * 2_000
    xml = _STYLES.replace(old[0], f">{styles}</cellXfs>").replace("<fonts", formats, 1)
    return _with({"xl/styles.xml": xml})


def _frozen(rows: str) -> bytes:
    pane = f'<pane ySplit="{rows}" topLeftCell="A2" state="frozen"/>'
    views = f'<sheetViews><sheetView workbookViewId="0">{pane}</sheetView></sheetViews>'
    return _rows(text_row(3, "x", "y"), before=views)


WORKBOOKS = {
    **{f"format-{n}.xlsx": _styled(n, "0") for n in ("165", "9999", "-1", "200")},
    **{f"font-{n}.xlsx": _styled("0", n) for n in ("7", "9999", "-1")},
    **{f"frozen-{n}.xlsx": _frozen(n) for n in ("nan", "inf", "-5", "1e300", "1.5")},
    **{f"place-{n}.xlsx": _rows(_cell(ref)) for n, ref in enumerate(_PLACES)},
    **{
        f"laughs-{n}.xlsx": _with({part: f"{declared}<a>&a11;</a>"})
        for n, (part, declared) in enumerate(
            [
                *(
                    (part, LAUGHS)
                    for part in (SHEET, "xl/styles.xml", "xl/sharedStrings.xml", _RELS)
                ),
                *((part, OUTSIDE) for part in (SHEET, "xl/workbook.xml", _TYPES)),
                (SHEET, _PARAMETER),
                ("xl/drawings/drawing1.xml", OUTSIDE),
                ("xl/drawings/_rels/drawing1.xml.rels", LAUGHS),
                ("xl/worksheets/_rels/sheet1.xml.rels", OUTSIDE),
            ]
        )
    },
    **{
        f"tie-{n}.xlsx": _rels(target, mode)
        for n, (target, mode) in enumerate(
            [
                *(
                    (target, "Internal")
                    for target in (
                        "../../../../etc/passwd",
                        "file:///etc/passwd",
                        "http://127.0.0.1:9/x.xml",
                        "/etc/passwd",
                        "worksheets/sheet9.xml",
                        "",
                        "workbook.xml",
                        "/",
                        "..",
                        "\\\\127.0.0.1\\share\\x.xml",
                        "styles.xml",
                        "media/image1.png",
                    )
                ),
                ("http://127.0.0.1:9/x.xml", "External"),
                ("file:///etc/passwd", "External"),
            ]
        )
    },
    **{f"without-{n}.xlsx": _with({}, (part,)) for n, part in enumerate(sorted(PARTS))},
    **{f"blanked-{n}.xlsx": _with({part: b""}) for n, part in enumerate(sorted(PARTS))},
    **{f"other-{n}.xlsx": _with({part: b"<a/>"}) for n, part in enumerate(sorted(PARTS))},
    "doubled.xlsx": _doubled(),
    "overlapping.xlsx": _overlapping(),
    "locked-parts.xlsx": _encrypted(),
    "deep-rows.xlsx": _rows("<row>" * 5000),
    "deep-text.xlsx": _rows(_cell("A9", f"<is>{'<r>' * 20_000}</is>", t="inlineStr")),
    "deep-part.xlsx": _with({"xl/styles.xml": "<a>" * 100_000}),
    "deep-folders.xlsx": _with({"a/" * 30_000 + "x.xml": b"<a/>"}),
    "odd-names.xlsx": _with({"../../x.xml": b"<a/>", "/etc/x.xml": b"<a/>", "C:\\x.xml": b"<a/>"}),
    "wide.xlsx": _rows(f'<row r="9">{"".join("<c><v>7</v></c>" for _ in range(20_000))}</row>'),
    "calls.xlsx": _rows(
        "".join(
            f'<row r="{n}"><c r="A{n}"><f>{call}</f><v>1</v></c><c r="B{n}"><f>{call}</f></c></row>'
            for n, call in enumerate(
                (
                    'WEBSERVICE("http://127.0.0.1:9/")',
                    'HYPERLINK("http://127.0.0.1:9/","Tides")',
                    "cmd|' /C calc'!A0",
                    "[1]Sheet1!A1",
                    "'file:///etc/[passwd]x'!A1",
                    'INDIRECT("A"&amp;1)',
                ),
                start=3,
            )
        )
    ),
    "linked.xlsx": _rows(
        "",
        after=f'<hyperlinks><hyperlink ref="A1" r:id="rId1" {_R}/></hyperlinks>',
    ),
    "merged.xlsx": _rows(text_row(9000, "x", "y"), after=f"<mergeCells>{_MERGED}</mergeCells>"),
    "many-sheets.xlsx": _many_sheets(),
    "macros.xlsm": _with({"xl/vbaProject.bin": b"\xd0\xcf\x11\xe0" + bytes(5000)}),
    "same-sheet.xlsx": _with(
        {
            "xl/workbook.xml": _WORKBOOK_XML.replace(
                "<sheets>",
                f'<sheets><sheet name="Facts" sheetId="9" {_R} r:id="rId1"/>',
            )
        }
    ),
    "odd-title.xlsx": _with(
        {
            "xl/workbook.xml": _WORKBOOK_XML.replace(
                'name="Facts"', 'name="../../[x]:*?&#10;&lt;b&gt;"'
            )
        }
    ),
    "no-title.xlsx": _with({"xl/workbook.xml": _WORKBOOK_XML.replace('name="Facts"', 'name=""')}),
    "many-digits.xlsx": _rows(_cell("A9", f"<v>{'9' * 100_000}</v>")),
    "infinite.xlsx": _rows(
        "".join(
            _cell(f"A{n}", f"<v>{value}</v>")
            for n, value in enumerate(("nan", "inf", "-inf", "1e999", "0x1", "1_0"), start=9)
        )
    ),
    "odd-dates.xlsx": _rows(
        "".join(
            _cell(f"A{n}", f"<v>{value}</v>", t="d")
            for n, value in enumerate(("0000-00-00", "9999-12-31T24:00:00", "x", ""), start=9)
        )
    ),
    "odd-kinds.xlsx": _rows(
        "".join(
            _cell(f"A{n}", "<v>-1</v>", t=kind)
            for n, kind in enumerate(("s", "b", "e", "str", "inlineStr", "zz"), start=9)
        )
    ),
    "format-of-brackets.xlsx": _formatted("[" * 30_000),
    "format-of-255-brackets.xlsx": _formatted("&#91;" * 255),
    "format-of-quotes.xlsx": _formatted("&quot;" * 30_000),
    "odd-styles.xlsx": _rows(_cell("A9", s="-5") + _cell("B9", s="999999") + _cell("C9", s="x")),
    "escapes.xlsx": _rows(
        _cell("A9", "<is><t>_x0000__xD800__x005F_x000D_ _xFFFF_</t></is>", t="inlineStr")
    ),
    "spread.xlsx": _rows("".join(text_row(n, "x", "y") for n in (500_000, 1_048_576))),
    "junk-before.xlsx": b"#!/bin/sh\n" * 500 + WORKBOOK,
    "junk-after.xlsx": WORKBOOK + b"PK" * 500,
    "far-directory.xlsx": WORKBOOK[:-6] + b"\xff\xff\xff\x7f\0\0",
    "many-said.xlsx": WORKBOOK[:-14] + b"\xff\xff\xff\xff" + WORKBOOK[-10:],
}
