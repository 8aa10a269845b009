"""OpenDocument spreadsheets that lie: about how often, how deep, and what they lead to."""

from support.hostile.packed import LAUGHS, OUTSIDE
from support.hostile.sound import OPENDOCUMENT as SOUND
from support.hostile.sound import TABLE, archive
from support.packed import ods_row, ods_xml

_BODY = ods_xml(TABLE).partition("?>")[2]
_CELL = "<table:table-row><table:table-cell {}/><table:table-cell {}/></table:table-row>"


def _ods(body: str, **parts: str) -> bytes:
    table = f'<table:table table:name="Facts">{ods_row("Prompt", "Answer")}{body}</table:table>'
    given = {"content.xml": ods_xml(table)} | parts
    return archive({name: part.encode() for name, part in given.items()})


def _repeating(what: str, count: int) -> str:
    cell = f'<table:table-cell table:number-{what}="{count}"><text:p>x</text:p></table:table-cell>'
    return f"<table:table-row>{cell}</table:table-row>"


_XLINK = 'xmlns:xlink="http://www.w3.org/1999/xlink"'
OPENDOCUMENT = {
    "laughs.ods": archive({"content.xml": (LAUGHS + _BODY).encode()}),
    "outside.ods": archive({"content.xml": (OUTSIDE + _BODY).encode()}),
    "manifest.ods": archive(
        {"content.xml": ods_xml(TABLE).encode(), "META-INF/manifest.xml": LAUGHS.encode()}
    ),
    "locked-content.ods": archive(
        {"content.xml": b"\1\2", "META-INF/manifest.xml": b"<a><encryption-data/></a>"}
    ),
    "no-content.ods": archive({"x.xml": b"<a/>"}),
    "deep.ods": _ods("<table:table-row>" * 100_000),
    "deep-spans.ods": _ods(
        ods_row("<text:span>" * 9000 + "x<text:s/>" * 9000 + "</text:span>" * 9000, "y")
    ),
    "many-sheets.ods": _ods(
        ("</table:table>" + '<table:table table:name="x">' + ods_row("x", rows_repeated="19000"))
        * 500
    ),
    "nested.ods": _ods(ods_row("x", "<table:table>" * 5000 + "</table:table>" * 5000)),
    "repeated.ods": _ods(ods_row("x", "y", rows_repeated="9999999")),
    "wide.ods": _ods(_repeating("columns-repeated", 9_999_999)),
    "many-wide.ods": _ods(_repeating("columns-repeated", 16_000) * 500),
    "blanks.ods": _ods(ods_row("x", "a" + '<text:s text:c="999999"/>' * 5000)),
    "spanned.ods": _ods(ods_row("x", "y") + _repeating("rows-spanned", 9_999_999) * 60),
    "values.ods": _ods(
        "".join(
            _CELL.format(
                f'office:value-type="{kind}" office:value="{value}"', f'office:value="{value}"'
            )
            for kind in ("float", "percentage", "currency", "date")
            for value in ("nan", "inf", "1e999", "-1e400", "x", "9" * 5000, "")
        )
    ),
    "calls.ods": _ods(
        _CELL.format(
            'table:formula=\'of:=DDE("soffice";"/etc/passwd";"a")\'',
            "table:formula='of:=WEBSERVICE(\"http://127.0.0.1:9/\")' office:value-type='string'",
        )
    ),
    "links.ods": _ods(
        ods_row(
            f'<text:a {_XLINK} xlink:href="http://127.0.0.1:9/">x</text:a>',
            f'<draw:frame><draw:image {_XLINK} xlink:href="file:///etc/passwd"/></draw:frame>y',
        )
    ),
    "doubled.ods": SOUND + SOUND,
}
