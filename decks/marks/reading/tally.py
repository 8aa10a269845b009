"""The tally, read: which card each row is about, and how often it was tried and was right."""

from collections.abc import Mapping, Sequence

from msgspec import Struct, field

from cards.finding import Severity
from cards.item import folded
from cards.quoting import quoted
from cards.reading.near import near_miss
from cards.reading.table import Row
from decks.deck import Deck
from decks.marks.forms import TALLY_TITLE, TallyRow, tally_rows
from decks.marks.marked import Count
from decks.marks.reading.cells import Sheet, plain_label, rows_below, sums_up, titled_otherwise
from decks.marks.reading.heads import Head, Role

_SEVERAL = 2
MANY = 10
"""More tries at a card than so many times the class are most likely a slip of the hand."""


class _Cards(Struct, frozen=True):
    """The cards by label, folded, with the texts they show, folded, and what to call all labels."""

    by_label: Mapping[str, Sequence[TallyRow]]
    texts: frozenset[str]
    labels: str


class _Tally(Struct):
    sheet: Sheet
    head: Head
    deck: Deck
    cards: _Cards
    counts: list[Count] = field(default_factory=list)
    seen: dict[tuple[str, str | None], int] = field(default_factory=dict)


def read_tally(sheet: Sheet, head: Head, deck: Deck) -> list[Count]:
    """Return the counts of a tally that are sound; what is not is found."""
    tally = _Tally(sheet, head, deck, _cards(tally_rows(deck)))
    rows = list(rows_below(sheet.table, head.row))
    if not _is_of_another_deck(tally, rows):
        for row in rows:
            _read_row(tally, row)
    return tally.counts


def _cards(rows: Sequence[TallyRow]) -> _Cards:
    by_label: dict[str, list[TallyRow]] = {}
    for row in rows:
        by_label.setdefault(row.label.casefold(), []).append(row)
    return _Cards(by_label, frozenset(folded(row.text) for row in rows), _labels(rows))


def _is_of_another_deck(tally: _Tally, rows: Sequence[Row]) -> bool:
    """Say whether the sheet was made for another deck, or shows texts of cards and none of ours."""
    found = titled_otherwise(tally.sheet.table, TALLY_TITLE, tally.deck.number)
    if found:
        title, number = found
        if any(tally.head.text(row, role) for row in rows for role in (Role.TRIES, Role.RIGHT)):
            tally.sheet.find(
                "another-deck",
                title.place,
                title.text,
                f"This tally is of deck {number}, so its marks were not used.",
                "Name the folder of the deck that it belongs to.",
            )
        return True
    shown = {folded(text) for row in rows if (text := tally.head.text(row, Role.TEXT))}
    if len(shown) < _SEVERAL or not shown.isdisjoint(tally.cards.texts):
        return False
    tally.sheet.find(
        "another-deck",
        tally.sheet.place(rows[0], tally.head.columns[Role.TEXT]),
        tally.head.text(rows[0], Role.TEXT),
        "None of the texts in this column is on a card of this deck, so these marks are of another "
        "and were not used.",
        "Name the folder of the deck that they belong to.",
    )
    return True


def _read_row(tally: _Tally, row: Row) -> None:
    tries, right = (tally.head.columns[role] for role in (Role.TRIES, Role.RIGHT))
    label = tally.head.text(row, Role.CARD)
    if not (row.text(tries) or row.text(right)) or sums_up(label):
        return
    card = _card(tally, row, plain_label(label))
    counts = tally.sheet.count(row, tries), tally.sheet.count(row, right)
    if card is None or _is_moved(tally, row, card):
        return
    count = _count(tally, row, card, counts)
    if count:
        _tell_twice(tally, row, card)
        tally.counts.append(count)


def _count(
    tally: _Tally, row: Row, card: TallyRow, counts: tuple[int | None, int | None]
) -> Count | None:
    tried, right = counts
    columns = [tally.head.columns[role] for role in (Role.TRIES, Role.RIGHT)]
    for count, column, word in zip(counts, columns, ("tries", "right"), strict=True):
        if count is None and not row.text(column):
            wrong = f"Card {card.label} has no number under {word}, so its row was not used."
            place = tally.sheet.place(row, column)
            tally.sheet.find("count-missing", place, "", wrong, "Write it, 0 if there was none.")
    if tried is None or right is None:
        return None
    place = tally.sheet.place(row, columns[1])
    if right > tried:
        wrong = f"Card {card.label} was right more often than it was tried, {right} of {tried}."
        mend = "Mend the one or the other; until then the row is not used."
        tally.sheet.find("more-right-than-tries", place, str(right), wrong, mend)
        return None
    _tell_many(tally, row, card, tried)
    return Count(card.item.key, right, tried)


def _card(tally: _Tally, row: Row, label: str) -> TallyRow | None:
    """Return the card that a row is about, or None, told, where it is not plain."""
    place = tally.sheet.place(row, tally.head.columns[Role.CARD])
    with_label = tally.cards.by_label.get(label.casefold(), ())
    if not with_label:
        wrong = f"There is no card {quoted(label)} in this deck." if label else "Which card is it?"
        mend = f"Write the number in the card’s corner: {tally.cards.labels}."
        tally.sheet.find("no-such-card", place, label, wrong, mend)
        return None
    owner = tally.head.text(row, Role.OWNER)
    owned = [card for card in with_label if card.owner and folded(card.owner) == folded(owner)]
    if owned:
        return owned[0]
    if len(with_label) == 1 and (not owner or not with_label[0].owner):
        return with_label[0]
    _tell_owner(tally, row, with_label, owner)
    return None


def _tell_owner(tally: _Tally, row: Row, cards: Sequence[TallyRow], owner: str) -> None:
    word = tally.deck.owner_word
    label = cards[0].label
    names = sorted({card.owner for card in cards if card.owner})
    place = tally.sheet.place(row, tally.head.columns.get(Role.OWNER, 0))
    if not owner:
        wrong = f"There are {len(cards)} cards {label}, and the row does not say which."
    elif len(cards) == 1:
        wrong = f"Card {label} is in {names[0]}, not in {quoted(owner)}."
    else:
        wrong = f"There is no card {label} of a {word} {quoted(owner)}."
    near = near_miss(owner, names)
    mend = f"Did you mean {near}?" if near else f"Write its {word} beside it, or its own number."
    tally.sheet.find("no-such-owner", place, owner, wrong, mend)


def _labels(rows: Sequence[TallyRow]) -> str:
    numbers = [int(row.label) for row in rows if row.label.isdecimal()]
    return f"{min(numbers)} to {max(numbers)}" if numbers else "as it is printed"


def _is_moved(tally: _Tally, row: Row, card: TallyRow) -> bool:
    """Say whether the row shows the text of another card: a column was sorted by itself."""
    text = folded(tally.head.text(row, Role.TEXT))
    own = folded(card.text)
    if not text or text == own or text not in tally.cards.texts:
        return False
    tally.sheet.find(
        "columns-apart",
        tally.sheet.place(row, tally.head.columns[Role.TEXT]),
        tally.head.text(row, Role.TEXT),
        f"This is not what card {card.label} says, so it is not plain whose marks these are.",
        "Undo the sorting: the columns of a row belong together.",
    )
    return True


def _tell_twice(tally: _Tally, row: Row, card: TallyRow) -> None:
    first = tally.seen.setdefault((card.label, card.owner), row.number)
    if first != row.number:
        tally.sheet.find(
            "card-twice",
            tally.sheet.place(row, tally.head.columns[Role.CARD]),
            card.label,
            f"Card {card.label} is in row {first} already; both rows were added up.",
            "Delete one of them if it is there by mistake.",
            severity=Severity.WARNING,
        )


def _tell_many(tally: _Tally, row: Row, card: TallyRow, tried: int) -> None:
    students = tally.deck.recipe.students
    if tried > MANY * students:
        tally.sheet.find(
            "many-tries",
            tally.sheet.place(row, tally.head.columns[Role.TRIES]),
            str(tried),
            f"{tried} tries at card {card.label} are a great many for {students} students.",
            "See whether a digit slipped in. An answer that a team gives together is one try.",
            severity=Severity.WARNING,
        )
