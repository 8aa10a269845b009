"""Runs: bold, raised and lowered letters keep their place through breaking and fitting."""

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.typewriter import typewriter

from cards.style import Span, TextStyle
from decks.layout.breaking import break_prose
from decks.layout.prose import prose_of
from decks.layout.runs import (
    SMALL,
    Run,
    Styled,
    begins_indented,
    lines_of,
    plain,
    runs_of,
    width_of,
    words_of,
)

BOLD, RAISED, LOWERED = TextStyle.BOLD, TextStyle.RAISED, TextStyle.LOWERED


@st.composite
def styled_texts(draw):
    text = draw(st.text(alphabet="ab \n", max_size=30))
    edges = sorted(draw(st.sets(st.integers(0, len(text)), max_size=6)))
    pairs = zip(edges[::2], edges[1::2], strict=False)
    spans = tuple(Span(a, b, draw(st.sampled_from(TextStyle))) for a, b in pairs)
    return Styled(text, draw(st.booleans()), spans)


@given(styled_texts())
def test_runs_hold_every_letter_once_and_in_order(styled):
    assert plain(runs_of(styled)) == styled.text


@given(styled_texts())
def test_a_letter_keeps_its_style_on_its_line(styled):
    def letters(runs):
        return [
            (letter, run.style) for run in runs for letter in run.text if letter not in " \u00a0\n"
        ]

    broken = break_prose(prose_of(styled, typewriter), 100)
    assert [pair for line, _ in broken for pair in letters(line)] == letters(runs_of(styled))


@given(styled_texts(), st.floats(min_value=3, max_value=40))
def test_a_line_is_as_wide_as_its_letters(styled, column):
    for line, width in break_prose(prose_of(styled, typewriter), column) or []:
        assert width == pytest.approx(sum(run.width(typewriter) for run in line))


def test_a_formula_is_one_word_of_three_runs():
    styled = Styled("H2O is", spans=(Span(1, 2, LOWERED),))
    formula, word = words_of(runs_of(styled))
    assert formula == (Run("H"), Run("2", style=LOWERED), Run("O"))
    assert word == (Run("is"),)


def test_raised_letters_are_narrower_and_bold_ones_wider():
    runs = runs_of(Styled("m2 wide", spans=(Span(1, 2, RAISED), Span(3, 7, BOLD))))
    # m and the blank: 2 * .5; the raised 2: .5 * .62; four bold letters: 4 * .6
    assert width_of(runs, typewriter) == pytest.approx(1.0 + 0.5 * SMALL + 2.4)


def test_spans_are_parted_at_line_breaks():
    first, second = lines_of(Styled("ab\ncd", spans=(Span(1, 4, BOLD),)))
    assert (first.text, first.spans) == ("ab", (Span(1, 2, BOLD),))
    assert (second.text, second.spans) == ("cd", (Span(0, 1, BOLD),))


def test_a_strong_text_is_strong_in_all_its_runs():
    assert runs_of(Styled("ab", strong=True)) == [Run("ab", strong=True)]
    raised = Styled("abcd", strong=True, spans=(Span(2, 3, RAISED),))
    assert runs_of(raised) == [
        Run("ab", strong=True),
        Run("c", strong=True, style=RAISED),
        Run("d", strong=True),
    ]
    assert runs_of(Styled("")) == []


def test_a_tab_parts_words_as_a_blank_does():
    assert words_of(runs_of(Styled("ab\tcd ef"))) == [(Run(word),) for word in ("ab", "cd", "ef")]


def test_raised_letters_stand_above_the_line_and_lowered_ones_below_it():
    assert Run("2", style=RAISED).rise > 0 > Run("2", style=LOWERED).rise
    assert Run("2", style=BOLD).rise == 0


def lines(text):
    return [plain(line) for line, _ in break_prose(prose_of(Styled(text), typewriter), 100)]


def test_a_program_keeps_its_indents():
    program = "for i in a:\n    if i:\n        go  on\n stop"
    assert [line.replace("\u00a0", ".") for line in lines(program)] == [
        "for i in a:",
        "....if i:",
        "........go on",
        ".stop",
    ]


def test_a_blank_at_the_start_of_a_line_is_a_slip():
    assert lines("one,\n two") == ["one,", "two"]


def test_two_blanks_are_an_indent_and_one_or_an_empty_line_is_none():
    begun = [begins_indented([Run(text)]) for text in ("\u00a0\u00a0x", "\u00a0x", "x")]
    assert begun == [True, False, False]
    assert not begins_indented([])


def test_an_indent_keeps_the_styles_in_their_places():
    styled = Styled("go:\n  x2", spans=(Span(7, 8, RAISED),))
    (_, second) = lines_of(styled)
    assert runs_of(second) == [Run("\u00a0\u00a0x"), Run("2", style=RAISED)]


def test_a_long_line_to_write_on_is_printed_shorter():
    assert lines(f"The sea is {'_' * 40}.") == [f"The sea is {'_' * 12}."]
    assert lines(f"It is {'.' * 13}") == [f"It is {'.' * 12}"]
    for left in (f"It is {'_' * 12}", "7_000_000_000_000", "9" * 30, "…" * 5):
        assert lines(left) == [left]
