"""Teams: their colours, their names, and what a paper shelf calls them."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from decks.colour import apart
from decks.team import (
    COLOURS,
    MOST_TEAMS,
    TEXTURES,
    Team,
    colour_named,
    make_teams,
    stock_name,
)

GIVEN = st.none() | st.sampled_from([*COLOURS.values(), "#FFFFFF", "#0000FF", "#12AB9E"])


def words(teams):
    return [team.name for team in teams]


def default(count, **more):
    return make_teams([None] * count, [None] * count, **more)


def test_four_teams_without_names_are_called_by_four_plain_colours():
    assert words(default(4)) == ["Blue", "Orange", "Green", "Yellow"]


@pytest.mark.parametrize("count", range(1, MOST_TEAMS + 1))
def test_default_teams_differ_in_name_colour_and_texture(count):
    teams = default(count)
    for differ in ("name", "colour", "texture"):
        assert len({getattr(team, differ) for team in teams}) == count


@pytest.mark.parametrize("count", range(6, MOST_TEAMS))
def test_one_team_more_changes_no_colour_of_the_others(count):
    # of five teams and fewer, greys have a say as well
    assert default(count + 1)[:count] == default(count)


@given(st.lists(GIVEN, min_size=1, max_size=MOST_TEAMS))
def test_given_colours_are_kept_and_the_others_are_chosen_round_them(colours):
    teams = make_teams([f"Team {n}" for n in range(len(colours))], colours)
    for team, colour in zip(teams, colours, strict=True):
        assert team.colour == (colour or team.colour)
    chosen = [team.colour for team, colour in zip(teams, colours, strict=True) if not colour]
    assert len(set(chosen)) == len(chosen)
    assert not set(chosen) & set(colours)


def test_a_chosen_colour_keeps_away_from_one_that_was_given():
    # a blue of the teacher's own: the first colour word, blue, would be too near
    own, other = make_teams(["Heron", "Otter"], ["#0A4C99", None])
    assert other.colour != COLOURS["blue"]
    assert apart(own.colour, other.colour) >= 1


def test_no_unnamed_team_takes_the_name_of_another():
    teams = make_teams(["Orange", None, None], [COLOURS["purple"], None, None])
    assert len({team.name.casefold() for team in teams}) == 3


def test_more_teams_than_can_be_told_are_cut_off():
    assert len(default(20)) == MOST_TEAMS == len(TEXTURES)


@pytest.mark.parametrize(
    ("text", "ink"),
    [
        (" Light  Blue", COLOURS["sky"]),
        ("GRAY", COLOURS["grey"]),
        ("white", "#FFFFFF"),
        ("#0a0b0c", "#0A0B0C"),
        ("#0a0b0", None),
        ("Heron", None),
    ],
)
def test_colours_are_known_by_word_and_code(text, ink):
    assert colour_named(text) == ink


@pytest.mark.parametrize(
    ("colour", "paper"),
    [
        (COLOURS["blue"], "blue"),
        (COLOURS["sky"], "light blue"),
        (COLOURS["lime"], "light green"),
        (COLOURS["teal"], "turquoise"),
        ("#FFFFFF", "white"),
        # keywords of CSS Color 4: navy, red, gold, hotpink, maroon
        ("#000080", "blue"),
        ("#FF0000", "red"),
        ("#FFD700", "yellow"),
        ("#FF69B4", "pink"),
        ("#800000", "red"),
        # the pastels that copier paper comes in: common practice
        ("#FFFFB3", "yellow"),
        ("#FFD1DC", "pink"),
        ("#BFE3B4", "light green"),
        ("#BFDCEE", "light blue"),
    ],
)
def test_stock_has_the_word_of_a_paper_shelf(colour, paper):
    assert stock_name(Team("Heron", colour, "dots")) == paper


def test_each_colour_word_has_stock_of_its_own():
    names = [stock_name(Team("x", ink, "dots")) for ink in COLOURS.values()]
    assert len(set(names)) == len(COLOURS)


def test_twelve_teams_on_stock_have_papers_of_their_own_that_can_be_read():
    papers = [stock_name(team) for team in default(MOST_TEAMS, on_stock=True)]
    assert len(set(papers)) == MOST_TEAMS
    assert "black" not in papers
