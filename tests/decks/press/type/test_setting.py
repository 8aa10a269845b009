from cards.style import Span, TextStyle
from decks.layout.runs import Styled
from decks.press.type.setting import BODY, paragraph, texts_of, width_of

HEBREW = "עוף ארוך רגליים שדג במים רדודים של המלחה, בבוקר ובערב (Ardea)"


def test_lines_from_left_to_right_begin_at_the_left():
    frame = paragraph("A tall bird that fishes in the shallow water of the marsh", 120)
    assert len(frame.things) > 2
    assert {text.x for text in frame.things} == {0}


def test_lines_from_right_to_left_end_together():
    frame = paragraph(HEBREW, 120)
    ends = [text.x + width_of(text.text, BODY) for text in frame.things]
    assert len(ends) > 2
    assert max(ends) - min(ends) < 0.01
    # the block stands at the left: its widest line begins there
    assert min(text.x for text in frame.things) == 0


def test_every_line_runs_as_its_paragraph_does():
    frame = paragraph("The water is high: גאות and low: שפל twice a day", 80)
    mixed = [text for text in frame.things if not text.text.isascii()]
    assert mixed
    assert [text.to_left for text in mixed] == [False] * len(mixed)
    assert {text.to_left for text in paragraph(HEBREW, 120).things} == {True}


def test_a_line_of_several_styles_is_one_text_where_its_order_must_be_worked_out():
    styled = Styled("מים H₂O", spans=(Span(0, 3, TextStyle.BOLD),))
    (text,) = paragraph(styled, 300).things
    assert text.text == "מים H₂O"
    assert [(run.text, run.strong) for run in text.runs] == [("מים", True), (" H₂O", False)]


def test_a_line_of_several_styles_from_left_to_right_stays_several_texts():
    styled = Styled("salt water", spans=(Span(0, 4, TextStyle.BOLD),))
    texts = paragraph(styled, 300).things
    assert [text.text for text in texts] == ["salt", " water"]
    assert texts_of((), 10) == []
