"""The score sheet as a workbook that adds up by itself."""

import math
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Any

from openpyxl import Workbook
from openpyxl.utils import get_column_letter
from openpyxl.worksheet.datavalidation import DataValidation
from openpyxl.worksheet.worksheet import Worksheet

from cards.workbook import look
from cards.workbook.package import packed
from cards.workbook.results import putting
from decks.deck import Deck
from decks.lesson import Called
from decks.recipe import Points
from decks.team import Team

NAME = "Score"
_HEADS = ("Round", "Card", "Question")
_WIDTHS = (16, 8, 52)
_LETTERS_A_LINE, _LINE_HEIGHT, _AIR = 46, 16, 6
_FIRST_TEAM = len(_HEADS) + 1
_TITLE, _DIRECTIONS, _NAMES, _TOTAL, _PLACE, _FIRST = range(1, 7)
"""Rows of the sheet; the sums stand at the top, where they stay in sight."""

NUMBER, GENERAL = "0", "General"


@dataclass(frozen=True, slots=True)
class Rows:
    """The rows of a round: its questions from `first` to `last`, and its sum below them."""

    name: str
    first: int
    last: int

    @property
    def sum(self) -> int:
        """The row with the round's sum."""
        return self.last + 1


def score_workbook(deck: Deck, called: Called) -> bytes:
    """Return an .xlsx file with a sheet to type each team's points into, question by question.

    Sums and places are formulas, and come to nothing as long as nothing is typed. The same call
    returns the same bytes. No student has a place in it.
    """
    book = Workbook()
    book.remove(book.worksheets[0])
    results = add_score_sheet(book, deck, called)
    book.properties.creator = "Fairdeal"
    return packed(book, putting({NAME: results}, [NAME]))


def add_score_sheet(book: Workbook, deck: Deck, called: Called) -> dict[str, tuple[str, str]]:
    """Add the sheet to a book; return what its formulas come to while all is blank, by cell."""
    sheet: Worksheet = book.create_sheet(NAME)
    rounds = _rounds(deck, called)
    _write_heads(sheet, deck)
    for each, calls in zip(rounds, called.rounds, strict=True):
        _write_questions(sheet, each, [(call.label, call.item.prompt) for call in calls])
    results: dict[str, tuple[str, str]] = {}
    for team in range(len(deck.recipe.teams)):
        results |= _write_team(sheet, _FIRST_TEAM + team, rounds, len(deck.recipe.teams))
    _offer(sheet, rounds, deck.recipe.points, len(deck.recipe.teams))
    _finish(sheet, rounds)
    return results


def most_points(points: Points) -> int:
    """Return the most that a team earns with one question."""
    return points.right + points.first + points.together


def _rounds(deck: Deck, called: Called) -> list[Rows]:
    rounds = []
    row = _FIRST
    for owner, calls in zip(deck.owners, called.rounds, strict=True):
        rounds.append(Rows(owner.name, row, row + len(calls) - 1))
        row += len(calls) + 1
    return rounds


def _write_heads(sheet: Worksheet, deck: Deck) -> None:
    most = most_points(deck.recipe.points)
    big, quiet = look.font(size=20, bold=True), look.font(color=look.QUIET)
    line = {"alignment": look.on_one_line()}
    look.write(sheet, (_TITLE, 1), f"Score: {deck.name}", font=big, **line)
    directions = (
        f"Type each team’s points, 0 to {most}, into the white cells. Sums and places follow by "
        "themselves; teams with equal points share a place."
    )
    look.write(sheet, (_DIRECTIONS, 1), directions, font=quiet, **line)
    for column, (head, width) in enumerate(zip(_HEADS, _WIDTHS, strict=True), start=1):
        sheet.column_dimensions[get_column_letter(column)].width = width
        look.write(sheet, (_NAMES, column), head, **_bold())
        for row, name in ((_TOTAL, "Total"), (_PLACE, "Place")):
            look.write(sheet, (row, column), name if column == 1 else "", **_bold())
    for column, team in enumerate(deck.recipe.teams, start=_FIRST_TEAM):
        _write_name(sheet, column, team)
    for row, height in ((_TITLE, 36), (_DIRECTIONS, 26), (_NAMES, 26), (_TOTAL, 26), (_PLACE, 22)):
        sheet.row_dimensions[row].height = height


def _write_name(sheet: Worksheet, column: int, team: Team) -> None:
    tone = f"FF{team.colour.removeprefix('#').upper()}"
    sheet.column_dimensions[get_column_letter(column)].width = max(11, len(team.name) + 4)
    look.write(
        sheet,
        (_NAMES, column),
        team.name,
        font=look.font(bold=True, color=look.letters_on(tone)),
        fill=look.fill(tone),
        alignment=_centred(),
    )


def _write_questions(sheet: Worksheet, rows: Rows, calls: Sequence[tuple[str, str]]) -> None:
    for row, (label, prompt) in enumerate(calls, start=rows.first):
        sheet.row_dimensions[row].height = _height(prompt)
        for column, text in enumerate((rows.name, label, prompt), start=1):
            font = look.font() if column == len(_HEADS) else look.font(color=look.QUIET)
            middle = look.wrapped(vertical="center")
            style = {"font": font, "border": look.hairline(), "alignment": middle}
            look.write(sheet, (row, column), text, **style)
    sheet.row_dimensions[rows.sum].height = _LINE_HEIGHT + _AIR
    for column, text in enumerate((f"{rows.name}: sum", "", ""), start=1):
        look.write(sheet, (rows.sum, column), text, **_bold())


def _height(text: str) -> int:
    """Return the height of a row in points: spreadsheet programs do not all find it themselves."""
    lines = sum(max(1, math.ceil(len(line) / _LETTERS_A_LINE)) for line in text.split("\n"))
    return lines * _LINE_HEIGHT + _AIR


def _bold() -> dict[str, Any]:
    return {
        "font": look.font(bold=True),
        "fill": look.fill(look.PANEL),
        "border": look.hairline(),
        "alignment": look.on_one_line(),
    }


def _write_team(
    sheet: Worksheet, column: int, rounds: Sequence[Rows], teams: int
) -> dict[str, tuple[str, str]]:
    """Write a team's blank cells and its formulas; return what these come to while all is blank."""
    letter = get_column_letter(column)
    last = get_column_letter(_FIRST_TEAM + teams - 1)
    for each in rounds:
        for row in range(each.first, each.last + 1):
            look.dress(
                sheet.cell(row, column),
                number_format=NUMBER,
                border=look.hairline(),
                alignment=_centred(),
            )
        _write_formula(
            sheet, f"{letter}{each.sum}", f"=SUM({letter}{each.first}:{letter}{each.last})"
        )
    sums = ",".join(f"{letter}{each.sum}" for each in rounds)
    totals = f"${get_column_letter(_FIRST_TEAM)}${_TOTAL}:${last}${_TOTAL}"
    place = f'=IF(SUM({totals})=0,"",RANK({letter}{_TOTAL},{totals}))'
    _write_formula(sheet, f"{letter}{_TOTAL}", f"=SUM({sums})", size=16)
    _write_formula(sheet, f"{letter}{_PLACE}", place)
    nothing = {f"{letter}{row}": ("n", "0") for row in (_TOTAL, *(each.sum for each in rounds))}
    return nothing | {f"{letter}{_PLACE}": ("str", "")}


def _write_formula(sheet: Worksheet, at: str, formula: str, *, size: int = 12) -> None:
    sheet[at] = formula
    look.dress(
        sheet[at],
        font=look.font(bold=True, size=size),
        fill=look.fill(look.PANEL),
        border=look.hairline(),
        alignment=_centred(),
        number_format=GENERAL,
    )


def _centred() -> Any:  # noqa: ANN401 (openpyxl's alignments)
    return look.wrapped(horizontal="center", vertical="center", indent=0)


def _offer(sheet: Worksheet, rounds: Sequence[Rows], points: Points, teams: int) -> None:
    """Offer the points in a list; a word would be left out of the sums, so none is taken."""
    most = most_points(points)
    offered = DataValidation(
        "list", formula1=f'"{",".join(map(str, range(most + 1)))}"', allow_blank=True
    )
    offered.errorStyle, offered.showErrorMessage = "stop", True
    offered.errorTitle, offered.error = "Points", f"A team earns 0 to {most} with one question."
    first, last = get_column_letter(_FIRST_TEAM), get_column_letter(_FIRST_TEAM + teams - 1)
    for each in rounds:
        offered.add(f"{first}{each.first}:{last}{each.last}")
    sheet.add_data_validation(offered)


def _finish(sheet: Worksheet, rounds: Sequence[Rows]) -> None:
    sheet.freeze_panes = f"{get_column_letter(_FIRST_TEAM)}{_FIRST}"
    sheet.print_title_rows = f"{_NAMES}:{_NAMES}"
    sheet.sheet_view.showGridLines = False
    first = f"{get_column_letter(_FIRST_TEAM)}{rounds[0].first}"
    for selection in sheet.sheet_view.selection:
        selection.activeCell = selection.sqref = first
    look.print_wide(sheet)
