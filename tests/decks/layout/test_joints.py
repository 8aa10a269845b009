"""Breaks that a person would choose, in a typewriter's face: every letter is half an em wide."""

import itertools

import pytest
from hypothesis import given
from hypothesis import strategies as st
from support.typewriter import broken, typewriter

from decks.layout.balance import break_full
from decks.layout.breaking import fill_text
from decks.layout.joints import HELD, STUCK, is_blank, is_lone, joints_of
from decks.layout.prose import groups_of, prose_of
from decks.layout.runs import Styled, plain


@pytest.mark.parametrize(
    ("letters", "lines"),
    [
        # the most even would be "weed | crab at | in by at", with a short word alone
        (10, "weed crab | at in | by at"),
        # even lines
        (18, "The strip of shore | that is covered | twice a day"),
        (16, "Where the river | meets the sea"),
        (14, "Which crab has | a soft tail?"),
        # a short word goes with what follows it, a new sentence on a new line
        (17, "The birds of | the salt marsh"),
        (17, "An animal with | a soft body | and no backbone"),
        (30, "What is it called? | It has two halves."),
        # a number and its unit
        (20, "Water boils at | 100 °C at sea level"),
        (17, "The wind blew at | 3.5 m/s all day"),
        (20, "A pearl worth | £5 million was sold"),
        (18, "There are at least | 10 000 barnacles"),
        (22, "The shore has about | 1 000 000 sandhoppers"),
        # times, dates, references, names
        (22, "Low tide comes at | 7 p.m. in the evening"),
        (22, "The spring tide of | 12 May is the highest"),
        (19, "A map of them is on | page 7 of the book"),
        (19, "Look it up in | chapter 3 again"),
        (18, "The answer stands | in No. 5 below"),
        (20, "A shell was found by | J. R. Fern and sons"),
        (18, "It was sent to | Dr Moss on Sunday"),
        # formulas, whole where they fit and else broken before their relation
        (22, "Add these numbers: | 2 + 3 = 5"),
        (22, "It holds wherever | x < 5 and y ≥ 3"),
        (20, "Use H2 SO4 | with 2 H2O | and 3 NaCl2 now"),
        (11, "3 + 4 + 5 | = 6 + 7 - 1"),
        (14, "3 + 4 + 5 + 6 | = 9 + 9 = 18"),
        (18, "egg → larva | → pupa → adult"),
        # dashes, closing marks and blanks
        (18, "The highest zone – | never quite wet"),
        (15, "The crab digs a | ____ in the mud"),
    ],
)
def test_lines_break_where_a_person_would_break_them(letters, lines):
    assert broken(lines.replace(" | ", " "), letters / 2) == lines.split(" | ")


words = st.one_of(
    st.text(alphabet="abc", min_size=1, max_size=8),
    st.sampled_from(
        [
            "5",
            "km",
            "12",
            "May",
            "No.",
            "=",
            "+",
            "→",
            "–",
            "____",
            "the",
            "000",
            "(",
            "J.",
            "H2",
            "?",
        ]
    ),
)
texts = st.lists(words, min_size=1, max_size=12).map(" ".join)


@given(text=texts, column=st.floats(min_value=4.5, max_value=20))
def test_words_keep_their_order_and_lines_their_width_and_no_line_is_spent(text, column):
    lines = broken(text, column)
    assert " ".join(lines) == text
    assert all(typewriter(line) <= column + 1e-9 for line in lines)
    (prose,) = prose_of(Styled(text), typewriter)
    widths = [group.width for group in groups_of(prose, column)]
    assert len(lines) == len(break_full(widths, 0.5, column))


@given(text=texts, column=st.floats(min_value=4.5, max_value=20))
def test_what_belongs_together_is_parted_only_where_it_is_wider_than_the_column(text, column):
    ends = [line.split(" ") for line in broken(text, column)]
    (prose,) = prose_of(Styled(text), typewriter)
    at = 0
    for line in ends[:-1]:
        at += len(line)
        if prose.joints[at - 1] >= HELD:
            (group,) = [group for group in prose.groups if group.start < at < group.end]
            assert group.width > column


@given(
    text=st.lists(st.text(alphabet="abc", min_size=1, max_size=8), min_size=2, max_size=7),
    column=st.integers(min_value=8, max_value=16),
)
def test_no_short_word_is_alone_where_any_break_into_as_many_lines_avoids_it(text, column):
    def lone(lines):
        return len(lines) > 1 and any(" " not in line and is_lone(line) for line in lines)

    lines = broken(" ".join(text), column / 2)
    inner = itertools.combinations(range(1, len(text)), len(lines) - 1)
    ways = [
        [" ".join(text[a:b]) for a, b in itertools.pairwise([0, *ends, len(text)])]
        for ends in inner
    ]
    fitting = [way for way in ways if all(len(line) <= column for line in way)]
    assert lone(lines) == all(lone(way) for way in fitting)


def test_the_last_line_of_running_text_is_no_lone_short_word():
    lines = fill_text(Styled("a crab walks over sand"), 9, measure=typewriter)
    assert [plain(line) for line in lines] == ["a crab walks", "over sand"]


@pytest.mark.parametrize("word", ["sea", "“sea”.", "____", "____.", "5 m"])
def test_short_words_and_blanks_are_lone(word):
    assert is_lone(word)
    assert not is_lone("limpet")


def test_a_long_line_to_write_on_is_a_blank_whatever_stands_round_it():
    assert all(map(is_blank, ("________", "(________),", "“____”?", "__")))
    assert not any(map(is_blank, ("crabs__live", "_", "()", "…", "(crab)")))


@pytest.mark.parametrize(
    "text",
    ["crab –", "crab ).", "crabs ?", "Crab ”", "5 /", "( crab", "« Crab", "_ _", "– crab"],
)
def test_no_line_begins_with_a_closing_mark_or_a_dash_or_ends_with_an_opening_one(text):
    assert joints_of(text.split())[0] == STUCK


@pytest.mark.parametrize("text", ["_ crab", "(a crab", "crab (a", "5 “red”"])
def test_other_words_are_parted_from_what_stands_beside_them(text):
    assert joints_of(text.split())[0] < HELD


@pytest.mark.parametrize(
    "text",
    [
        "five km",
        "5 kilometres of sand",
        "May be",
        "a page of it",
        "well-known facts",
        "I see 5",
        "5 Crabs",
        "3 km/crab",
        "3 m/tree",
        "45 May",
        "May Crabs",
        "shells 000",
        "crab 7",
        "page Crabs",
        "Mrs. crab",
        "2 X4/Y5",
        "2 a4",
    ],
)
def test_plain_words_are_not_held(text):
    first, *_ = joints_of(text.split())
    assert first < HELD


@pytest.mark.parametrize(
    "text",
    [
        *("J. Rowntree", "J.K. Fern", "Mr Fern", "(Mr. Fern", "Henry VIII", "• crab"),
        *("2 H2O", "2 H2O.", "2 NaCl2", "2 Ca(OH)2"),
        *("7 p.m.", "9.8 m/s²", "1025 kg/m³", "3 kg·m⁻¹", "10 000"),
        *("? mL", "? km/h."),
        *("May 12", "(Sept. 3rd", "3rd Sept.", "(12 May"),
        *("page 7", "(Fig. 3)", "“Page 7”", "[eq. 2.1]", "‘Act IV’", "§ 4", "question B"),
    ],
)
def test_names_molecules_and_bullets_are_held(text):
    (joint,) = joints_of(text.split())
    assert joint >= HELD


def joints(text):
    return joints_of(text.split())


def test_a_formula_parts_before_a_relation_then_a_sum_then_a_product():
    # single letters stand for numbers; behind a sign a formula parts last
    equals, behind, plus, _, times, _ = joints("a = b + 3 x 4")
    assert HELD <= equals < plus < times < behind
    assert joints("12 = ab")[0] == joints("___ = ab")[0] == equals
    # on either side, with a sign of its own, or in brackets
    assert joints("ab = 12")[0] == joints("√x = ab")[0] == joints("(x) = ab")[0] == equals
    assert joints("3 × 4")[0] == times


def test_signs_between_words_part_words_and_no_formula():
    assert joints("egg → larva → pupa")[0] < HELD
    assert joints("salt + water")[0] < HELD
    assert joints("ab = cd")[0] < HELD


@pytest.mark.parametrize(
    ("text", "n"), [("crab x 5", 1), ("5 x Crab", 1), ("x 5 3", 0), ("3 5 x", 1)]
)
def test_a_letter_is_a_sign_between_two_numbers_alone(text, n):
    assert joints("5 x 3")[1] >= HELD
    assert joints(text)[n] < HELD


def test_a_molecule_is_held_to_the_number_before_it_and_to_no_word():
    assert joints("crabs need H2O")[1] < HELD


def test_a_bullet_holds_its_line_only_where_one_begins():
    assert joints("crab • eel • goby")[1] < HELD


def test_a_line_ends_worst_with_an_article_then_with_a_weak_word_then_with_a_number():
    article, weak, number, word = (
        joints_of([end, "crabs"])[0] for end in ("the", "of", "12", "red")
    )
    assert article > weak > number > word == 0
    assert joints_of(["C", "Crabs"])[0] == article
    assert joints_of(["12", "Crabs"])[0] == joints_of(["“red”", "crabs"])[0] == word


def test_a_line_would_rather_not_begin_with_a_blank():
    assert joints("“red” ____")[0] > joints("“red” crabs")[0] == 0


def test_a_line_ends_best_where_a_sentence_ends_then_where_a_comma_stands():
    sentence, comma = (joints_of([end, "crabs"])[0] for end in ("moult.", "moult,"))
    assert sentence < comma < 0


def test_a_number_and_its_unit_are_lone_together_and_cost_what_a_break_after_them_costs():
    (prose,) = prose_of(Styled("It is 5 m of mud"), typewriter)
    held = prose.groups[2]
    assert prose.texts[held.start : held.end] == ("5", "m")
    assert prose.is_lone(held)
    assert [group.price for group in prose.groups] == [*(j for j in prose.joints if j < HELD), 0]


def test_only_what_is_wider_than_the_column_is_parted():
    (prose,) = prose_of(Styled("5 km or 120 km"), typewriter)
    # four letters are 2 ems
    groups = [" ".join(prose.texts[group.start : group.end]) for group in groups_of(prose, 2)]
    assert groups == ["5 km", "or", "120", "km"]


def test_texts_in_scripts_without_spaces_are_one_word_and_do_no_harm():
    assert broken("\u6f6e\u9593\u5e26", 5) == ["\u6f6e\u9593\u5e26"]
    assert broken("\u0e19\u0e49" * 40, 5) is None
