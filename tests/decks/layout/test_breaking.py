"""Breaking lines, measured with a typewriter's face: every letter is half an em wide."""

import itertools

import pytest
from hypothesis import example, given
from hypothesis import strategies as st
from support.typewriter import broken, typewriter

from cards.style import Span, TextStyle
from decks.layout.breaking import break_evenly, count_lines, fill_text
from decks.layout.prose import prose_of
from decks.layout.runs import Styled, plain

texts = st.lists(st.text(alphabet="abc", min_size=1, max_size=8), min_size=1, max_size=9).map(
    " ".join
)
columns = st.floats(min_value=1, max_value=30)


def filled(text, column):
    return [plain(line) for line in fill_text(Styled(text), column, measure=typewriter)]


@given(text=texts, column=columns)
def test_no_word_is_lost_and_no_line_is_wider_than_the_column(text, column):
    lines = broken(text, column)
    if lines is None:
        assert max(typewriter(word) for word in text.split()) > column
    else:
        assert " ".join(lines) == text
        assert all(typewriter(line) <= column + 1e-9 for line in lines)


@given(text=texts, column=columns)
def test_running_text_splits_a_word_that_is_too_wide_and_loses_nothing(text, column):
    lines = filled(text, column)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")
    assert all(typewriter(line) <= column + 1e-9 for line in lines)


def test_running_text_fills_its_lines():
    # 22 letters a line: "The strip of shore that" would be 23
    assert filled("The strip of shore that is covered twice a day", 11) == [
        "The strip of shore",
        "that is covered twice",
        "a day",
    ]


@given(
    widths=st.lists(st.integers(min_value=1, max_value=9), min_size=1, max_size=8),
    column=st.integers(min_value=9, max_value=20),
)
def test_lines_are_as_few_and_as_even_as_brute_force_finds(widths, column):
    def cost(ends):
        starts = (0, *ends[:-1])
        lines = [sum(widths[a:b]) + (b - a - 1) for a, b in zip(starts, ends, strict=True)]
        wide = max(lines) > column
        return (wide, len(lines), sum(line * line for line in lines))

    count = len(widths)
    ways = [
        (*inner, count)
        for size in range(count)
        for inner in itertools.combinations(range(1, count), size)
    ]
    best = min(cost(ends) for ends in ways)
    assert cost(tuple(break_evenly(widths, 1, column))) == best


PRICES = st.sampled_from([-0.04, 0.0, 0.05, 0.12, 1.0])


@given(
    things=st.lists(st.tuples(st.integers(1, 9), PRICES, st.booleans()), min_size=1, max_size=8),
    column=st.integers(min_value=9, max_value=20),
)
# where a slip of one sign would choose another break
@example([(3, 0.05, True), (7, 1.0, True), (9, 0.0, True)], 19)
@example([(9, 0.05, False), (1, 0.12, False), (3, -0.04, False), (7, 1.0, True)], 20)
@example(
    [
        (3, 0.12, True),
        (7, 0.12, True),
        (7, 0.05, False),
        (3, 0.12, False),
        (3, 1.0, False),
        (4, -0.04, False),
    ],
    13,
)
@example(
    [
        (9, 0.12, False),
        (4, 1.0, False),
        (7, 1.0, False),
        (7, 0.12, False),
        (4, 0.0, False),
        (2, 0.12, True),
    ],
    18,
)
def test_prices_and_lone_things_weigh_as_brute_force_weighs_them(things, column):
    widths, prices, lone = zip(*things, strict=True)
    count = len(widths)

    def lines_of(ends):
        starts = (0, *ends[:-1])
        return [sum(widths[a:b]) + (b - a - 1) for a, b in zip(starts, ends, strict=True)]

    def cost(ends):
        lines = lines_of(ends)
        mean = sum(lines) / len(lines)
        single = [a for a, b in zip((0, *ends[:-1]), ends, strict=True) if b == a + 1]
        extra = sum(prices[end - 1] for end in ends[:-1]) + 100 * sum(lone[a] for a in single)
        return sum(line * line for line in lines) + extra * mean * mean

    ways = [
        (*inner, count)
        for size in range(count)
        for inner in itertools.combinations(range(1, count), size)
        if max(lines_of((*inner, count))) <= column
    ]
    fewest = [way for way in ways if len(way) == min(map(len, ways))]
    found = tuple(break_evenly(widths, 1, column, prices=prices, lone=lone))
    assert found in fewest
    assert cost(found) == pytest.approx(min(map(cost, fewest)))


def test_the_lines_of_a_clue_are_balanced():
    # 46 letters of half an em: at least three lines of 11 ems; 18, 15 and 11 letters are most even
    assert broken("The strip of shore that is covered twice a day", 11) == [
        "The strip of shore",
        "that is covered",
        "twice a day",
    ]


def test_the_teachers_own_line_breaks_hold():
    assert broken("one\n\ntwo three", 20) == ["one", "", "two three"]


def test_a_non_breaking_space_holds_its_words_together():
    assert broken("about 5\N{NO-BREAK SPACE}km", 4) == [
        "about",
        "5\N{NO-BREAK SPACE}km",
    ]


def test_a_blank_text_is_one_blank_line():
    assert broken("", 5) == [""]


@pytest.mark.parametrize("parted", [broken, filled])
def test_each_of_the_teachers_lines_is_broken_and_counted_by_itself(parted):
    # 8 letters a line
    text = "one two three\nfour\nfive six seven"
    lines = ["one two", "three", "four", "five six", "seven"]
    assert parted(text, 4) == lines
    assert count_lines(prose_of(Styled(text), typewriter), 4) == len(lines)


@pytest.mark.parametrize(
    ("letters", "lines"),
    [
        # the last word has company where the line above can spare a word, and the two fit
        (11, "whole | creek ebb"),
        (11, "at | lagoons ebb"),
        (12, "barnacles | close up | when | tides ebb"),
        (12, "of barnacles | ebb"),
        (9, "barnacles | ebb"),
        # a long word is not lost on a line of its own
        (14, "whole seas ebb | barnacles"),
    ],
)
def test_a_lone_short_word_at_the_end_of_running_text_has_company_where_it_fits(letters, lines):
    text = lines.replace(" |", "")
    assert filled(text, letters / 2) == lines.split(" | ")


def test_a_word_that_is_split_keeps_its_weight_and_its_styles():
    spans = (Span(0, 4, TextStyle.RAISED),)
    for styled in (Styled("tidepools", strong=True), Styled("tidepools", strong=True, spans=spans)):
        lines = fill_text(styled, 1.8, measure=typewriter)
        runs = [run for line in lines for run in line]
        assert all(run.strong is True for run in runs)
        raised = "".join(run.text for run in runs if run.style is TextStyle.RAISED)
        assert raised == ("tide" if styled.spans else "")


# Unicode's line breaking (UAX #14: classes HY, BA and B2; from memory) allows a break after these
# hyphens and dashes; one at the start of a word may be a minus
@pytest.mark.parametrize(
    ("word", "letters", "lines"),
    [
        ("otters-and-cousins", 8, "otters- | and- | cousins"),
        ("otters-and-cousins", 11, "otters-and- | cousins"),
        ("down-riverbanks", 8, "down-riv | erbanks"),
        ("sea‐blite–cordgrass", 10, "sea‐blite– | cordgrass"),
        ("-riverbank-", 6, "-river | bank-"),
        ("see -riverbank", 6, "see | -river | bank"),
    ],
)
def test_a_word_wider_than_its_column_is_split_after_a_hyphen_first(word, letters, lines):
    assert filled(word, letters / 2) == lines.split(" | ")


@given(
    st.lists(st.text("abi-", min_size=1, max_size=30), min_size=1, max_size=4).map(" ".join),
    st.integers(2, 12),
)
def test_a_split_text_loses_nothing_and_no_line_is_too_wide(text, letters):
    lines = filled(text, letters / 2)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "")
    assert all(len(line) <= letters for line in lines)
    # the pieces of a word do not stand beside one another with a blank between
    assert sum(line.count(" ") for line in lines) <= text.count(" ")


def test_the_pieces_of_a_word_fill_their_lines():
    # three letters are 1.5 ems
    assert filled("abcdefgh", 1.5) == ["abc", "def", "gh"]
