"""CSV and TSV, as schools save them."""

from collections.abc import Callable
from itertools import product

import pytest

from cards.checking import check
from cards.content import Content
from cards.finding import UnusableFileError

ReadCsv = Callable[..., Content]
ENCODINGS = ["utf-8", "utf-8-sig", "utf-16", "cp1252"]
DELIMITERS = [",", ";", "\t"]
ENDS = ["\n", "\r\n", "\r"]
TEXTS = [
    ("Word", "Meaning", "Topic"),
    ("marée", "tide — “the sea’s breath”", "Sea"),
    ("heron", "tall, grey; it waits", "Birds"),
    ("NA", "007", "1E5"),
    ("3/4", '5" nail', "None"),
    ("=1+1", "two\nlines", "64%"),
]


def written(delimiter: str, end: str) -> str:
    """Write the texts as RFC 4180 has it: quotes doubled, line breaks between quotes."""
    records = (
        delimiter.join('"{}"'.format(text.replace('"', '""')) for text in record)
        for record in TEXTS
    )
    return end.join(records) + end


@pytest.mark.parametrize(
    ("encoding", "delimiter", "end"), list(product(ENCODINGS, DELIMITERS, ENDS))
)
def test_every_encoding_and_delimiter_is_read(
    read_csv: ReadCsv, encoding: str, delimiter: str, end: str
) -> None:
    content = read_csv(written(delimiter, end).encode(encoding))
    assert [(item.answer, item.prompt, item.topic) for item in content.items] == TEXTS[1:]
    assert [item.prompt_place.row for item in content.items] == [2, 3, 4, 5, 6]
    guessed = ["encoding-guessed"] if encoding == "cp1252" else []
    assert [finding.code for finding in check(content, ())] == guessed


@pytest.mark.parametrize("encoding", ["utf-16-le", "utf-16-be"])
def test_utf16_is_known_by_its_byte_order_mark(read_csv: ReadCsv, encoding: str) -> None:
    content = read_csv("\ufeffmarée,tide\n".encode(encoding))
    assert [item.prompt for item in content.items] == ["marée"]


@pytest.mark.parametrize(
    ("text", "answers"),
    [
        ("tern;bird, white\ncrab;animal, red\n", ["bird, white", "animal, red"]),
        ("tern,bird; white\ncrab,animal\nlimpet,shell\n", ["bird; white", "animal", "shell"]),
        ("tern\tbird, white\ncrab\tanimal, red\n", ["bird, white", "animal, red"]),
        ("tern,bird\tcrab,animal\n", ["crab,animal"]),
        ('"tern, or; so",bird\n"crab; or, so",animal\n', ["bird", "animal"]),
        # what always stands before the delimiter ends the texts
        ("ebb comes in;,and goes\nreeds lie down;,and rise\n", ["and goes", "and rise"]),
        ("int x = 5;,declares x\nx++;,adds one\n", ["declares x", "adds one"]),
    ],
)
def test_the_delimiter_is_the_one_that_makes_columns(
    read_csv: ReadCsv, text: str, answers: list[str]
) -> None:
    assert [item.answer for item in read_csv(text).items] == answers


def test_a_tsv_has_tabs_whatever_else_it_has(read_csv: ReadCsv) -> None:
    content = read_csv("a,b\tc,d\ne,f\ng,h\n", "words.tsv")
    assert content.items[0].answer == "c,d"


def test_rows_are_numbered_as_a_spreadsheet_numbers_them(read_csv: ReadCsv) -> None:
    content = read_csv('Prompt,Answer\n\n"two\nlines",x\n,\nlast,y\n')
    assert [str(item.answer_place) for item in content.items] == ["words.csv B3", "words.csv B5"]


def test_rows_may_be_ragged(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer,Topic,Level\nTides a day,2\nLegs of a crab,10,Crabs,3\n")
    assert [item.topic for item in content.items] == ["", "Crabs"]
    assert check(content, ()) == ()


def test_a_file_name_never_makes_a_csv_anything_but_content(read_csv: ReadCsv) -> None:
    assert len(read_csv("Tides a day,2\n", "Teams.csv").items) == 1


# RFC 4180, section 2.5 to 2.7: quotes enclose a whole field, and are doubled within one
def test_a_quote_that_is_closed_only_lines_below_is_told_with_its_line(read_csv: ReadCsv) -> None:
    text = (
        'Prompt,Answer\n"two\nlines",x\n"What flows?,river\nWhat stands?,rock\nSay "hi",greeting\n'
    )
    with pytest.raises(UnusableFileError, match="in line 4 that opens a field"):
        read_csv(text)


def test_a_quote_astray_within_a_line_is_warned_of(read_csv: ReadCsv) -> None:
    content = read_csv('Prompt,Answer\nTides a day,2\n"Say \\"hi\\" to it",greeting\n')
    assert [(finding.code, str(finding.place)) for finding in content.findings] == [
        ("quotation-mark-astray", "words.csv A3")
    ]


@pytest.mark.parametrize(
    "line", ['He said "ebb", x', '5" board,wood', '"a ""b"" c", d', '"a", "b"']
)
def test_quotes_that_are_whole_or_open_no_field_are_nothing_to_tell_of(
    read_csv: ReadCsv, line: str
) -> None:
    assert read_csv(f"Prompt,Answer\n{line}\n").findings == ()


def test_a_blank_before_a_quote_is_not_part_of_the_field(read_csv: ReadCsv) -> None:
    (item,) = read_csv('Prompt, Answer\n"Where, at ebb?", "on the shore, dry"\n').items
    assert (item.prompt, item.answer) == ("Where, at ebb?", "on the shore, dry")


@pytest.mark.parametrize("line", ["sep=;", "SEP=;", '"sep=;"'])
def test_a_line_that_names_the_delimiter_is_no_row(read_csv: ReadCsv, line: str) -> None:
    content = read_csv(f"{line}\nPrompt;Answer\nTides a day, on most shores;2\n")
    (item,) = content.items
    assert (item.prompt, str(item.answer_place)) == ("Tides a day, on most shores", "words.csv B2")


def test_lines_are_still_counted_from_the_top_of_the_file(read_csv: ReadCsv) -> None:
    with pytest.raises(UnusableFileError, match="in line 3 that is opened and never closed"):
        read_csv('sep=,\nPrompt,Answer\n"Tides a day,2\nLegs of a crab,10\n')


def test_an_upright_stroke_is_a_delimiter_where_every_row_has_it(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt|Answer|Topic\nTides a day, mostly|2|Tides\nLegs|10|Life\n")
    assert [(item.answer, item.topic) for item in content.items] == [("2", "Tides"), ("10", "Life")]


def test_an_upright_stroke_within_some_fields_is_none(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer\nNorm of x,|x|\nTides a day,2\nLegs of a crab,10\n")
    assert [item.answer for item in content.items] == ["|x|", "2", "10"]


# so spreadsheet programs are told to keep noughts (common practice)
@pytest.mark.parametrize(
    ("field", "answer"),
    [('="007"', "007"), ('"=""0012"""', "0012"), ('"=""say """"hi"""""""', 'say "hi"')],
)
def test_a_text_written_as_a_formula_is_the_text(
    read_csv: ReadCsv, field: str, answer: str
) -> None:
    assert read_csv(f"Prompt,Answer\nThe agent,{field}\n").items[0].answer == answer


CAPITALS = "Capital of Spain?,Madrid,Geo\nCapital of Italy?,Rome,Geo\nCapital of Peru?,Lima,Geo\n"


@pytest.mark.parametrize(
    ("line", "cell"),
    [
        ("In Paris, which river flows?,Seine", "B2"),
        ('"In Paris, by night", which river flows?,Seine', "B2"),
        ("Which river flows?,Seine,  in Paris", "C2"),
        ("In Zürich, über what does one walk?,Limmat", "B2"),
    ],
)
def test_a_comma_that_seems_to_part_a_text_is_warned_of(
    read_csv: ReadCsv, line: str, cell: str
) -> None:
    content = read_csv(f"Question,Answer,Topic\n{line}\n{CAPITALS}")
    assert [(f.code, str(f.severity), f.place.cell) for f in content.findings] == [
        ("comma-within-text", "warning", cell)
    ]


@pytest.mark.parametrize(
    "line",
    [
        '"In Paris, which river flows?",Seine,Geo',
        "Which river flows in Paris?, Seine,Geo",
        "Which river flows in Paris?, 1, Geo",
        'Which river flows?,"Seine, in Paris", "geo, again"',
    ],
)
def test_other_commas_are_nothing_to_tell_of(read_csv: ReadCsv, line: str) -> None:
    assert read_csv(f"Question,Answer,Topic\n{line}\n{CAPITALS}").findings == ()


def test_blanks_behind_most_commas_are_how_somebody_writes(read_csv: ReadCsv) -> None:
    rows = "What ebbs?, tide, sea\nWhat digs?, lugworm, mud\nWhat wades?,heron,birds\n"
    assert read_csv(f"Question,Answer,Topic\n{rows}").findings == ()


@pytest.mark.parametrize(
    ("text", "answers"),
    [
        ("Two tides,spring; neap\nTwo zones,upper; lower\n", ["spring; neap", "upper; lower"]),
        ("Half of 3; 1,5\nHalf of 5; 2,5\n", ["1,5", "2,5"]),
        ("Ebb, in short; low\nFlood, in short; high\n", ["low", "high"]),
        ("Ebb;low, dry\nFlood;high, wet\n", ["low, dry", "high, wet"]),
    ],
)
def test_of_two_delimiters_that_part_as_well_that_of_no_text_is_taken(
    read_csv: ReadCsv, text: str, answers: list[str]
) -> None:
    assert [item.answer for item in read_csv(text).items] == answers


# German, Spanish, French and Portuguese Excel, and LibreOffice (common practice)
ELSEWHERE = (
    *("#DIV/0!", "#WERT!", "#NV", "#BEZUG!", "#¡VALOR!", "#¿NOMBRE?", "#NOM?", "#NOMBRE!"),
    *("#NOME?", "#NÚM!", "#N/D", "Err:502", "Err:509"),
)


@pytest.mark.parametrize("left", ["#REF!", "#NAME?", "#N/A", *ELSEWHERE])
def test_what_is_left_of_a_formula_that_failed_is_no_answer(read_csv: ReadCsv, left: str) -> None:
    content = read_csv(f"Prompt,Answer\nWhat digs?,{left}\nWhat does # mean?,#\n")
    (finding,) = [one for one in check(content, ()) if one.severity == "error"]
    assert (finding.code, finding.place.cell) == ("error-value", "B2")


def test_what_a_narrow_column_shows_is_no_answer(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer\nWhat digs?,########\nWhat does # mean?,#\n")
    (finding,) = [one for one in check(content, ()) if one.severity == "error"]
    assert (finding.code, finding.place.cell) == ("column-too-narrow", "B2")
    assert "wider" in finding.mend


# so spreadsheet programs show what they take for a date or a long number (common practice)
@pytest.mark.parametrize("shown", ["1-Feb", "12-Oct", "Mar-05", "9.78E+12", "9,78031E+12"])
def test_what_a_spreadsheet_program_changed_on_saving_is_warned_of(
    read_csv: ReadCsv, shown: str
) -> None:
    field = f'"{shown}"'
    content = read_csv(f"Prompt,Answer\nA half,{field}\nTides a day,2\nWhat digs?,lugworm\n")
    assert [(f.code, str(f.severity), f.place.cell) for f in check(content, ())] == [
        ("changed-on-saving", "warning", "B2")
    ]


@pytest.mark.parametrize(
    "field", ["1-Febr", "2 Feb", "February 1", "Jan", "May-Day", "6.02E+23", "3E+08", "E+12", "1-2"]
)
def test_other_dates_and_numbers_are_what_somebody_typed(read_csv: ReadCsv, field: str) -> None:
    content = read_csv(f"Prompt,Answer\nA half,{field}\nTides a day,2\nWhat digs?,lugworm\n")
    assert check(content, ()) == ()


def test_a_column_of_dates_means_them(read_csv: ReadCsv) -> None:
    rows = "Candlemas,2-Feb\nMidsummer,24-Jun\nSt Nicholas,6-Dec\nA leap day,29-Feb\n"
    assert check(read_csv(f"Prompt,Answer\n{rows}"), ()) == ()


def test_a_column_of_powers_of_ten_means_them(read_csv: ReadCsv) -> None:
    rows = "kilo,1E+03\nmega,1E+06\ngiga,1E+09\ntera,1E+12\npeta,1E+15\nmilli,1E-03\n"
    assert check(read_csv(f"Prompt,Answer\n{rows}"), ()) == ()


def test_the_mark_that_old_programs_put_at_the_end_is_no_row(read_csv: ReadCsv) -> None:
    content = read_csv("Prompt,Answer\r\nTides a day,2\r\n\x1a")
    assert [item.answer for item in content.items] == ["2"]
    assert content.findings == ()
