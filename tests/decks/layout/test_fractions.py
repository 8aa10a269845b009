"""Built fractions: what is one, and that nothing else of the text is touched."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cards.style import Span, TextStyle
from decks.layout.fractions import with_fractions
from decks.layout.runs import Styled, has_fractions, runs_of
from decks.recipe import Fractions

PARTS = {TextStyle.NUMERATOR: "^", TextStyle.DENOMINATOR: "_"}


def shown(text, spans=()):
    """Return a text with ^ before numerators and _ before denominators."""
    built = with_fractions(Styled(text, spans=spans), Fractions.BUILT)
    return "".join(PARTS.get(run.style, "") + run.text for run in runs_of(built))


@pytest.mark.parametrize(
    ("text", "built"),
    [
        ("3/4", "^3⁄_4"),
        ("11/16 of an inch", "^11⁄_16 of an inch"),
        ("-2/5", "-^2⁄_5"),
        ("−2/5", "−^2⁄_5"),
        ("1 1/2", "1^\N{NO-BREAK SPACE}1⁄_2"),
        ("What is 2 3/4 + 1/8?", "What is 2^\N{NO-BREAK SPACE}3⁄_4 + ^1⁄_8?"),
        ("3/4-1/2=1/4", "^3⁄_4-^1⁄_2=^1⁄_4"),
        ("1/2, 2/3.", "^1⁄_2, ^2⁄_3."),
        ("a 3/4-inch pipe (1/2)", "a ^3⁄_4-inch pipe (^1⁄_2)"),
        ("5 7/4", "5 ^7⁄_4"),
        ("3⁄4", "^3⁄_4"),
        ("6/1", "^6⁄_1"),
        ("5 3/3", "5 ^3⁄_3"),
        ("see 3/4 on www.tide.example", "see ^3⁄_4 on www.tide.example"),
    ],
)
def test_a_fraction_is_built(text, built):
    assert shown(text) == built


@pytest.mark.parametrize(
    "text",
    [
        "3/4/2025",
        "2019/20",
        "km/h",
        "5 km/h",
        "and/or",
        "24/7",
        "https://shore.example/1/2",
        "www.shore.example?a=1/2",
        "shore/1/2",
        "1-1/2",
        "A-1/2",
        "3/4x",
        "x/2",
        "1/0",
        "3.1/2",
        "1/2.5",
        "10.0.0.0/8",
        "1/2:3",
    ],
)
def test_what_is_no_fraction_stays_as_typed(text):
    assert shown(text) == text


def test_nothing_is_built_unless_it_was_asked_for():
    styled = Styled("3/4")
    assert with_fractions(styled, Fractions.PLAIN) is styled


def test_bold_letters_round_a_fraction_stay_bold_and_raised_fractions_stay_as_typed():
    bold = Span(0, 10, TextStyle.BOLD)
    built = with_fractions(Styled("about 3/4 m", spans=(bold,)), Fractions.BUILT)
    styles = [(run.text, run.style) for run in runs_of(built)]
    assert styles == [
        ("about ", TextStyle.BOLD),
        ("3", TextStyle.NUMERATOR),
        ("⁄", None),
        ("4", TextStyle.DENOMINATOR),
        (" ", TextStyle.BOLD),
        ("m", None),
    ]
    assert shown("x1/2", (Span(1, 4, TextStyle.RAISED),)) == "x1/2"


@pytest.mark.parametrize(
    ("raised", "built"),
    [
        ((0, 1), "x ^1⁄_2 y"),
        ((1, 2), "x ^1⁄_2 y"),
        ((2, 3), "x 1/2 y"),
        ((4, 5), "x 1/2 y"),
        ((1, 7), "x 1/2 y"),
        ((5, 7), "x ^1⁄_2 y"),
    ],
)
def test_a_fraction_stays_as_typed_where_any_of_its_letters_is_raised(raised, built):
    for others in ((), (Span(6, 7, TextStyle.LOWERED),), (Span(0, 1, TextStyle.LOWERED),)):
        apart = [other for other in others if other.end <= raised[0] or other.start >= raised[1]]
        assert shown("x 1/2 y", (*apart, Span(*raised, TextStyle.RAISED))) == built


def test_bold_letters_are_cut_where_a_fraction_stands_and_left_elsewhere():
    bold = (Span(0, 3, TextStyle.BOLD), Span(4, 9, TextStyle.BOLD), Span(12, 15, TextStyle.BOLD))
    built = with_fractions(Styled("1/2 or 3/4, 5/6", spans=bold), Fractions.BUILT)
    kept = [span for span in built.spans if span.style is TextStyle.BOLD]
    assert kept == [Span(4, 7, TextStyle.BOLD)]


@given(st.text(alphabet="0123/ -.x⁄", max_size=15))
def test_whatever_stands_in_a_cell_only_slashes_and_blanks_change(text):
    built = with_fractions(Styled(text), Fractions.BUILT)
    back = built.text.replace("⁄", "/").replace("\N{NO-BREAK SPACE}", " ")
    assert back == text.replace("⁄", "/")
    ends = [0, *(edge for span in built.spans for edge in (span.start, span.end)), len(text)]
    assert ends == sorted(ends)


def test_a_line_with_a_built_fraction_is_told_from_others():
    built = with_fractions(Styled("x 1/2 y"), Fractions.BUILT)
    assert has_fractions(runs_of(built))
    assert not has_fractions(runs_of(Styled("x 1/2 y")))
    assert not has_fractions(runs_of(Styled("x2", spans=(Span(1, 2, TextStyle.RAISED),))))
