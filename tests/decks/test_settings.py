"""The recipe: the command line goes before the Deck sheet, which goes before the defaults."""

import difflib

import pytest
from msgspec.structs import replace
from support.shore import fairdeal

from cards.content import Cell, Content, SettingRow, TeamRow
from cards.place import Place
from decks.recipe import CardSize, Dealing, GuideFor, Ink, PaperName
from decks.settings import SETTINGS, UsageError, resolve
from decks.team import COLOURS


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
    assert recipe.teams[1].colour == COLOURS["green"]


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
        (("Title", "x" * 32_768), "unknown-value", "B2", "text"),
        (("Typeface", "big"), "unknown-setting", "A2", "Title"),
        (("Paper", "papyrus"), "unknown-value", "B2", "letter, legal, tabloid"),
        (("Teams", "13"), "unknown-value", "B2", "1 to 12"),
        (("Teams", "Heron, heron"), "unknown-value", "B2", "different"),
        (("Extra words", "-1"), "unknown-value", "B2", "0 to 20"),
        (("Language", "Klingish"), "unknown-value", "B2", "Write a language by its name"),
        (("Language", "Frensh"), "unknown-value", "B2", "Did you mean French?"),
        (("Language", "es_MX"), "unknown-value", "B2", "Did you mean es-MX?"),
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


@pytest.mark.parametrize("text", ["3", " 3 ", "three", "Three teams", "3 teams"])
def test_a_number_of_teams_takes_the_first_of_the_sheet(text):
    sheet = content(teams=[(name, None) for name in ("Heron", "Otter", "Samphire", "Curlew")])
    assert names(resolve(sheet, {"teams": text})[0]) == ["Heron", "Otter", "Samphire"]


def test_where_the_sheet_has_too_few_teams_names_are_made_up():
    recipe, _ = resolve(content(teams=[("Blue", None)]), {"teams": "3"})
    assert names(recipe) == ["Blue", "Orange", "Green"]


def test_no_made_up_team_has_the_ink_of_a_team_of_the_sheet():
    sheet = content(teams=[("Heron", "blue"), ("Otter", COLOURS["yellow"]), ("Green", None)])
    recipe, _ = resolve(sheet, {"teams": "12"})
    assert len({team.colour for team in recipe.teams}) == 12
    assert names(recipe)[:4] == ["Heron", "Otter", "Green", "Orange"]


def test_a_team_called_by_a_colour_has_that_colour():
    recipe, _ = resolve(content(), {"teams": "Red, Blue, Heron"})
    red, blue, heron = (team.colour for team in recipe.teams)
    assert (red, blue) == (COLOURS["red"], COLOURS["blue"])
    assert heron not in {red, blue}


@pytest.mark.parametrize("text", ["-1", "−2", "2.5", "1e3", "0", "13", "+40", "1,000"])
def test_a_number_that_is_none_of_teams_is_no_name_either(text):
    _, (finding,) = resolve(content([("Teams", text)]), {})
    assert (finding.code, finding.place.cell) == ("unknown-value", "B2")


@pytest.mark.parametrize("text", ["101,102,103", "1, 2, 3", "7B,7C"])
def test_teams_may_be_called_by_numbers(text):
    recipe, found = resolve(content([("Teams", text)]), {})
    assert names(recipe) == [name.strip() for name in text.split(",")]
    assert found == ()


def test_a_single_name_on_the_deck_sheet_is_noted():
    recipe, (finding,) = resolve(content([("Teams", "Heron")]), {})
    assert names(recipe) == ["Heron"]
    assert (finding.code, finding.severity, finding.place.cell) == ("one-team", "note", "B2")


def test_a_class_smaller_than_the_number_of_its_teams_is_told_of_where_it_is_set():
    _, (finding,) = resolve(content([("Teams", "6"), ("Students", "5")]), {})
    assert (finding.code, finding.place.cell) == ("fewer-students-than-teams", "B3")
    assert "5 for 6" in finding.wrong
    assert resolve(content([("Teams", "6"), ("Students", "6")]), {})[1] == ()
    assert resolve(content([("Teams", "6")]), {"students": "6"})[1] == ()


@pytest.mark.parametrize("activity", ["rounds", "stations", "organizer"])
@pytest.mark.parametrize("guide", ["team", "class"])
def test_a_study_guide_is_told_to_be_none_where_the_activity_has_none(activity, guide):
    recipe, (finding,) = resolve(content([("Activity", activity), ("Guide", guide)]), {})
    assert recipe.guide is GuideFor.NONE
    assert (finding.code, finding.severity, finding.place.cell) == ("no-guide-here", "note", "B3")
    assert activity in finding.wrong
    _, (finding,) = resolve(content([("Activity", activity)]), {"guide": guide})
    assert str(finding.place) == "--guide"
    assert resolve(content([("Activity", activity), ("Guide", "none")]), {})[1] == ()


@pytest.mark.parametrize("activity", ["review", "collect"])
def test_a_study_guide_is_for_whoever_is_named_where_there_is_one(activity):
    recipe, findings = resolve(content([("Activity", activity), ("Guide", "team")]), {})
    assert (recipe.guide, findings) == (GuideFor.TEAM, ())


@pytest.mark.parametrize(
    ("text", "teams", "mend"),
    [
        ("Ann, Bob and Cy", ["Ann", "Bob and Cy"], "Ann, Bob, Cy"),
        ("Ann, Bob, and Cy", ["Ann", "Bob", "and Cy"], "Ann, Bob, Cy"),
        ("Ann, Bob & Cy", ["Ann", "Bob & Cy"], "Ann, Bob, Cy"),
        ("Ana, Bea y Cid", ["Ana", "Bea y Cid"], "Ana, Bea, Cid"),
    ],
)
def test_two_names_that_a_word_joins_are_one_team_and_told_of(text, teams, mend):
    recipe, (finding,) = resolve(content([("Teams", text)]), {})
    assert names(recipe) == teams
    assert (finding.code, finding.severity, finding.place.cell) == ("names-joined", "note", "B2")
    assert f"This makes {len(teams)} teams" in finding.wrong
    assert finding.mend == f"If there are to be 3, write commas only: {mend}."
    recipe, (finding,) = resolve(content(), {"teams": text})
    assert (finding.code, str(finding.place)) == ("names-joined", "--teams")


@pytest.mark.parametrize("text", ["Ann, Andy", "Salt and Sand, Otters", "Ann, Q&A", "3", "Otters"])
def test_names_that_nothing_joins_are_not_told_of(text):
    assert "names-joined" not in {one.code for one in resolve(content([("Teams", text)]), {})[1]}


@pytest.mark.parametrize(("name", "value"), [("Size", "large"), ("cardsize", "large")])
def test_a_setting_is_known_by_its_option_and_without_its_space(name, value):
    recipe, findings = resolve(content([(name, value)]), {})
    assert findings == ()
    assert recipe.card_size is CardSize.LARGE


def test_other_spellings_of_colour_and_grey_are_taken():
    assert resolve(content(), {"ink": "gray"})[0].ink is Ink.GREY
    assert resolve(content(), {"ink": "Color"})[0].ink is Ink.COLOUR


@pytest.mark.parametrize("text", ["9" * 5000, "-1", "1.5", "21", "²"])
def test_a_number_beyond_reason_is_refused_in_one_line(text):
    with pytest.raises(UsageError, match="0 to 20"):
        resolve(content(), {"extra_words": text})


def test_every_setting_is_an_option_of_next_and_those_of_a_first_deck_of_build():
    first = fairdeal("build", "--help", COLUMNS="200").stdout
    after = fairdeal("next", "--help", COLUMNS="200").stdout
    options = {setting.option for setting in SETTINGS}
    assert {option for option in options if f"{option} " in after} == options
    left = {"--aim", "--target", "--seen-before", "--floor"}
    assert {option for option in options if f"{option} " in first} == options - left


def test_a_setting_that_stands_twice_is_told_of_once_where_it_counts():
    rows = [("Paper", "A3"), ("paper", "Letter"), ("Cards", "6"), ("Paper", "A4")]
    recipe, (finding,) = resolve(content(rows), {})
    assert recipe.paper == PaperName.A4
    assert (finding.code, str(finding.place)) == ("setting-twice", "Deck A5")
    assert finding.wrong == "The setting Paper stands in A2 and A3 too; this one counts."


def test_a_setting_that_stands_twice_under_two_names_is_told_of():
    recipe, (finding,) = resolve(content([("Card size", "large"), ("Size", "medium")]), {})
    assert recipe.card_size == CardSize.MEDIUM
    assert (finding.code, str(finding.place)) == ("setting-twice", "Deck A3")
    assert finding.wrong == "The setting Card size stands in A2 too; this one counts."


def test_a_setting_on_two_sheets_is_told_of_with_the_other_sheet():
    first, second = (
        SettingRow(Cell("Paper", Place(sheet, 1, 1)), Cell("A4", Place(sheet, 1, 2)))
        for sheet in ("Deck", "Settings")
    )
    _recipe, (finding,) = resolve(replace(content(), settings=(first, second)), {})
    assert str(finding.place) == "Settings A1"
    assert "stands in Deck A1 too" in finding.wrong


def test_the_near_miss_is_named_for_every_row_that_has_it():
    rows = [(f"row {n}", "x") for n in range(20)] + [("Papr", "A4"), ("Papr", "A5")]
    findings = resolve(content(rows), {})[1]
    assert [one.mend for one in findings[-2:]] == ["Did you mean Paper?"] * 2
    assert all(one.mend.startswith("The settings are ") for one in findings[:-2])


def test_few_near_misses_are_searched_for(monkeypatch):
    searched = []
    monkeypatch.setattr(
        difflib, "get_close_matches", lambda text, *_args, **_kwargs: searched.append(text) or []
    )
    findings = resolve(content([(f"row {n}", "x") for n in range(2_000)]), {})[1]
    assert len(findings) == 2_000
    assert len(searched) <= 100


def test_an_option_that_cannot_be_read_names_itself_and_what_it_can_be():
    with pytest.raises(
        UsageError, match=r"--size huge: this can be small, medium, large or full, or "
    ):
        resolve(content(), {"card_size": "huge"})


def test_an_option_that_is_nearly_a_language_names_it():
    with pytest.raises(UsageError, match=r"--language Hebew: .* Did you mean Hebrew\?$"):
        resolve(content(), {"language": "Hebew"})


def test_the_content_is_in_english_unless_told_otherwise():
    assert resolve(content(), {})[0].language == "en"
    assert resolve(content([("Language", "Welsh")]), {})[0].language == "cy"
    assert resolve(content([("Language", "Welsh")]), {"language": "es-mx"})[0].language == "es-MX"


def test_of_very_many_rows_of_a_setting_a_few_are_named():
    (finding,) = resolve(content([("Paper", "A4")] * 2_000), {})[1]
    assert "stands in A2, A3, A4, A5 and 1995 more cells too" in finding.wrong
