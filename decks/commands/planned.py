"""The way from a shelf of earlier decks and their marks to the plan for the next one."""

from collections.abc import Callable, Collection
from pathlib import Path

from msgspec import Struct
from msgspec.structs import replace

from cards.finding import Finding, UnusableFileError
from decks.aims import Plan, plan_next
from decks.commands.inspection import Inspection
from decks.history import Earlier, EarlierDecks
from decks.marks.past import Marked, history_of
from decks.marks.reading import marks_in
from decks.settings import UsageError


class Planned(Struct, frozen=True):
    """A plan, and what was found in the earlier decks and their marks."""

    plan: Plan
    findings: tuple[Finding, ...]


Planner = Callable[[Inspection, Path, EarlierDecks, str], Planned]
"""What plans a deck from what was found in the file, the shelf, its decks, and the seed."""


def planner(options: Collection[str], *, test_in: int | None = None) -> Planner:
    """Return what plans the next deck; it changes no setting that is among the options."""

    def planned(seen: Inspection, shelf: Path, earlier: EarlierDecks, seed: str) -> Planned:
        if not earlier.decks:
            raise _no_earlier(shelf, earlier)
        marks, findings = _marks_of(earlier.decks)
        plan = plan_next(
            seen.recipe,
            seen.asked,
            history_of(
                [one.deck for one in earlier.decks],
                marks,
                seen.items,
                asks=seen.recipe.activity.asks,
            ),
            seed=seed,
            fixed=options,
            test_in=test_in,
        )
        return Planned(plan, (*earlier.findings, *findings))

    return planned


def _no_earlier(shelf: Path, earlier: EarlierDecks) -> UsageError | UnusableFileError:
    """Return why there is nothing to go on from: no deck, or none that can be read."""
    wrong = f"There is no earlier deck in “{shelf.name}” to go on from."
    if earlier.findings:
        return UnusableFileError(f"{wrong} {earlier.findings[0]}")
    return UsageError(
        f"{wrong} Make the first with fairdeal build; if its folder is elsewhere, say where with "
        "--out."
    )


def _marks_of(decks: tuple[Earlier, ...]) -> tuple[Marked, tuple[Finding, ...]]:
    """Return what was marked in each deck; marks that cannot be read are named and left alone."""
    read = [(one, marks_in(one.folder, one.deck)) for one in decks]
    findings = [_with_deck(found, one) for one, marks in read for found in marks.findings]
    return {one.number: marks.by_item for one, marks in read}, tuple(findings)


def _with_deck(finding: Finding, earlier: Earlier) -> Finding:
    """Let a finding say which deck's marks it is about."""
    folder = f"{earlier.folder.parent.name}/{earlier.folder.name}"
    place = finding.place
    if place.sheet == folder:
        return finding
    return replace(finding, place=replace(place, sheet=f"{folder}, {place.sheet}"))
