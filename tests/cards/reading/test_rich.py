"""Bold, raised and lowered letters keep their places when a cell's text is cleaned."""

from hypothesis import given
from hypothesis import strategies as st
from openpyxl import Workbook
from openpyxl.cell.rich_text import CellRichText, TextBlock
from openpyxl.cell.text import InlineFont

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


def test_a_workbooks_rich_text_reaches_the_item(tmp_path):
    def block(text, **font):
        return TextBlock(InlineFont(**font), text)

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
