"""Whether a part of a study guide has one solution, and which clues spoil it."""

from collections.abc import Iterator

from msgspec import Struct

from cards.entries import entry_of
from cards.finding import Finding, Severity
from cards.item import Item
from cards.quoting import quoted
from decks.bank.fits import fits_of, own_words
from decks.bank.guide import Guide, SharedBank, as_one
from decks.bank.matching import is_only_matching, rounds

_MOST_NAMED, _FEW = 9, 4
"""A part has ten blanks at most; of longer rounds, in cards of all parts, only a few are named."""


class Swap(Struct, frozen=True):
    """Why a part has more than one solution.

    Without a `word`, each of the `items` can take the answer of the next, and the last that of the
    first: two items can be swapped. With a `word`, the one item is answered by that word of the
    bank as well as by its own.
    """

    items: tuple[Item, ...]
    word: str = ""


def is_sound(part: SharedBank) -> bool:
    """Say whether a part has exactly one solution, as far as words go: of choices one is right.

    Where each word is used once at most, that is one complete matching of blanks and words; two
    words may then fit one clue, as long as another clue needs the one of them. Where words may be
    used again, nothing but one fitting word for each clue will do.
    """
    if part.reusable:
        return has_one_word_each(part)
    return is_only_matching(fits_of(part.worded, part.bank), own_words(part.worded, part.bank))


def has_one_word_each(part: SharedBank) -> bool:
    """Say whether every clue has one fitting word in the bank: more than soundness asks for."""
    return all(len(words) == 1 for words in fits_of(part.worded, part.bank))


def swappable(part: SharedBank) -> list[Swap]:
    """Return what makes a part unsound, so that every clue concerned is named; none if it is sound.

    Of the rounds that a clue is in, the shortest is returned.
    """
    if is_sound(part):
        return []
    found = list(_of_other_words(part) if part.reusable else _of_words_left_over(part))
    if not part.reusable:
        found += _rounds(part)
    return found


def _of_other_words(part: SharedBank) -> Iterator[Swap]:
    own = own_words(part.worded, part.bank)
    for item, words, mine in zip(part.worded, fits_of(part.worded, part.bank), own, strict=True):
        yield from (Swap((item,), part.bank[word]) for word in sorted(words - {mine}))


def _of_words_left_over(part: SharedBank) -> Iterator[Swap]:
    own = frozenset(own_words(part.worded, part.bank))
    for item, words in zip(part.worded, fits_of(part.worded, part.bank), strict=True):
        yield from (Swap((item,), part.bank[word]) for word in sorted(words - own))


def _rounds(part: SharedBank) -> Iterator[Swap]:
    blanks = part.worded
    fits, own = fits_of(blanks, part.bank), own_words(blanks, part.bank)
    for way in rounds(fits, own):
        yield Swap(tuple(blanks[number] for number in way))


def findings_about(guide: Guide, *, gathered: bool = False) -> tuple[Finding, ...]:
    """Return a warning for each swap in a guide, at the cell of the clue that stands last.

    The same two clues are told of once, though several parts or guides may hold them: nothing in
    a finding depends on the team. `gathered` says that word cards are the bank, of all parts.
    """
    parts = (as_one(guide.parts),) if gathered else guide.parts
    found = [_finding(swap) for part in parts for swap in swappable(part)]
    return tuple(dict.fromkeys(found))


def _finding(swap: Swap) -> Finding:
    items = sorted(swap.items, key=lambda item: item.prompt_place)
    wrong, mend = _told_of_word(swap) if swap.word else _told_of_swap(items)
    last = items[-1]
    return Finding("two-answers-fit", Severity.WARNING, last.prompt_place, last.prompt, wrong, mend)


def _told_of_word(swap: Swap) -> tuple[str, str]:
    (item,) = swap.items
    wrong = f"In the study guide both {quoted(entry_of(item))} and {quoted(swap.word)} fit here."
    return wrong, f"Change this clue, so that only {quoted(entry_of(item))} fits it."


def _told_of_swap(items: list[Item]) -> tuple[str, str]:
    *others, last = items
    named = others if len(others) <= _MOST_NAMED else others[:_FEW]
    first = ", ".join(f"{quoted(entry_of(item))} ({item.prompt_place})" for item in named)
    first += f" and {len(others) - len(named)} more" if len(others) > len(named) else ""
    turn = "be swapped" if len(items) == 2 else "change places"  # noqa: PLR2004 (a pair)
    wrong = f"In the study guide {quoted(last.answer)} and {first} can {turn}: both ways are right."
    mend = "Change one of the clues, or give the items to different teams (column Team)."
    return wrong, mend
