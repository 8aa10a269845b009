"""Bold, raised and lowered letters keep their places when a cell's text is cleaned."""

from hypothesis import given
from hypothesis import strategies as st
from openpyxl import Workbook
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont
from openpyxl.styles import Font

from cards.checking import check
from cards.reading import read
from cards.reading.rich import cleaned
from cards.reading.table import clean
from cards.style import Span, TextStyle

BOLD, RAISED, LOWERED = TextStyle.BOLD, TextStyle.RAISED, TextStyle.LOWERED

parts = st.lists(
    st.tuples(
        st.text(alphabet="ae \n\r\u0301\u00a0\ufeff", max_size=5),
        st.sampled_from([None, *TextStyle]),
    ),
    max_size=6,
)


def test_a_formula_keeps_its_lowered_figure():
    assert cleaned([("H", None), ("2", LOWERED), ("O", None)]) == ("H2O", (Span(1, 2, LOWERED),))


def test_spans_count_from_the_first_letter_that_is_left():
    assert cleaned([("  10", None), ("2 ", RAISED)]) == ("102", (Span(2, 3, RAISED),))


def test_an_accent_of_the_part_before_costs_the_styles_but_not_the_text():
    text, spans = cleaned([("cafe", None), ("\u0301 noir", BOLD)])
    assert text == "café noir"
    assert spans == ()


@given(parts)
def test_the_text_is_the_one_that_any_cell_has_and_spans_lie_within_it(some):
    text, spans = cleaned(some)
    assert text == clean("".join(part for part, _ in some))
    ends = [0, *(edge for span in spans for edge in (span.start, span.end))]
    assert ends == sorted(ends)
    assert ends[-1] <= len(text)


def block(text, **font):
    return TextBlock(InlineFont(**font), text)


def raised(text):
    return block(text, vertAlign="superscript")


def with_row(tmp_path, **cells):
    """Return what is read of a workbook with one row; cells are given by their column letters."""
    book = Workbook()
    sheet = book.active
    sheet.append(["Question", "Answer", "Also right", "Wrong answers", "Topic"])
    for letter, value in cells.items():
        sheet[f"{letter}2"] = value
    path = tmp_path / "rich.xlsx"
    book.save(path)
    return read(path)


def found(content):
    return [(finding.code, str(finding.place)) for finding in check(content, ())]


def test_a_workbooks_rich_text_reaches_the_item(tmp_path):
    book = Workbook()
    sheet = book.active
    sheet.append(["Prompt", "Answer"])
    sheet["A2"] = CellRichText("What is H", block("2", vertAlign="subscript"), "O?")
    sheet["B2"] = CellRichText("10", block("2", vertAlign="superscript"), block(" cold", b=True))
    path = tmp_path / "rich.xlsx"
    book.save(path)
    (item,) = read(path).items
    assert (item.prompt, item.prompt_spans) == ("What is H2O?", (Span(9, 10, LOWERED),))
    assert (item.answer, item.answer_spans) == (
        "102 cold",
        (Span(2, 3, RAISED), Span(3, 8, BOLD)),
    )


def test_where_styles_are_not_printed_figures_are_raised_by_signs(tmp_path):
    content = with_row(
        tmp_path,
        A="Which is ten thousand?",
        B=CellRichText("10", raised("4")),
        C=CellRichText("100", raised("2"), "; ten", raised("4")),
        D=CellRichText("10", raised("−4"), "; ", block("10", b=True)),
        E=CellRichText("Powers 10", raised("n"), " of a", block("0", vertAlign="subscript")),
    )
    (item,) = content.items
    assert item.also_right == ("100²", "ten⁴")
    assert item.wrong == ("10⁻⁴", "10")
    assert item.topic == "Powers 10ⁿ of a₀"
    assert found(content) == []


def test_a_number_of_the_same_figures_is_a_wrong_choice(tmp_path):
    power = CellRichText("10", raised("2"))
    content = with_row(tmp_path, A="Which is a power?", B=power, D="102; 100")
    assert found(content) == []
    content = with_row(tmp_path, A="Which is a power?", B=power, D=CellRichText("10", raised("2")))
    assert found(content) == [("wrong-choice-is-right", "Sheet D2")]


def test_what_cannot_be_raised_by_signs_is_told(tmp_path):
    content = with_row(
        tmp_path,
        A="Which is a power?",
        B=CellRichText("x", raised("Q")),
        C=CellRichText("y", raised("Q")),
        E=CellRichText("Powers x", raised("Q")),
    )
    (item,) = content.items
    assert (item.also_right, item.topic) == (("yQ",), "Powers xQ")
    assert found(content) == [("raised-letters-lost", f"Sheet {at}2") for at in "CE"]


def test_prompts_that_part_in_what_is_raised_are_two(tmp_path):
    book = Workbook()
    for prompt, answer in (
        (CellRichText("10", raised("2"), " is"), "a square"),
        ("102 is", "even"),
    ):
        book.active.append([prompt, answer])
    path = tmp_path / "rich.xlsx"
    book.save(path)
    assert found(read(path)) == []


def test_text_that_is_struck_out_is_told(tmp_path):
    cells = {
        "A": CellRichText("Capital of ", block("Assyria", strike=True), " Australia"),
        "B": CellRichText("Canberra", block(" ", strike=True)),
        "E": "Old",
    }
    content = with_row(tmp_path, **cells)
    assert found(content) == [("struck-out", "Sheet A2")]
    assert content.items[0].prompt == "Capital of Assyria Australia"
    book = Workbook()
    book.active.append(["Question", "Answer", "Topic", "Level", "Notes"])
    book.active.append(["Capital of Assyria?", "Assur", "Old", 1, "gone"])
    for cell in book.active[2]:
        cell.font = Font(strike=True, name="Courier New")
    book.active.append(["Capital of Australia?", "Canberra"])
    book.save(tmp_path / "struck.xlsx")
    assert found(read(tmp_path / "struck.xlsx")) == [
        ("struck-out", f"Sheet {column}2") for column in "ABC"
    ]
