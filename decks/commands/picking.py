"""Which cards of a deck are meant, by their labels and by whose they are."""

import re
from collections import Counter
from collections.abc import Collection, Iterable, Sequence

from msgspec import Struct

from cards.item import folded
from decks.card import Card
from decks.deck import Deck
from decks.settings import UsageError
from decks.words import listed

_DASH = re.compile(r"\s*[-–]\s*")
_RANGE = re.compile(r"([0-9]{1,6})-([0-9]{1,6})")


class Picked(Struct, frozen=True):
    """The cards in the order of the deck; `repeated` are labels that several piles have."""

    cards: tuple[Card, ...]
    repeated: tuple[str, ...] = ()


def picked(deck: Deck, labels: str | None, owners: Sequence[str], *, everything: bool) -> Picked:
    """Return the cards that are meant; without labels, all of the owners.

    Raises `UsageError` for cards and owners that there are not, and where nothing is named.
    """
    if labels is not None and everything:
        raise UsageError("--cards and --all are two different things: give one of them.")
    if labels is None and not owners and not everything:
        raise UsageError(
            "Say which cards are to be printed again: --cards 7,12, or --team with a name for all "
            "cards of a team, or --all."
        )
    numbers = [_number_of(owner, deck) for owner in owners] or list(range(len(deck.owners)))
    hands = [deck.hands[number] for number in sorted(set(numbers))]
    cards = [card for hand in hands for card in hand]
    if labels is None:
        return Picked(_some(cards, owners))
    wanted = _labels(labels, deck, hands)
    found = tuple(card for card in cards if card.label in wanted)
    return Picked(found, () if owners else _repeated(found))


def _some(cards: list[Card], owners: Sequence[str]) -> tuple[Card, ...]:
    if not cards:
        whose = f"{listed(owners, 'and')} has" if len(owners) == 1 else "There are"
        raise UsageError(f"{whose} no cards in this deck.")
    return tuple(cards)


def _repeated(cards: Sequence[Card]) -> tuple[str, ...]:
    labels = Counter(card.label for card in cards)
    return tuple(label for label, count in labels.items() if count > 1)


def _number_of(name: str, deck: Deck) -> int:
    for number, owner in enumerate(deck.owners):
        if folded(owner.name) == folded(name):
            return number
    there = listed([owner.name for owner in deck.owners], "and")
    raise UsageError(f"--team {name}: this deck has no such cards. It has those of {there}.")


def _labels(text: str, deck: Deck, hands: Sequence[Sequence[Card]]) -> set[str]:
    """Return the labels that a text names: `7, 12` or `7-12`."""
    known = {card.label for hand in hands for card in hand}
    wanted: set[str] = set()
    for part in filter(None, re.split(r"[,;\s]+", _DASH.sub("-", text))):
        found = _RANGE.fullmatch(part)
        if not found:
            wanted |= {_known(part, known, deck, hands)}
            continue
        ends = [_known(str(int(end)), known, deck, hands) for end in found.groups()]
        first, last = sorted(map(int, ends))
        wanted |= {one for one in known if one.isdecimal() and first <= int(one) <= last}
    if not wanted:
        raise UsageError("--cards: name cards by the numbers in their corners, as 7,12 or 7-12.")
    return wanted


def _known(label: str, known: Collection[str], deck: Deck, hands: Sequence[Sequence[Card]]) -> str:
    if label in known:
        return label
    elsewhere = [deck.owners[card.owner].name for card in deck.cards if card.label == label]
    piles = "; ".join(pile_told(hand, deck) for hand in hands if hand)
    where = f" That card is in the pile of {listed(elsewhere, 'and')}." if elsewhere else ""
    raise UsageError(f"--cards {label}: there is no such card here. There are {piles}.{where}")


def pile_told(cards: Iterable[Card], deck: Deck) -> str:
    """Return whose cards of one pile they are, and their labels: `Otter 7, 9–12`, `Set 1, 7`."""
    pile = list(cards)
    name = deck.owners[pile[0].owner].name
    apart = "," if name[-1].isdecimal() else ""
    return f"{name}{apart} {in_short([card.label for card in pile])}"


def in_short(labels: Sequence[str]) -> str:
    """Return labels with runs of numbers drawn together: `1–3, 7`."""
    runs: list[list[str]] = []
    for label in labels:
        last = runs[-1][-1] if runs else ""
        if label.isdecimal() and last.isdecimal() and int(label) == int(last) + 1:
            runs[-1].append(label)
        else:
            runs.append([label])
    return ", ".join(f"{run[0]}–{run[-1]}" if len(run) > 1 else run[0] for run in runs)
