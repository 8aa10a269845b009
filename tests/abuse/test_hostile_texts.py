"""Texts that pretend to be markup, code, paths or nothing at all, in every field there is."""

import os
from pathlib import Path

import pytest
from support import hostile_texts as texts
from support.any_workbook import save
from support.shore import ITEMS, fairdeal
from support.watched import CAN_BE_WATCHED, MOST_BYTES, MOST_SECONDS, watched

watchable = pytest.mark.skipif(not CAN_BE_WATCHED, reason="memory is measured in another way here")
ACTIVITIES = ("review", "collect", "rounds", "stations", "organizer")
LONGEST_LINE = 500
OUTSIDE = (
    *("socket.", "subprocess.", "os.system", "os.exec", "os.posix_spawn", "os.fork"),
    *("urllib.", "http.", "ftplib.", "webbrowser."),
)
HEADS = ["Word", "Meaning", "Topic", "Level", "Also right", "Wrong answers", "Team", "Picture"]


def packed(sample, shift: int = 0) -> dict[str, list[list[object]]]:
    """Return a workbook with each text of a sample in each field, a few of them in a row."""

    def at(row: int, field: int) -> str:
        return sample[(row + (shift + 5) * field) % len(sample)]

    words: list[list[object]] = [HEADS]
    details: list[list[object]] = [["Topic", "Heading", "Detail"]]
    for row in range(len(sample)):
        meaning = f"plain meaning {row}"
        words += [
            [at(row, 0), meaning, "Tides", "easy", at(row, 2), at(row, 3), "", ""],
            [f"word{row}", at(row, 4), at(row, 1) if row % 3 == 0 else "Tides", "hard"],
            [f"plain{row}", f"so {meaning}", "Zones", at(row, 5), "", "", "", at(row, 6)],
            [f"team{row}", f"too {meaning}", "Zones", "", "", "", at(row, 7) if row % 9 else ""],
            [f"sound{row}", f"as {at(row, 4)} has it" if row % 2 else f"not {meaning}", "Zones"],
        ]
        details += [["Tides", "Pulls" if row % 3 else at(row, 2), at(row, 1)]]
        details += [[at(row, 3) if row % 4 == 0 else "Tides", "Times", f"detail {row}"]]
    exercises = [["Exercise", "How many", "Gentler option", "Effort"]]
    exercises += [[at(row, 1), at(row, 2), at(row, 3), at(row, 4)] for row in range(20)]
    return {
        "Vocabulary": words,
        "Details": details,
        "Teams": [["Team", "Colour"], ["Heron", "blue"], ["<b>Otter</b>", "orange"]],
        "Exercises": exercises,
        "Deck": [["Setting", "Value"], ["Title", "<b>Shore</b> %s & [[1]]"]],
    }


def plain(*more: list[object]) -> dict[str, list[list[object]]]:
    return {"Facts": [["Prompt", "Answer", "Topic", "Level"], *map(list, ITEMS[:8]), *more]}


def assert_well_told(run) -> None:
    assert run.status in {0, 1, 3}, run.warned
    assert run.seconds < MOST_SECONDS
    assert run.peak < MOST_BYTES
    lines = run.lines
    assert lines
    assert [line for line in lines if len(line) > LONGEST_LINE] == []
    assert not [sign for line in lines for sign in line if sign < " " or "\x7f" <= sign < "\xa0"]


@watchable
def test_texts_that_lie_neither_reach_out_nor_stop_a_deck(tmp_path):
    home = tmp_path / "home"
    home.mkdir()
    builds = []
    for start, name in enumerate(ACTIVITIES):
        file = save(tmp_path / f"{name}.xlsx", packed(texts.SHORT[start::5]))
        builds.append(["build", file, "--skip-errors", "--activity", name])
    deck = tmp_path / "review decks" / "01"
    after = [
        ["marks", deck],
        ["reprint", deck, "--cards", "1-4"],
        ["next", tmp_path / "review.xlsx", "--skip-errors"],
        ["check", save(tmp_path / "all.xlsx", packed(texts.SHORT)), "--mark"],
    ]
    runs = watched([*builds, *after], home)
    # checking ends in 1 where there are errors; all else was made
    assert [run.status for run in runs] == [*[0] * (len(runs) - 1), 1]
    for run in runs:
        assert_well_told(run)
        assert not [event for event, _ in run.events if event.startswith(OUTSIDE)]
        touched = {path for path, _ in run.opened} | set(run.changed)
        assert [path for path in touched if not Path(path).is_relative_to(tmp_path)] == []
    assert list(home.iterdir()) == []


@watchable
def test_very_long_texts_are_told_of_soon_and_in_short(tmp_path):
    calls = []
    for number, text in enumerate(texts.LONG):
        file = save(tmp_path / f"{number}.xlsx", packed([text, "plain"]))
        calls.append(["check", file])
    for run in watched(calls, tmp_path):
        assert_well_told(run)


@pytest.mark.parametrize("half", texts.LONE_SURROGATES)
def test_half_characters_are_read_as_what_can_be_seen_or_told_of(tmp_path, half):
    save(tmp_path / "book.xlsx", plain(["Clue", half, "Tides", "easy"]))
    row = f"Clue,{half}\nWhat ebbs?,tide\n".encode(errors="surrogatepass")
    (tmp_path / "text.csv").write_bytes(b"Prompt,Answer\n" + row)
    for name in ("book.xlsx", "text.csv"):
        done = fairdeal("build", tmp_path / name, "--skip-errors")
        assert done.returncode in {0, 1, 3}
        assert done.stdout or done.stderr


def test_letters_of_every_block_are_printed_or_told_of(tmp_path):
    file = save(tmp_path / "Shore.xlsx", packed(texts.every_block()[::9]))
    done = fairdeal("build", file, "--skip-errors")
    assert done.returncode == 0, done.stderr


NAMES = (
    b"odd \xff\xfe bytes.xlsx",
    "\U0001f469\u200d\U0001f467 'quoted' \"twice\".xlsx".encode(),
    b"new\nline.xlsx",
    b"l" * 200 + b".xlsx",
    b"%s {} {0} $HOME `id`.xlsx",
    b"--out.xlsx",
    b"CON.xlsx",
    b"red \x1b[31m letters.xlsx",
    "\u202excod.xlsx".encode(),
    b"..xlsx.xlsx",
)


@pytest.mark.skipif(os.name != "posix", reason="such names cannot be given here")
@pytest.mark.parametrize("name", NAMES, ids=ascii)
def test_a_file_of_an_odd_name_makes_a_deck_that_can_be_gone_on_with(tmp_path, name):
    file = Path(os.fsdecode(bytes(tmp_path) + b"/" + name))
    save(tmp_path / "w.xlsx", plain()).rename(file)
    first = fairdeal("build", file, "--title", "Shore")
    deck = file.with_name(f"{file.stem} decks") / "01"
    assert first.returncode == 0, first.stderr
    assert fairdeal("reprint", deck, "--cards", "1").returncode == 0
    assert "\x1b" not in first.stdout
    assert {one.name for one in tmp_path.iterdir()} == {file.name, deck.parent.name}


MANY = [[f"Clue {n}", f"word {n}", f"Topic {n}", "easy"] for n in range(90)]
LONG_TEAMS = [
    ["Team"],
    *[[f"The very long name of a team that nobody says {n}"] for n in range(12)],
]


@pytest.mark.parametrize(
    ("sheets", "options", "status", "says"),
    [
        (plain() | {"Deck": [["Setting", "Value"], ["Title", "x" * 5000]]}, [], 0, "x · deck 1"),
        (plain() | {"Teams": LONG_TEAMS}, [], 0, "12 teams"),
        (plain(*MANY), [], 0, "98 cards"),
        ({"Facts": [["Prompt", "Answer"], ["What ebbs?", "the tide"]]}, [], 0, "1 card"),
        ({"Facts": [["Prompt", "Answer"]]}, [], 3, "nothing that makes a card"),
        ({"Facts": [["Prompt", "Answer"], ["", ""], [" ", "\u200b"]]}, [], 3, "nothing"),
    ],
    ids=["long title", "long teams", "many topics", "one card", "none", "unseen"],
)
def test_what_is_too_much_or_too_little_is_made_or_told_of(tmp_path, sheets, options, status, says):
    done = fairdeal("build", save(tmp_path / "Shore.xlsx", sheets), *options)
    assert done.returncode == status, done.stdout + done.stderr
    assert says in done.stdout + done.stderr
