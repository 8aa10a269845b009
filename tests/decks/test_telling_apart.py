"""What is found about the colours of teams."""

from itertools import combinations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from cards.content import Cell, TeamRow
from cards.place import Place
from decks.colour import apart
from decks.roster import roster_of
from decks.team import COLOURS, MOST_TEAMS, STOCK, WORDS
from decks.telling_apart import about_inks, about_stock

NAMES = ("Heron", "Otter", "Samphire", "Curlew", "Limpet", "Dunlin")


def rows(*colours, names=NAMES):
    return [
        TeamRow(
            Cell(name, Place("Teams", row, 1)),
            Cell(colour, Place("Teams", row, 2)) if colour else None,
        )
        for row, (name, colour) in enumerate(zip(names, colours, strict=False), start=2)
    ]


def inks(*colours, **more):
    return list(about_inks(roster_of(None, rows(*colours), **more)))


def stock(*colours):
    return list(about_stock(roster_of(None, rows(*colours), on_stock=True)))


@pytest.mark.parametrize(
    "colours",
    [
        ("blue", "orange", "green", "yellow"),
        ("red", "blue", "yellow", "green"),  # red and green are one grey: textures tell them
        ("red", "green", "brown", "black"),
        ("pink", "purple", "sky", "teal", "grey", "lime"),
        ("#E69F00", "#56B4E9", "#009E73", "#0072B2"),  # of Okabe & Ito (2008)
        ("#0077BB", "#EE7733"),  # of Tol (2021), vibrant
        (None, None, None),
    ],
)
def test_colours_that_everybody_tells_apart_are_passed_in_silence(colours):
    assert inks(*colours) == []


@pytest.mark.parametrize("count", range(1, MOST_TEAMS + 1))
def test_default_teams_are_passed_in_silence_in_ink_and_on_stock(count):
    assert list(about_inks(roster_of(count, []))) == []
    assert list(about_stock(roster_of(count, [], on_stock=True))) == []


def test_the_same_colour_twice_is_found_at_the_later_cell():
    (finding,) = inks("blue", "green", "blue")
    assert (finding.code, finding.severity) == ("close-colours", "warning")
    assert (finding.place, finding.found) == (Place("Teams", 4, 2), "blue")
    assert finding.wrong == "The colour of Samphire is the same as that of Heron."
    assert "orange" in finding.mend


def test_two_inks_that_are_nearly_one_are_found():
    (finding,) = inks("#03448C", "#05488F")
    assert "the same as that of Heron" in finding.wrong


def test_two_shades_of_one_colour_are_too_close():
    (finding,) = inks("#C92944", "#E0564F")
    assert finding.wrong == "The colour of Otter is too close to that of Heron."


def test_olive_and_brick_are_too_close_to_colour_blind_eyes():
    (finding,) = inks("#7A6A00", "#A05040")
    assert finding.wrong.endswith("too close to that of Heron to colour-blind eyes.")


def test_the_colour_that_is_suggested_mends_it():
    (finding,) = inks("blue", "green", "orange", "#1A7F52")
    (better,) = [word for word in COLOURS if f"; {word} would" in finding.mend]
    assert inks("blue", "green", "orange", better) == []


def test_a_colour_that_was_chosen_for_a_team_is_no_fault_of_the_teacher():
    assert inks("#0A4C99", None, None, "#F06A20") == []


@pytest.mark.parametrize("colour", ["white", "#FFFFFF", "#FFF8DC", "#FFFF00", "#DDEEFF"])
def test_a_colour_that_white_paper_swallows_is_found(colour):
    (finding,) = inks("blue", colour)
    assert (finding.code, finding.severity) == ("pale-colour", "warning")
    assert (finding.place, finding.found) == (Place("Teams", 3, 2), colour)


def test_for_a_pale_yellow_yellow_is_suggested_and_for_a_pale_blue_sky():
    assert "such as yellow" in inks("#FFFF66")[0].mend
    assert "such as sky" in inks("#CFE8FA")[0].mend


def test_teams_that_are_called_by_colours_are_found_where_they_are_named():
    told = roster_of(["Lime", "Orange", "White"], [])
    lime, white = about_inks(told)
    assert (lime.code, lime.place, lime.found) == ("close-colours", Place("--teams"), "Orange")
    assert (white.code, white.place, white.found) == ("pale-colour", Place("--teams"), "White")


def test_a_team_called_by_a_colour_on_the_sheet_is_found_at_its_name():
    (finding,) = about_inks(roster_of(None, rows("orange", None, names=("Heron", "Lime"))))
    assert finding.place == Place("Teams", 3, 1)


def test_names_chosen_on_the_deck_sheet_are_found_there():
    place = Place("Deck", 2, 2)
    (finding,) = about_inks(roster_of(["Orange", "Lime"], [], named_in=place))
    assert finding.place == place


def test_two_teams_on_one_paper_are_an_error():
    (finding,) = stock("#0000FF", "green", "#000080")
    assert (finding.code, finding.severity) == ("same-stock", "error")
    assert (finding.place, finding.found) == (Place("Teams", 4, 2), "#000080")
    assert finding.wrong == "Samphire and Heron would both be printed on blue paper."


def test_black_paper_is_an_error():
    (finding,) = stock("black", "yellow")
    assert (finding.code, finding.severity) == ("dark-stock", "error")
    assert finding.place == Place("Teams", 2, 2)


def test_white_and_pale_paper_are_good_stock():
    assert stock("white", "#FFFFB3", "#FFD1DC", "#BFDCEE") == []


GIVEN = st.none() | st.sampled_from(sorted(WORDS)) | st.from_regex(r"#[0-9a-f]{6}", fullmatch=True)


@given(st.lists(GIVEN, min_size=1, max_size=MOST_TEAMS))
def test_whatever_is_given_a_finding_names_a_colour_that_is_free(colours):
    names = [f"Team {n}" for n in range(len(colours))]
    in_ink, on_stock = (
        roster_of(None, rows(*colours, names=names), on_stock=stock) for stock in (False, True)
    )
    for finding in (*about_inks(in_ink), *about_stock(on_stock)):
        assert finding.found in colours
        assert any(word in finding.mend for word in {*COLOURS, *STOCK})


@given(st.lists(GIVEN, min_size=2, max_size=6))
def test_two_teams_of_one_ink_are_always_found_and_teams_far_apart_never(colours):
    told = roster_of(None, rows(*colours))
    inks = [team.colour for team, cell in zip(told.teams, told.given, strict=True) if cell]
    codes = {finding.code for finding in about_inks(told)}
    if len(set(inks)) < len(inks):
        assert codes & {"close-colours", "pale-colour"}
    if all(apart(one, other) >= 1 for one, other in combinations(inks, 2)):
        assert "close-colours" not in codes
