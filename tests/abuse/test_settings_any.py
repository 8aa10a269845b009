"""Every setting, with what it says it can be and with what nobody would write."""

import unicodedata

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from support.any_workbook import HOSTILE, RANDOM, said
from support.hostile_texts import LONE_SURROGATES, LONG, SHORT
from support.shore import fairdeal

from cards.content import Cell, Content, SettingRow
from cards.place import Place
from decks.commands.options import ONLY_NEXT
from decks.recipe import Recipe
from decks.settings import SETTINGS, Setting, UsageError, resolve

LONGEST_MESSAGE = 500
OF_THE_DECK = [setting for setting in SETTINGS if setting.key not in ONLY_NEXT]
TAKES_ANY_TEXT = {"title", "teams", "printer", "seed"}
BY_SETTING = pytest.mark.parametrize("setting", SETTINGS, ids=lambda setting: setting.key)


def content(*rows: tuple[str, str]) -> Content:
    """Return content whose Deck sheet has these rows."""
    return Content(
        name="Shore",
        items=(),
        teams=(),
        settings=tuple(
            SettingRow(Cell(name, Place("Deck", n, 1)), Cell(value, Place("Deck", n, 2)))
            for n, (name, value) in enumerate(rows, start=2)
        ),
        findings=(),
    )


def refusal(setting: Setting, text: str) -> str | None:
    """Return the line with which a text is refused as an option, or None where it is taken."""
    try:
        resolve(content(), {setting.key: text})
    except UsageError as error:
        line = str(error)
        assert len(line) < LONGEST_MESSAGE
        assert not [letter for letter in line if unicodedata.category(letter) in {"Cc", "Cs"}]
        return line
    return None


@BY_SETTING
@given(data=st.data())
@settings(deadline=None, max_examples=15)
def test_what_a_setting_says_it_can_be_is_taken(setting, data):
    value = data.draw(said(setting))
    if setting.key in TAKES_ANY_TEXT:
        return
    from_sheet, findings = resolve(content((setting.name, value)), {})
    from_option, _ = resolve(content(), {setting.key: value})
    assert {finding.code for finding in findings} <= {"one-team", "fewer-students-than-teams"}
    assert from_sheet == from_option


@BY_SETTING
@pytest.mark.parametrize("texts", [SHORT, LONG, LONE_SURROGATES], ids=["short", "long", "lone"])
def test_any_other_text_is_told_of_at_its_cell_or_option(setting, texts):
    for text in texts:
        recipe, findings = resolve(content((setting.name, text)), {})
        assert isinstance(recipe, Recipe)
        for finding in findings:
            assert finding.place == Place("Deck", 2, 2)
            assert len(str(finding)) < LONGEST_MESSAGE
        refused = refusal(setting, text)
        if refused is None:
            assert setting.key in TAKES_ANY_TEXT or not findings
        else:
            assert refused.startswith(setting.option)
            assert findings


@given(name=HOSTILE | RANDOM, value=HOSTILE | RANDOM)
@settings(deadline=None, max_examples=40)
def test_a_setting_of_any_name_is_known_or_told_of(name, value):
    _, findings = resolve(content((name, value)), {})
    assert all(finding.place.sheet == "Deck" for finding in findings)


@pytest.mark.parametrize("setting", OF_THE_DECK, ids=lambda setting: setting.key)
def test_an_option_of_odd_bytes_ends_in_one_clear_line(workbook, tmp_path, setting):
    done = fairdeal("build", workbook, "--out", tmp_path, f"{setting.option}=\udcff\udcfe<b>")
    assert done.returncode in {1, 2}
    assert "Traceback" not in done.stderr
    assert done.stderr.startswith("fairdeal: ")
    assert not list(tmp_path.iterdir())
