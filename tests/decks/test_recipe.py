"""The recipe: the command line goes before the Deck sheet, which goes before the defaults."""

import pytest

from cards.content import Cell, Content, SettingRow, TeamRow
from cards.place import Place
from decks.recipe import CardSize, Dealing, GuideFor, PaperName, UsageError, resolve


def content(settings=(), teams=()):
    return Content(
        name="Shore",
        items=(),
        teams=tuple(
            TeamRow(
                Cell(name, Place("Teams", row, 1)),
                Cell(colour, Place("Teams", row, 2)) if colour else None,
            )
            for row, (name, colour) in enumerate(teams, start=2)
        ),
        settings=tuple(
            SettingRow(Cell(name, Place("Deck", row, 1)), Cell(value, Place("Deck", row, 2)))
            for row, (name, value) in enumerate(settings, start=2)
        ),
        findings=(),
        digest="0",
    )


def names(recipe):
    return [team.name for team in recipe.teams]


def test_without_any_choice_there_are_four_teams_and_small_letter_cards():
    recipe, findings = resolve(content(), {})
    assert findings == ()
    assert recipe.title == "Shore"
    assert names(recipe) == ["Blue", "Orange", "Green", "Yellow"]
    assert (recipe.paper, recipe.card_size) == (PaperName.LETTER, CardSize.SMALL)
    assert (recipe.deal, recipe.guide) == (Dealing.SHARES, GuideFor.TEAM)


def test_the_deck_sheet_goes_before_the_defaults_and_the_command_line_before_both():
    sheet = content([("Paper", "A4"), ("card size:", " Large "), ("Title", "Tides")])
    recipe, findings = resolve(sheet, {"card_size": "medium"})
    assert findings == ()
    assert (recipe.paper, recipe.card_size) == (PaperName.A4, CardSize.MEDIUM)
    assert recipe.title == "Tides"


def test_teams_keep_the_names_and_colours_of_their_sheet():
    recipe, findings = resolve(content(teams=[("Heron", "#102030"), ("Otter", None)]), {})
    assert findings == ()
    assert names(recipe) == ["Heron", "Otter"]
    assert recipe.teams[0].colour == "#102030"
    assert recipe.teams[0].texture != recipe.teams[1].texture


def test_a_number_of_teams_on_the_command_line_goes_before_the_sheet():
    recipe, _ = resolve(content(teams=[("Heron", None)]), {"teams": "3"})
    assert len(recipe.teams) == 3


def test_team_names_on_the_command_line_take_their_colours_from_the_sheet():
    recipe, _ = resolve(content(teams=[("Heron", "green")]), {"teams": "otter, HERON"})
    assert names(recipe) == ["otter", "HERON"]
    assert recipe.teams[1].colour == "#009E73"  # the bluish green of Okabe & Ito (2008)


def test_every_team_has_a_colour_and_a_texture_of_its_own():
    recipe, _ = resolve(content(), {"teams": "12"})
    assert len({team.colour for team in recipe.teams}) == 12
    assert len({team.texture for team in recipe.teams}) == 12


def test_copies_have_one_study_guide_for_the_class_unless_told_otherwise():
    assert resolve(content(), {"deal": "copies"})[0].guide is GuideFor.CLASS
    assert resolve(content(), {"deal": "copies", "guide": "team"})[0].guide is GuideFor.TEAM


@pytest.mark.parametrize(
    ("row", "code", "cell", "suggests"),
    [
        (("Papr", "a4"), "unknown-setting", "A2", "Paper"),
        (("Fonts", "big"), "unknown-setting", "A2", "Title"),
        (("Paper", "papyrus"), "unknown-value", "B2", "letter or a4"),
        (("Teams", "13"), "unknown-value", "B2", "1 to 12"),
        (("Teams", "Heron, heron"), "unknown-value", "B2", "different"),
        (("Extra words", "-1"), "unknown-value", "B2", "0 to 20"),
    ],
)
def test_a_setting_that_cannot_be_read_is_one_finding_at_its_cell(row, code, cell, suggests):
    _, (finding,) = resolve(content([row]), {})
    assert (finding.code, finding.place.cell) == (code, cell)
    assert suggests in finding.mend


@pytest.mark.parametrize(
    ("teams", "code", "cell", "suggests"),
    [
        ([("Heron", "bleu")], "unknown-colour", "B2", "blue"),
        ([("Heron", None), ("heron", None)], "same-team", "A3", "another name"),
        ([(f"Team {n}", None) for n in range(13)], "too-many-teams", "A14", "together"),
    ],
)
def test_a_fault_on_the_teams_sheet_is_one_finding_at_its_cell(teams, code, cell, suggests):
    _, (finding,) = resolve(content(teams=teams), {})
    assert (finding.code, finding.place.cell) == (code, cell)
    assert suggests in finding.mend


def test_an_option_that_cannot_be_read_names_itself_and_what_it_can_be():
    with pytest.raises(UsageError, match=r"--size huge: this can be small, medium or large\."):
        resolve(content(), {"card_size": "huge"})
