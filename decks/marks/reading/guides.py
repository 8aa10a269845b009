"""The marked study guides, read: a paper in each row, a blank in each column."""

from msgspec import Struct, field

from cards.finding import Severity
from cards.item import folded
from cards.quoting import quoted
from cards.reading.near import near_miss
from cards.reading.table import Row
from decks.bank import Guide
from decks.deck import Deck
from decks.marks.forms import GUIDES_TITLE, Blank, blanks_of, guides_by_team
from decks.marks.marked import MarkedGuide
from decks.marks.matrix import Mark
from decks.marks.reading.cells import Sheet, plain_label, rows_below, sums_up, titled_otherwise
from decks.marks.reading.heads import Head, Role
from decks.words import listed


class _Papers(Struct):
    sheet: Sheet
    head: Head
    deck: Deck
    papers: dict[str | None, list[tuple[Mark, ...]]] = field(default_factory=dict)
    seen: dict[tuple[str | None, str], int] = field(default_factory=dict)


def read_guides(sheet: Sheet, head: Head, deck: Deck) -> list[MarkedGuide]:
    """Return the papers that are sound, guide by guide; what is not is found."""
    reading = _Papers(sheet, head, deck)
    if _is_of_another_deck(reading):
        return []
    for row in rows_below(sheet.table, head.row):
        if _is_filled(reading, row):
            _read_row(reading, row)
    return [
        MarkedGuide(
            guide.team,
            tuple(item.key for item in blanks_of(guide).values()),
            tuple(reading.papers[guide.team]),
        )
        for guide in deck.guides
        if reading.papers.get(guide.team)
    ]


def _is_of_another_deck(reading: _Papers) -> bool:
    """Say, and tell, whether the sheet was printed for another deck and has marks in it."""
    found = titled_otherwise(reading.sheet.table, GUIDES_TITLE, reading.deck.number)
    if not found:
        return False
    title, number = found
    if any(_is_filled(reading, row) for row in rows_below(reading.sheet.table, reading.head.row)):
        reading.sheet.find(
            "another-deck",
            title.place,
            title.text,
            f"These guides are of deck {number}, so their marks were not used.",
            "Name the folder of the deck that they belong to.",
        )
    return True


def _is_filled(reading: _Papers, row: Row) -> bool:
    if sums_up(reading.head.text(row, Role.PAPER)):
        return False
    return any(row.text(column) for column in reading.head.blanks.values())


def _read_row(reading: _Papers, row: Row) -> None:
    guide = _guide(reading, row)
    if guide is None:
        return
    own = blanks_of(guide)
    paper = tuple(_mark(reading, row, blank) for blank in own)
    for blank in reading.head.blanks:
        if blank not in own:
            _tell_no_blank(reading, row, guide, blank)
    _look_at_number(reading, row, guide)
    if any(mark is not None for mark in paper):
        reading.papers.setdefault(guide.team, []).append(paper)


def _mark(reading: _Papers, row: Row, blank: Blank) -> Mark:
    column = reading.head.blanks.get(blank)
    return reading.sheet.mark(row, column) if column else None


def _guide(reading: _Papers, row: Row) -> Guide | None:
    """Return the guide that a row is a paper of, or None, told, where it is not plain."""
    guides = guides_by_team(reading.deck)
    if None in guides:
        return guides[None]
    team = reading.head.text(row, Role.OWNER)
    names = [name for name in guides if name]
    found = next((name for name in names if folded(name) == folded(team)), None)
    if found:
        return guides[found]
    place = reading.sheet.place(row, reading.head.columns.get(Role.OWNER, 0))
    wrong = f"No team {quoted(team)} has a guide." if team else "The row does not say which team."
    near = near_miss(team, names)
    mend = f"Did you mean {near}?" if near else f"Write the team: {listed(names)}."
    reading.sheet.find("no-such-team", place, team, wrong, mend)
    return None


def _tell_no_blank(reading: _Papers, row: Row, guide: Guide, blank: Blank) -> None:
    column = reading.head.blanks[blank]
    text = row.text(column)
    if not text:
        return
    whose = f"The guide of {guide.team}" if guide.team else "The guide"
    part = f" in part {blank.part}" if len(guide.parts) > 1 or blank.part > 1 else ""
    wrong = f"{whose} has no blank {blank.number}{part}."
    mend = "Clear the cell, or move the mark to its own blank."
    reading.sheet.find("no-such-blank", reading.sheet.place(row, column), text, wrong, mend)


def _look_at_number(reading: _Papers, row: Row, guide: Guide) -> None:
    """See that a paper is told by a number, and that no two have the same."""
    number = plain_label(reading.head.text(row, Role.PAPER))
    place = reading.sheet.place(row, reading.head.columns[Role.PAPER])
    if number and not number.isdecimal():
        # what stands here may be a name, and is not repeated
        wrong = "A paper is told by its number here, so that no mark says whose it is."
        mend = "Write a number in place of it."
        reading.sheet.find("paper-not-numbered", place, "", wrong, mend, severity=Severity.WARNING)
    elif number:
        first = reading.seen.setdefault((guide.team, number), row.number)
        if first != row.number:
            wrong = f"Paper {number} is in row {first} already; both were counted."
            mend = "Delete one of them if it is there by mistake, or give it another number."
            reading.sheet.find("paper-twice", place, number, wrong, mend, severity=Severity.WARNING)
