"""OpenDocument spreadsheets, written by hand as OASIS OpenDocument 1.3 has it."""

from collections.abc import Callable
from pathlib import Path

import pytest
from support.packed import ods_row, ods_xml, pack

from cards.checking import check
from cards.content import Content
from cards.item import Level
from cards.reading import read
from cards.reading.opendocument import read_opendocument
from cards.style import Span, TextStyle

ReadOds = Callable[..., Content]
HEADINGS = ods_row("Prompt", "Answer", "Topic", "Level")
BLANK = "<table:table-cell/>"


@pytest.fixture
def read_ods(tmp_path: Path) -> ReadOds:
    def make(*sheets: str, styles: str = "") -> Content:
        return read(pack(tmp_path / "Shore.ods", {"content.xml": ods_xml("".join(sheets), styles)}))

    return make


def sheet(*rows: str, name: str = "Facts", style: str = "ta1", columns: str = "") -> str:
    return (
        f'<table:table table:name="{name}" table:style-name="{style}">'
        f"{columns}{''.join(rows)}</table:table>"
    )


def row(*cells: str, attributes: str = "") -> str:
    return f"<table:table-row {attributes}>{''.join(cells)}</table:table-row>"


def cell(text: str, attributes: str = "", *, covered: bool = False) -> str:
    kind = "covered-table-cell" if covered else "table-cell"
    return f"<table:{kind} {attributes}>{text}</table:{kind}>"


def shown(text: str, attributes: str = "") -> str:
    return cell(f"<text:p>{text}</text:p>", attributes)


def codes(content: Content) -> list[tuple[str, str]]:
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def test_a_sheet_is_read_with_places_topics_and_levels(read_ods: ReadOds) -> None:
    content = read_ods(sheet(HEADINGS, ods_row("Tides a day", "2", "Tides", "easy")))
    [item] = content.items
    assert (item.prompt, item.answer, item.topic, item.level) == (
        "Tides a day",
        "2",
        "Tides",
        Level.EASY,
    )
    assert (str(item.prompt_place), str(item.answer_place)) == ("Facts A2", "Facts B2")
    assert content.name == "Shore"
    assert codes(content) == []


@pytest.mark.parametrize(
    ("inside", "attributes", "seen"),
    [
        ("<text:p>64%</text:p>", 'office:value-type="percentage" office:value="0.64"', "64%"),
        ("<text:p>3/4</text:p>", 'office:value-type="float" office:value="0.75"', "3/4"),
        ("<text:p>007</text:p>", 'office:value-type="float" office:value="7"', "007"),
        ("<text:p>£1.50</text:p>", 'office:value-type="currency" office:value="1.5"', "£1.50"),
        ("<text:p>TRUE</text:p>", 'office:value-type="boolean"', "TRUE"),
        ("<text:p>one</text:p><text:p>two</text:p>", "", "one\ntwo"),
        ("<text:p>one<text:line-break/>two</text:p>", "", "one\ntwo"),
        ('<text:p>a<text:s text:c="2"/>b<text:tab/>c</text:p>', "", "a  b c"),
        ("<text:p>salt\n   marsh</text:p>", "", "salt marsh"),
        ("<text:p>AT&amp;T &lt;b&gt; &#233;</text:p>", "", "AT&T <b> é"),
        ('<text:p>a <text:a xmlns:x="y" x:href="http://x">link</text:a></text:p>', "", "a link"),
        ("<office:annotation><text:p>psst</text:p></office:annotation><text:p>x</text:p>", "", "x"),
        ("<text:p>x</text:p><draw:frame><text:p>drawn</text:p></draw:frame>", "", "x"),
        ("", 'office:value-type="float" office:value="12.50"', "12.5"),
        ("", 'office:value-type="percentage" office:value="0.25"', "25%"),
        ("", 'office:value-type="percentage" office:value="0.125"', "12.5%"),
        ("", 'office:value-type="percentage" office:value="0.29"', "29%"),
        ("", 'office:value-type="time" office:time-value="PT13H05M00S"', "13:05"),
        ("", 'office:value-type="time" office:time-value="PT00H07M30S"', "0:07:30"),
        (
            "",
            'office:value-type="currency" office:currency="EUR" office:value="3.5"',
            "3.5 EUR",
        ),
        ("", 'office:value-type="boolean" office:boolean-value="true"', "TRUE"),
        ("", 'office:value-type="string" office:string-value="PT1H"', "PT1H"),
        ("", 'office:value-type="string" office:string-value="limpet"', "limpet"),
    ],
)
def test_a_cell_shows_what_it_showed(
    read_ods: ReadOds, inside: str, attributes: str, seen: str
) -> None:
    content = read_ods(sheet(HEADINGS, row(shown("Clue"), cell(inside, attributes))))
    assert [item.answer for item in content.items] == [seen]
    assert codes(content) == []


def test_repeated_cells_and_rows_keep_their_places(read_ods: ReadOds) -> None:
    content = read_ods(
        sheet(
            row(cell("", 'table:number-columns-repeated="3"'), attributes=""),
            row(cell("", ""), attributes='table:number-rows-repeated="4"'),
            row(cell("", 'table:number-columns-repeated="2"'), shown("Prompt"), shown("Answer")),
            row(cell("", 'table:number-columns-repeated="2"'), shown("Legs"), shown("10")),
            row(BLANK, attributes='table:number-rows-repeated="2"'),
            row(BLANK, BLANK, shown("2", 'table:number-columns-repeated="2"')),
            ods_row("", "", "Same", "row", rows_repeated="2"),
        )
    )
    assert [(item.prompt, str(item.answer_place)) for item in content.items] == [
        ("Legs", "Facts D7"),
        ("2", "Facts D10"),
        ("Same", "Facts D11"),
        ("Same", "Facts D12"),
    ]


def test_merged_cells_hold_for_every_row_they_span(read_ods: ReadOds) -> None:
    topic = shown("Tides", 'table:number-rows-spanned="3" table:number-columns-spanned="1"')
    content = read_ods(
        sheet(
            HEADINGS,
            row(shown("Tides a day"), shown("2"), topic),
            row(shown("Highest"), shown("spring"), cell("<text:p>old</text:p>", covered=True)),
            row(shown("Lowest"), shown("neap"), cell("", covered=True)),
            row(shown("Legs of a crab"), shown("10")),
        )
    )
    assert [item.topic for item in content.items] == ["Tides", "Tides", "Tides", ""]


def test_what_is_hidden_is_left_out_and_told_of(read_ods: ReadOds) -> None:
    styles = (
        '<style:style style:name="ta2" style:family="table">'
        '<style:table-properties table:display="false"/></style:style>'
    )
    content = read_ods(
        sheet(
            HEADINGS,
            row(shown("Hidden"), shown("1"), attributes='table:visibility="collapse"'),
            row(shown("Filtered"), shown("2"), attributes='table:visibility="filter"'),
            row(shown("Seen"), shown("3")),
            row(BLANK, attributes='table:visibility="collapse"'),
        ),
        sheet(HEADINGS, ods_row("Old", "1"), name="Last year", style="ta2"),
        sheet(HEADINGS, ods_row("Cached", "1"), name="'file:///C:/other.ods'#$Sheet1"),
        styles=styles,
    )
    assert [item.prompt for item in content.items] == ["Seen"]
    assert codes(content) == [("hidden-rows", "Facts row 2"), ("hidden-sheet", "Last year")]


def test_a_hidden_column_is_read_under_a_known_heading_only(read_ods: ReadOds) -> None:
    hidden = '<table:table-column table:visibility="collapse"/>'
    columns = f'<table:table-column table:number-columns-repeated="3"/>{hidden}'
    content = read_ods(sheet(HEADINGS, ods_row("Legs", "10", "", "hard"), columns=columns))
    assert [item.level for item in content.items] == [Level.HARD]
    assert codes(content) == [("hidden-column", "Facts D1")]
    plain = read_ods(sheet(ods_row("1", "Legs of a crab", "10"), columns=hidden))
    assert [(item.prompt, item.answer) for item in plain.items] == [("Legs of a crab", "10")]


def test_what_a_program_filled_in_is_doubted(read_ods: ReadOds) -> None:
    date = 'office:value-type="date" office:date-value="2026-03-04"'
    time = 'office:value-type="time" office:time-value="PT07H30M00S"'
    error = 'office:value-type="string" calcext:value-type="error" table:formula="of:=1/0"'
    content = read_ods(
        sheet(
            HEADINGS,
            row(shown("Three quarters"), shown("4-Mar", date)),
            row(shown("Low water"), shown("7:30", time)),
            row(shown("Division"), shown("#DIV/0!", error)),
            row(shown("Six sevens"), cell("", 'table:formula="of:=6*7"')),
            row(shown("Six nines"), shown("54", 'table:formula="of:=6*9"')),
        )
    )
    assert [item.answer for item in content.items][1::3] == ["7:30", "54"]
    assert codes(content) == [
        ("error-value", "Facts B4"),
        ("formula-without-value", "Facts B5"),
        ("turned-into-date", "Facts B2"),
    ]


@pytest.mark.parametrize(
    ("text", "attributes", "code"),
    [
        (
            "#DIV/0!",
            'table:formula="of:=1/0" office:value-type="string" office:string-value=""',
            "error-value",
        ),
        (
            "#N/A",
            'table:formula="of:=NA()" office:value-type="float" office:value="0"',
            "error-value",
        ),
        ("Err:502", 'office:value-type="float" office:value="0"', "error-value"),
        ("#REF!", 'office:value-type="string"', "error-value-as-text"),
    ],
)
def test_what_does_not_work_out_need_not_say_so(
    read_ods: ReadOds, text: str, attributes: str, code: str
) -> None:
    rows = (row(shown("What digs?"), shown(text, attributes)), ods_row("What is #1?", "#1"))
    assert codes(read_ods(sheet(HEADINGS, *rows))) == [(code, "Facts B2")]


def test_rows_repeated_on_every_page_are_headings(read_ods: ReadOds) -> None:
    top = f"<table:table-header-rows>{ods_row('Vogel', 'bird')}</table:table-header-rows>"
    content = read_ods(sheet(top, ods_row("Reiher", "heron"), name="Liste"))
    assert [item.prompt for item in content.items] == ["Reiher"]
    assert codes(content) == [("row-set-apart", "Liste A1")]


def test_teams_and_settings_are_read(read_ods: ReadOds) -> None:
    content = read_ods(
        sheet(HEADINGS, ods_row("Tides a day", "2")),
        sheet(ods_row("Team", "Colour"), ods_row("Heron", "blue"), name="Teams"),
        sheet(ods_row("Setting", "Value"), ods_row("Title", "Shore week"), name="Deck"),
    )
    assert [(row.name.text, row.colour and row.colour.text) for row in content.teams] == [
        ("Heron", "blue")
    ]
    assert [(row.name.text, row.value.text) for row in content.settings] == [
        ("Title", "Shore week")
    ]


def test_raised_lowered_and_bold_letters_are_kept(tmp_path: Path) -> None:
    def style(name: str, properties: str) -> str:
        return (
            f'<style:style style:name="{name}" style:family="text">'
            f"<style:text-properties {properties}/></style:style>"
        )

    styles = (
        style("T1", 'style:text-position="-8% 58%"')
        + style("T2", 'style:text-position="super 58%"')
        + style("T3", 'fo:font-weight="bold"')
    )
    parts = {"T1": "2", "T2": "3", "T3": "so"}
    a, b, c = (f'<text:span text:style-name="{n}">{t}</text:span>' for n, t in parts.items())
    body = sheet(row(shown(f"H{a}O m{b} and {c}")))
    path = pack(tmp_path / "w.ods", {"content.xml": ods_xml(body, styles)})
    [table], _ = read_opendocument(path.read_bytes(), path.name)
    assert table.rows[0].cells[1].text == "H2O m3 and so"
    assert table.rows[0].cells[1].spans == (
        Span(1, 2, TextStyle.LOWERED),
        Span(5, 6, TextStyle.RAISED),
        Span(11, 13, TextStyle.BOLD),
    )


def test_text_that_is_struck_out_is_told(read_ods: ReadOds) -> None:
    def style(name: str, family: str, line: str) -> str:
        return (
            f'<style:style style:name="{name}" style:family="{family}">'
            f'<style:text-properties style:text-line-through-style="{line}"/></style:style>'
        )

    styles = style("T1", "text", "solid") + style("ce1", "table-cell", "solid")
    styles += style("ce2", "table-cell", "none")
    part = shown('Capital of <text:span text:style-name="T1">Assyria</text:span> Australia')
    whole = shown("Canberra", 'table:style-name="ce1"')
    content = read_ods(
        sheet(row(part, whole), row(shown("Tides", 'table:style-name="ce2"'), shown("2"))),
        styles=styles,
    )
    assert codes(content) == [("struck-out", "Facts A1"), ("struck-out", "Facts B1")]


def test_prefixes_are_a_matter_of_taste(tmp_path: Path) -> None:
    xml = ods_xml(sheet(HEADINGS, ods_row("Tides a day", "2")))
    other = xml.replace("table:", "t:").replace("xmlns:table=", "xmlns:t=")
    assert "<t:table " in other
    other = other.replace("opendocument:xmlns:t:", "opendocument:xmlns:table:")
    assert len(read(pack(tmp_path / "w.ods", {"content.xml": other})).items) == 1


def test_pictures_on_a_sheet_are_not_read_and_that_is_said(read_ods: ReadOds) -> None:
    picture = "</text:p><draw:frame><draw:image/></draw:frame>"
    shown = ods_row("Legs of a crab", "10").replace("</text:p>", picture, 1)
    content = read_ods(sheet(HEADINGS, shown))
    assert [(f.code, str(f.place)) for f in content.findings] == [("pictures-left-out", "Facts")]
    assert [item.answer for item in content.items] == ["10"]
