"""The score sheet, which adds up by itself."""

import math
from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from cards.place import column_letters
from cards.workbook.tones import HAIRLINE, INK, PANEL, QUIET, letters_on
from decks.deck import Deck
from decks.lesson import Called
from decks.marks.forms import SCORE_SHEET, question_of
from decks.marks.sheet.styles import AS_TYPED, COUNT, DIRECTIONS, LABEL, Style
from decks.marks.sheet.writing import Area, Book, Sheet, name_of, span
from decks.recipe import Points
from decks.team import Team

_HEADS = ("Round", "Card", "Question")
_WIDTHS = (16, 8, 52)
_LETTERS_A_LINE, _LINE_HEIGHT, _AIR = 46, 16, 6
_FIRST_TEAM = len(_HEADS) + 1
_TITLE, _DIRECTIONS, _NAMES, _TOTAL, _PLACE, _FIRST = range(1, 7)
"""Rows of the sheet; the sums stand at the top, where they stay in sight.

A lone team has no place among others: its questions begin in that row.
"""

_TITLE_STYLE = replace(DIRECTIONS, size=20, bold=True, ink=INK)
_HEAD = Style(bold=True, ground=PANEL, below=HAIRLINE, wrapped=False)
_QUIET = replace(LABEL, ink=QUIET)
_POINTS = replace(LABEL, across="center", indent=0, number_format=COUNT)
_RESULT = replace(_POINTS, bold=True, ground=PANEL, number_format=AS_TYPED)


class Rows(Struct, frozen=True):
    """The rows of a round: its questions from `first` to `last`, and its sum below them."""

    name: str
    first: int
    last: int

    @property
    def sum(self) -> int:
        """The row with the round's sum."""
        return self.last + 1


def add_score_sheet(book: Book, deck: Deck, called: Called) -> None:
    """Add a sheet to type each team's points into, question by question.

    No student has a place in it.
    """
    sheet = book.add_sheet(SCORE_SHEET)
    rounds = _rounds(deck, called)
    _write_heads(sheet, deck)
    _write_directions(sheet, deck)
    for each, calls in zip(rounds, called.rounds, strict=True):
        _write_questions(sheet, each, [(call.label, question_of(call.item)) for call in calls])
    last = _FIRST_TEAM + len(deck.recipe.teams) - 1
    for column in range(_FIRST_TEAM, last + 1):
        _write_team(sheet, column, rounds, last)
    _offer(sheet, [(each.first, _FIRST_TEAM, each.last, last) for each in rounds], deck)
    sheet.keep_in_sight(row=_first_row(deck) - 1, column=_FIRST_TEAM - 1, heads=_NAMES)
    sheet.print_wide()
    sheet.select((rounds[0].first, _FIRST_TEAM))


def most_points(points: Points) -> int:
    """Return the most that a team earns with one question."""
    return points.right + points.first + points.together


def _first_row(deck: Deck) -> int:
    return _PLACE if deck.is_one_team else _FIRST


def _rounds(deck: Deck, called: Called) -> list[Rows]:
    rounds = []
    row = _first_row(deck)
    for owner, calls in zip(deck.owners, called.rounds, strict=True):
        rounds.append(Rows(owner.name, row, row + len(calls) - 1))
        row += len(calls) + 1
    return rounds


def _write_heads(sheet: Sheet, deck: Deck) -> None:
    sheet.write_text((_TITLE, 1), f"Score: {deck.name}", _TITLE_STYLE)
    summed = {_TOTAL: "Total", _PLACE: "Place"}
    for column, (head, width) in enumerate(zip(_HEADS, _WIDTHS, strict=True), start=1):
        sheet.set_width(column, width)
        sheet.write_text((_NAMES, column), head, _HEAD)
        for row in range(_TOTAL, _first_row(deck)):
            sheet.write_text((row, column), summed[row] if column == 1 else "", _HEAD)
    for column, team in enumerate(deck.recipe.teams, start=_FIRST_TEAM):
        _write_name(sheet, column, team)
    for row, height in ((_TITLE, 36), (_DIRECTIONS, 26), (_NAMES, 26), (_TOTAL, 26), (_PLACE, 22)):
        sheet.set_height(row, height)


def _write_directions(sheet: Sheet, deck: Deck) -> None:
    whose = "each team’s"
    follow = "Sums and places follow by themselves; teams with equal points share a place."
    if deck.is_one_team:
        whose, follow = "the team’s", "Sums follow by themselves."
    directions = (
        f"Type {whose} points, 0 to {most_points(deck.points)}, into the white cells. {follow} "
        "What is known is read from the sheet Tally."
    )
    sheet.write_text((_DIRECTIONS, 1), directions, DIRECTIONS)


def _write_name(sheet: Sheet, column: int, team: Team) -> None:
    tone = f"FF{team.colour.removeprefix('#')}"
    sheet.set_width(column, max(11, len(team.name) + 4))
    centred = Style(bold=True, ink=letters_on(tone), ground=tone, across="center", indent=0)
    sheet.write_text((_NAMES, column), team.name, centred)


def _write_questions(sheet: Sheet, rows: Rows, calls: Sequence[tuple[str, str]]) -> None:
    for row, (label, prompt) in enumerate(calls, start=rows.first):
        sheet.set_height(row, _height(prompt))
        for column, text in enumerate((rows.name, label, prompt), start=1):
            sheet.write_text((row, column), text, LABEL if column == len(_HEADS) else _QUIET)
    sheet.set_height(rows.sum, _LINE_HEIGHT + _AIR)
    for column, text in enumerate((f"{rows.name}: sum", "", ""), start=1):
        sheet.write_text((rows.sum, column), text, _HEAD)


def _height(text: str) -> int:
    """Return the height of a row in points: spreadsheet programs do not all find it themselves."""
    lines = sum(max(1, math.ceil(len(line) / _LETTERS_A_LINE)) for line in text.split("\n"))
    return lines * _LINE_HEIGHT + _AIR


def _write_team(sheet: Sheet, column: int, rounds: Sequence[Rows], last: int) -> None:
    """Write a team's blank cells and its formulas; the last team stands in the column `last`."""
    for each in rounds:
        for row in range(each.first, each.last + 1):
            sheet.leave_blank((row, column), _POINTS)
        points = span((each.first, column, each.last, column))
        sheet.write_formula((each.sum, column), f"=SUM({points})", _RESULT, while_blank=0)
    sums = ",".join(name_of(each.sum, column) for each in rounds)
    large = replace(_RESULT, size=16)
    sheet.write_formula((_TOTAL, column), f"=SUM({sums})", large, while_blank=0)
    if last == _FIRST_TEAM:
        return
    totals = f"${column_letters(_FIRST_TEAM)}${_TOTAL}:${column_letters(last)}${_TOTAL}"
    place = f'=IF(SUM({totals})=0,"",RANK({name_of(_TOTAL, column)},{totals}))'
    sheet.write_formula((_PLACE, column), place, _RESULT, while_blank="")


def _offer(sheet: Sheet, areas: Sequence[Area], deck: Deck) -> None:
    """Offer the points in a list; a word would be left out of the sums, so none is taken."""
    most = most_points(deck.points)
    offered = {
        "validate": "list",
        "source": [str(points) for points in range(most + 1)],
        "error_title": "Points",
        "error_message": f"A team earns 0 to {most} with one question.",
    }
    sheet.take_only(areas, offered)
