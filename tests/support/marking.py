"""Decks to mark, and marks filled in as a teacher does it."""

import io

from openpyxl import load_workbook

from cards.item import Level
from decks.activities import make_deck
from decks.marks.forms import blanks_of
from decks.marks.reading import read_marks
from decks.marks.sheet import marks_workbook
from decks.recipe import Activity, Dealing, GuideFor, Recipe
from decks.team import make_teams
from support.items import item

TEAMS = make_teams(["Heron", "Otter", "Samphire", "Curlew"], [None] * 4)
HEADED = 5


def items(count=24):
    return [
        item(
            f"Clue {n} of the shore",
            f"word{n}",
            row=n + 2,
            topic=("Tides", "Zones", "Life")[n % 3],
            level=Level(n // 3 % 3 + 1),
        )
        for n in range(count)
    ]


def deck(count=24, *, chosen=None, number=1, **fields):
    recipe = Recipe("Shore", TEAMS, **fields)
    return make_deck(recipe, chosen or items(count), number=number, seed=f"seed {number}")


def for_class(count=24, **fields):
    """A deck whose cards every team has, and whose guide is the class's."""
    return deck(count, deal=Dealing.COPIES, guide=GuideFor.CLASS, **fields)


def in_rounds(count=24, **fields):
    return deck(count, activity=Activity.ROUNDS, guide=GuideFor.NONE, **fields)


def in_sets(count=24):
    return deck(count, activity=Activity.STATIONS)


class Book:
    """The marks workbook of a deck, to be filled in."""

    def __init__(self, deck):
        self.book = load_workbook(io.BytesIO(marks_workbook(deck)))

    @property
    def tally(self):
        return self.book["Tally"]

    @property
    def guides(self):
        return self.book["Study guides"]

    def column(self, sheet, heading):
        heads = [str(cell.value) for cell in sheet[HEADED]]
        return heads.index(heading) + 1

    def row_of(self, sheet, *names):
        """The row that begins with these cells."""
        return next(
            number
            for number in range(HEADED + 1, sheet.max_row + 1)
            if tuple(sheet.cell(number, n + 1).value for n in range(len(names))) == names
        )

    def count(self, label, tries, right):
        row = next(
            number
            for number in range(HEADED + 1, self.tally.max_row + 1)
            if self.tally.cell(number, 1).value == label
        )
        self.tally.cell(row, self.column(self.tally, "Tries")).value = tries
        self.tally.cell(row, self.column(self.tally, "Right")).value = right
        return row

    def paper(self, marks, number, team=None):
        """Write a paper's marks into the columns of blanks, from the left."""
        sheet = self.guides
        row = self.row_of(sheet, *([team] if team else []), number)
        first = self.column(sheet, "Right") + 1
        for n, mark in enumerate(marks):
            sheet.cell(row, first + n).value = mark
        return row

    def saved(self, path):
        self.book.save(path)
        return path


def read(book, deck, tmp_path):
    """Return the marks that are read from a book once it was saved."""
    return read_marks(book.saved(tmp_path / "marks.xlsx"), deck)


def told(marks):
    """Return what was found: code, sheet and cell."""
    return [(found.code, found.place.sheet, found.place.cell) for found in marks.findings]


def keys(deck):
    """The keys of the class guide's blanks, in its own order."""
    return [item.key for item in blanks_of(deck.guides[0]).values()]


def key_of(deck, label, owner=None):
    """The key of a card, found without the code under test."""
    return next(
        card.item.key
        for card in deck.cards
        if card.label == str(label) and owner in {None, deck.owners[card.owner].name}
    )
