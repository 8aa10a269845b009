"""Decks for the tests in this folder, each built once, through the command line's own entry."""

import os
import signal
from pathlib import Path

import openpyxl
import pytest
from hypothesis import settings
from support.shore import ITEMS, fairdeal

# where the tests are run in the background these are ignored, and so would every run they start
signal.signal(signal.SIGINT, signal.default_int_handler)
if hangup := getattr(signal, "SIGHUP", None):
    signal.signal(hangup, signal.SIG_DFL)

if os.environ.get("CI"):
    # the same examples every time, and fewer where a test does not say how many it needs
    settings.register_profile("brief", derandomize=True, max_examples=40)
    settings.load_profile("brief")


@pytest.fixture(scope="session")
def workbook(tmp_path_factory) -> Path:
    book = openpyxl.Workbook()
    sheet = book.active
    sheet.title = "Facts"
    sheet.append(["Prompt", "Answer", "Topic", "Level"])
    for row in ITEMS:
        sheet.append(row)
    teams = book.create_sheet("Teams")
    teams.append(["Team", "Colour"])
    for name, colour in (("Heron", "blue"), ("Otter", "orange"), ("Samphire", "green")):
        teams.append([name, colour])
    path = tmp_path_factory.mktemp("workbook") / "Shore.xlsx"
    book.save(path)
    return path


@pytest.fixture(scope="session")
def build(workbook, tmp_path_factory):
    """Return a function that builds the workbook with options, once for each set of them."""
    built: dict[tuple[str, ...], Path] = {}

    def once(*options: str) -> Path:
        if options not in built:
            out = tmp_path_factory.mktemp("built")
            done = fairdeal("build", workbook, "--out", out, *options)
            assert done.returncode == 0, done.stderr
            built[options] = out / "Shore decks" / "01"
        return built[options]

    return once
