"""Files that are absurd or hostile: little time, little memory, and one clear line."""

import os
import zipfile
from pathlib import Path

import pytest
from support.packed import (
    SHEET,
    ods_row,
    ods_xml,
    pack,
    parts_of,
    workbook_with,
)

bounded = pytest.importorskip("support.bounded", reason="memory is bounded in another way here")
MIB, REFUSED = bounded.MIB, bounded.REFUSED
content, refusal, run = bounded.content, bounded.refusal, bounded.run
parted, pieces = bounded.parted, bounded.pieces
READ = "Tides a day: 2"


# Zip bombs


@pytest.mark.parametrize("part", [SHEET, "xl/sharedStrings.xml", "xl/styles.xml", "xl/other.xml"])
def test_a_part_that_unpacks_to_far_too_much_is_not_unpacked(tmp_path, part):
    path = workbook_with(tmp_path / "w.xlsx", {part: pieces("<a>", b" " * 1000, 500_000, "</a>")})
    assert path.stat().st_size < 10 * MIB
    assert "far larger than its content can need" in refusal(path)


def test_what_an_archive_says_of_sizes_is_not_believed(tmp_path):
    path = workbook_with(tmp_path / "w.xlsx", {SHEET: pieces("<a>", b" " * 1000, 500_000, "</a>")})
    data = path.read_bytes()
    with zipfile.ZipFile(path) as archive:
        said = archive.getinfo(SHEET).file_size.to_bytes(4, "little")
    assert said in data
    path.write_bytes(data.replace(said, (2000).to_bytes(4, "little")))
    assert "damaged" in refusal(path)


def test_pictures_are_never_unpacked(tmp_path):
    picture = pieces("", b"\0" * 1000, 500_000, "")
    path = workbook_with(tmp_path / "w.xlsx", {"xl/media/image1.png": picture})
    assert content(path) == READ


def test_an_archive_in_an_archive_is_left_alone(tmp_path):
    inner = workbook_with(tmp_path / "inner.xlsx", {}).read_bytes()
    path = workbook_with(tmp_path / "w.xlsx", {"xl/embeddings/inner.xlsx": inner})
    assert content(path) == READ


def test_absurdly_many_parts_are_not_looked_at(tmp_path):
    many = {f"xl/media/{number}.png": b"" for number in range(20_000)}
    assert "far larger" in refusal(workbook_with(tmp_path / "w.xlsx", many))


@pytest.mark.parametrize("packing", [zipfile.ZIP_LZMA, zipfile.ZIP_BZIP2])
def test_packings_that_spreadsheets_do_not_use_are_refused(tmp_path, packing):
    path = tmp_path / "w.xlsx"
    with zipfile.ZipFile(path, "w", packing) as archive:
        for name, part in parts_of({"Facts": [["Tides a day", "2"]]}).items():
            archive.writestr(name, part)
    assert "damaged" in refusal(path)


# Declarations


LAUGHS = (
    '<!DOCTYPE a [<!ENTITY a0 "ha">'
    + "".join(f'<!ENTITY a{i} "{f"&a{i - 1};" * 10}">' for i in range(1, 12))
    + "]>"
)
OUTSIDE = '<!DOCTYPE a [<!ENTITY a11 SYSTEM "file:///etc/hostname">]>'
PARTS = [
    SHEET,
    "xl/sharedStrings.xml",
    "xl/styles.xml",
    "xl/workbook.xml",
    "xl/_rels/workbook.xml.rels",
    "[Content_Types].xml",
]


@pytest.mark.parametrize("declared", [LAUGHS, OUTSIDE])
@pytest.mark.parametrize("part", PARTS)
def test_entities_are_refused_wherever_they_are_declared(tmp_path, part, declared):
    text = f"{declared}<a>&a11;</a>"
    path = workbook_with(tmp_path / "w.xlsx", {part: text})
    assert "declarations" in refusal(path)


def test_a_declaration_is_found_where_two_pieces_meet(tmp_path):
    text = pieces("<a>", b" ", MIB - 7, f"{LAUGHS}</a>")
    assert "declarations" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: text}))


def test_a_declaration_is_not_hidden_by_an_encoding(tmp_path):
    text = f'<?xml version="1.0" encoding="UTF-16"?>{LAUGHS}<a>&a11;</a>'.encode("utf-16")
    assert "unusual way" in refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: text}))
    other = '<?xml version="1.0" encoding="IBM037"?>'.encode("cp037")
    done = refusal(workbook_with(tmp_path / "w.xlsx", {SHEET: other}))
    assert "unusual way" in done or "damaged" in done


@pytest.mark.parametrize("declared", [LAUGHS, OUTSIDE])
def test_entities_are_refused_in_an_opendocument_file(tmp_path, declared):
    start, end = parted(ods_xml("<!-- here -->"))
    text = f"{declared}{start.partition('?>')[2]}&a11;{end}"
    assert "declarations" in refusal(pack(tmp_path / "w.ods", {"content.xml": text}))


# OpenDocument


def ods(path: Path, body: str, **parts: str) -> Path:
    return pack(path, {"content.xml": ods_xml(body)} | parts)


def table(*rows: str) -> str:
    return f'<table:table table:name="Facts">{"".join(rows)}</table:table>'


TOP = ods_row("Prompt", "Answer") + ods_row("Tides a day", "2")


def test_an_opendocument_sheet_formatted_to_its_ends_is_read(tmp_path):
    blank = (
        '<table:table-row table:number-rows-repeated="1048574">'
        '<table:table-cell table:number-columns-repeated="16384"/></table:table-row>'
    )
    assert content(ods(tmp_path / "w.ods", table(TOP, blank))) == READ


def test_rows_repeated_without_end_are_told_of(tmp_path):
    again = ods_row("Tides", "2", rows_repeated="1048574")
    assert "more than 12,000 rows" in refusal(ods(tmp_path / "w.ods", table(TOP, again)))


@pytest.mark.parametrize("count", ["16000", "9999999", "99999999999999999999", "-5", "x"])
def test_cells_repeated_without_end_are_bounded(tmp_path, count):
    cell = f'<table:table-cell table:number-columns-repeated="{count}"><text:p>x</text:p>'
    row = f"{cell}</table:table-cell></table:table-row>"
    rows = f'<table:table-row table:number-rows-repeated="100">{row}'
    done = run(ods(tmp_path / "w.ods", table(TOP, rows)))
    assert done.returncode in {0, REFUSED}, done.stderr
    assert done.stderr == ""


def test_an_opendocument_file_that_unpacks_to_far_too_much_is_refused(tmp_path):
    start, end = parted(ods_xml("<!-- here -->"))
    blank = pieces(start, b" " * 1000, 500_000, end)
    assert "far larger" in refusal(pack(tmp_path / "w.ods", {"content.xml": blank}))
    cells = pieces(start, b"<table:table-cell/>", 5_000_000, end)
    assert "far larger" in refusal(pack(tmp_path / "w.ods", {"content.xml": cells}))


def test_texts_nested_without_end_are_read(tmp_path):
    deep = f"{'<text:span>' * 100_000}2{'</text:span>' * 100_000}"
    body = table(ods_row("Prompt", "Answer"), ods_row("Tides a day", deep))
    assert content(ods(tmp_path / "w.ods", body)) == READ


# Delimited text


def test_a_text_of_200_megabytes_is_refused_unread(tmp_path):
    path = tmp_path / "w.csv"
    with path.open("wb") as file:
        file.truncate(200_000_000)
    assert "far larger" in refusal(path)


@pytest.mark.parametrize("filler", ["x", "x,", '"', '""', "x;\t,", "\u00e9", "\U0001f41a"])
def test_a_line_of_many_megabytes_is_refused(tmp_path, filler):
    path = tmp_path / "w.csv"
    path.write_text("Prompt,Answer\n" + filler * (20 * MIB // len(filler.encode())), "utf-8")
    assert "a line of more than" in refusal(path)


def test_a_line_of_50_megabytes_is_refused_unread(tmp_path):
    path = tmp_path / "w.csv"
    path.write_bytes(b"x" * 50 * MIB)
    assert "far larger" in refusal(path)


@pytest.mark.parametrize(
    ("text", "says"),
    [
        ("Tides,2\n" * 3_000_000, "more than 12,000 rows"),
        (("a," * 300 + "\n") * 2_000, "more than 120,000 cells"),
        (("x" * 600 + ",b\n") * 9_000, "far larger"),
        ("x" * 900_000 + ",b\n", "far too long for a card"),
        ('a,"' + "b\n" * 1_000_000, "never closed"),
    ],
    ids=["rows", "cells", "letters", "a word", "an open quote"],
)
def test_a_text_with_too_much_in_it_is_refused(tmp_path, text, says):
    path = tmp_path / "w.csv"
    path.write_text(text, "utf-8")
    assert says in refusal(path)


@pytest.mark.parametrize(
    "text",
    [
        "Prompt,Answer\nTides a day,2\n" + ",,,,\n" * 1_000_000,
        "Prompt,Answer\n" + "," * 900_000 + "\nTides a day,2\n",
        "Prompt,Answer\n" + "\n" * 1_000_000 + "Tides a day,2\n",
        "Prompt,Answer\nTides a day,2" + " " * 100_000 + "\n",
        f"Prompt,Answer{',' * 16_000}\nTides a day,2\n",
    ],
    ids=["blank rows", "blank cells", "blank lines", "spaces", "blank headings"],
)
def test_a_text_that_is_mostly_blank_is_read(tmp_path, text):
    path = tmp_path / "w.csv"
    path.write_text(text, "utf-8")
    assert content(path) == READ


@pytest.mark.parametrize("name", ["w.csv", "w.xlsx"])
def test_what_is_no_file_is_not_waited_for(tmp_path, name):
    os.mkfifo(tmp_path / name)
    assert "is not a file" in refusal(tmp_path / name)


@pytest.mark.skipif(not Path("/dev/zero").exists(), reason="there is no such device here")
def test_a_device_without_end_is_not_read(tmp_path):
    (tmp_path / "w.csv").symlink_to("/dev/zero")
    assert "is not a file" in refusal(tmp_path / "w.csv")
