"""The way from a shelf of earlier decks and their marks to the plan for the next one."""

from collections.abc import Callable, Collection, Iterator, Mapping, Sequence
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from cards.finding import Finding
from cards.item import Item, Level
from decks.aims import History, Last, Past, Plan, Result, plan_next
from decks.commands.inspection import Inspection
from decks.deck import Deck
from decks.history import Earlier
from decks.history import History as Decks
from decks.marks.estimate import STRENGTH, Belief, after
from decks.marks.reading import marks_in
from decks.recipe import Aim
from decks.settings import UsageError


class Planned(Struct, frozen=True):
    """A plan, and what was found in the earlier decks and their marks."""

    plan: Plan
    findings: tuple[Finding, ...]


Planner = Callable[[Inspection, Path, Decks, str], Planned]
"""What plans a deck from what was found in the file, the shelf, its decks, and the seed."""


def planner(options: Collection[str], *, test_in: int | None = None) -> Planner:
    """Return what plans the next deck; it changes no setting that is among the options."""

    def planned(seen: Inspection, shelf: Path, earlier: Decks, seed: str) -> Planned:
        if not earlier.decks:
            raise UsageError(_no_earlier(shelf))
        marks, findings = _marks_of(earlier.decks)
        plan = plan_next(
            seen.recipe,
            seen.asked,
            history_of([one.recorded.deck for one in earlier.decks], marks),
            seed=seed,
            fixed=options,
            test_in=test_in,
        )
        return Planned(plan, (*earlier.findings, *findings))

    return planned


def _no_earlier(shelf: Path) -> str:
    return (
        f"There is no earlier deck in “{shelf.name}” to go on from. Make the first with fairdeal "
        "build; if its folder is elsewhere, say where with --out."
    )


Marks = Mapping[int, Mapping[str, tuple[int, int]]]
"""By the number of a deck and the key of an item: how often right, of how many tries."""


def _marks_of(decks: tuple[Earlier, ...]) -> tuple[Marks, tuple[Finding, ...]]:
    """Return what was marked in each deck; marks that cannot be read are named and left alone."""
    read = [(one, marks_in(one.folder, one.recorded.deck)) for one in decks]
    findings = [_with_deck(found, one) for one, marks in read for found in marks.findings]
    return {one.number: marks.by_item for one, marks in read}, tuple(findings)


def _with_deck(finding: Finding, earlier: Earlier) -> Finding:
    """Let a finding say which deck's marks it is about."""
    folder = f"{earlier.folder.parent.name}/{earlier.folder.name}"
    place = finding.place
    if place.sheet == folder:
        return finding
    return replace(finding, place=replace(place, sheet=f"{folder}, {place.sheet}"))


def history_of(decks: Collection[Deck], marks: Marks) -> History:
    """Return what the decks, of which there is one at least, and their marks tell of the items."""
    items: dict[str, Item] = {}
    numbers: dict[str, list[int]] = {}
    for deck in decks:
        for item in dict.fromkeys(card.item for card in deck.cards):
            items[item.key] = item
            numbers.setdefault(item.key, []).append(deck.number)
    past = {key: _past(items[key], numbers[key], marks) for key in sorted(items)}
    return History(past, _last(sorted(decks, key=lambda deck: deck.number)))


def _past(item: Item, decks: list[int], marks: Marks) -> Past:
    results = tuple(_results(item.key, decks, marks))
    belief = Belief(item.level.expected_share, STRENGTH)
    for result in results:
        belief = after(belief, result.right, result.tries)
    return Past(item.key, tuple(dict.fromkeys(decks)), results, belief.mean)


def _results(key: str, decks: list[int], marks: Marks) -> Iterator[Result]:
    for number in dict.fromkeys(decks):
        right, tries = marks.get(number, {}).get(key, (0, 0))
        if tries:
            yield Result(number, right, tries)


def _last(decks: Sequence[Deck]) -> Last:
    """Return the last of the decks, which stand in the order of their numbers."""
    deck = decks[-1]
    usual = next((d for d in reversed(decks) if d.recipe.aim is not Aim.RETEACH), deck)
    items = _items(deck)
    shares = [deck.expected(item) for item in items.values()]
    mean = sum(shares) / len(shares) if shares else 0.0
    return Last(deck.number, tuple(items), _levels(deck), _levels(usual), mean)


def _items(deck: Deck) -> dict[str, Item]:
    return {card.item.key: card.item for card in deck.cards}


def _levels(deck: Deck) -> tuple[int, int, int]:
    levels = [item.level for item in _items(deck).values()]
    easy, medium, hard = map(levels.count, Level)
    return easy, medium, hard
