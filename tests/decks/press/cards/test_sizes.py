"""From how far a card can be read: what the finding says, and the sentence for the teacher."""

import re

import pytest
from support.items import item

from cards.finding import Severity
from cards.style import Span, TextStyle
from decks.layout.grid import make_grid
from decks.layout.runs import Styled
from decks.lengths import CardMeasure
from decks.press.cards.legible import letter_of
from decks.press.cards.proof import proofread
from decks.press.cards.sizes import readable_from
from decks.press.type.fonts import letter_height
from decks.recipe import CardSize, Fractions, Recipe, Sides
from decks.team import make_teams

CLUE = "The strip of shore that is covered and uncovered by the sea twice a day"


def recipe(**choices):
    return Recipe("Shore", make_teams(["Heron", "Otter"], [None, None]), **choices)


def grid_of(made):
    return make_grid(made.paper, made.card_size, made.sides, made.flip)


def findings(an_item, **choices):
    made = recipe(**choices)
    return proofread([an_item], made, grid_of(made))


def sentence(items, **choices):
    made = recipe(**choices)
    return readable_from(items, grid_of(made), made)


def test_what_is_large_enough_is_passed_in_silence():
    assert findings(item(CLUE, "shore")) == ()
    assert findings(item("What digs?", "lugworm"), read_from=1500) == ()


def test_a_text_too_small_for_the_distance_is_a_warning_at_its_cell():
    (found,) = findings(item(CLUE, "shore"), read_from=1500)
    assert (found.code, found.severity) == ("too-small-to-read-from", Severity.WARNING)
    assert (found.place.cell, found.found) == ("B2", CLUE)
    assert re.fullmatch(
        r"On the front of a small card this can be read from 0\.\d m, not from 1\.5 m\.",
        found.wrong,
    )


def test_the_finding_says_how_many_words_would_do():
    (found,) = findings(item(CLUE, "shore"), read_from=1500)
    fitting = int(re.search(r"The first (\d+) of its 15 words would do", found.mend)[1])
    words = CLUE.split()
    assert findings(item(" ".join(words[:fitting]), "shore"), read_from=1500) == ()
    assert findings(item(" ".join(words[: fitting + 1]), "shore"), read_from=1500) != ()


def test_the_distance_in_the_finding_holds():
    (found,) = findings(item(CLUE, "shore"), read_from=1500)
    metres = float(re.search(r"read from ([\d.]+) m", found.wrong)[1])
    assert findings(item(CLUE, "shore"), read_from=1000 * metres) == ()


def test_a_larger_card_helps():
    assert findings(item(CLUE, "shore"), read_from=1500, card_size=CardSize.LARGE) == ()


@pytest.mark.parametrize(
    ("size", "named", "help_"),
    [
        (CardSize.SMALL, "a small card", "or choose a larger card."),
        (CardSize.LARGE, "a large card", "or take full pages."),
        (CardSize.FULL, "a full-page card", "or choose a larger paper."),
        (CardMeasure(90, 60), "a 90 × 60 mm card", "or choose a larger card."),
    ],
)
def test_every_kind_of_card_is_named_in_words(size, named, help_):
    (far,) = findings(item(f"{CLUE}. " * 2, "shore"), read_from=4500, card_size=size)[:1]
    assert f"of {named} this" in far.wrong
    assert far.mend.endswith(help_)
    (error,) = findings(item("word " * 1500, "shore"), card_size=size)
    assert f"of {named} at 12 points" in error.wrong
    assert error.mend.endswith(help_)


def test_a_word_too_wide_for_letters_so_large_is_named():
    (found,) = findings(item("Glow", "bioluminescence"), read_from=2500)
    assert "“bioluminescence” is wider than the card in letters so large" in found.mend


def test_backs_that_are_not_printed_need_not_fit():
    long = "word " * 300
    assert [f.code for f in findings(item("What?", long))] == ["does-not-fit"]
    assert findings(item("What?", long), sides=Sides.FRONTS) == ()


def test_the_two_sides_of_a_folded_card_are_measured_by_their_half_of_the_paper():
    made = recipe(read_from=1500, sides=Sides.FOLD)
    assert proofread([item("Tide", "Sea")], made, grid_of(made)) == ()
    assert findings(item(CLUE, "shore"), read_from=1500, sides=Sides.FOLD) != ()


def test_the_sentence_tells_the_farthest_distance_that_holds_for_all():
    # 40 points, small letters of .527 ems: 7.437 mm / .0046542 = 1598 mm
    assert sentence([item("crab", "weed")]) == "Every card can be read from 1.5 m."


def test_the_sentence_counts_the_cards_that_the_distance_holds_for():
    items = [item("crab", "weed"), item("tide", "sea"), item(CLUE, "shore")]
    assert re.fullmatch(
        r"2 of 3 cards can be read from 1\.5 m, all from 0\.\d m\.",
        sentence(items, read_from=1500),
    )
    assert re.fullmatch(
        r"No card can be read from 5 m; all can from 0\.\d m\.",
        sentence(items[2:], read_from=5000),
    )


def test_the_sentence_never_tells_less_than_was_asked_and_met():
    assert sentence([item("crab", "weed")], read_from=1524) == "Every card can be read from 1.52 m."


def test_capitals_and_figures_are_read_by_their_own_height():
    assert letter_of(Styled("TIDE 12")) == letter_height("H")
    assert letter_of(Styled("Tide 12")) == letter_height("x") < letter_height("H")


def test_raised_figures_are_to_be_made_out_but_not_the_letters_of_an_ordinal():
    figure = Styled("12 m2", spans=(Span(4, 5, TextStyle.RAISED),))
    ordinal = Styled("21st day", spans=(Span(2, 4, TextStyle.RAISED),))
    assert letter_of(figure) < letter_height("x")
    assert letter_of(ordinal) == letter_height("x")


def test_a_text_of_twelve_points_with_raised_figures_can_be_read_at_arm_s_length():
    # 16 minutes at 400 mm are 1.862 mm (ISO 9241-303), 5.278 points
    figure = Styled("m2", spans=(Span(1, 2, TextStyle.RAISED),))
    assert 12 * letter_of(figure) >= 5.278


def test_built_fractions_are_judged_by_their_small_figures():
    plain = sentence([item("1/2", "2/4")])
    built = sentence([item("1/2", "2/4")], fractions=Fractions.BUILT)
    metres = [float(re.search(r"([\d.]+) m", told)[1]) for told in (plain, built)]
    assert metres[1] < metres[0]


def test_a_text_far_too_long_is_told_of_without_being_worked_out():
    for text in ("x\n" * 16_000, "tide " * 6_000, "x" * 32_000):
        (found,) = findings(item(text, "shore"))
        assert (found.code, found.found) == ("does-not-fit", text)
        assert "far too long" in found.mend


def test_a_text_of_some_lines_too_many_is_told_how_it_would_fit():
    (found,) = findings(item("ebb\nflow\n" * 10 + "tide", "shore"))
    assert found.mend.startswith("It would fit with fewer line breaks")


def test_of_a_text_of_some_cards_too_much_is_told_how_much_would_fit():
    (found,) = findings(item("tide " * 400, "shore"))
    assert re.match(r"The first \d+ of its 400 words would fit", found.mend)


def test_a_gap_in_a_text_makes_it_no_longer():
    assert findings(item(f"What{' ' * 20_000}digs?", "lugworm")) == ()
