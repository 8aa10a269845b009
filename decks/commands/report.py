"""What the terminal says of findings: errors first, places first, the mend beside the fault."""

from collections import Counter
from collections.abc import Iterator, Sequence
from pathlib import Path

from cards.finding import Finding, Severity, ranked, tally
from cards.place import column_letters
from cards.reading.open_elsewhere import seems_open
from decks.commands.inspection import Inspection
from decks.recipe import Activity
from decks.words import counted

COMMAND = "the command"

MOST_ALIKE = 5
"""How many findings of one code are told of one sheet before the rest is only counted."""

MOST_IN_A_BUILD = 20
"""How many lines of findings a build tells; checking tells all of them."""


def findings_told(findings: Sequence[Finding]) -> Iterator[str]:
    """Yield the findings a line each; of many alike on a sheet, the first and how many more."""
    ordered = ranked(findings)
    alike: dict[tuple[str, ...], list[Finding]] = {}
    for finding in ordered:
        alike.setdefault(_likeness(finding), []).append(finding)
    shown: Counter[tuple[str, ...]] = Counter()
    for finding in ordered:
        group = alike[_likeness(finding)]
        most = len(group) if len(group) == MOST_ALIKE + 1 else MOST_ALIKE
        shown[_likeness(finding)] += 1
        if shown[_likeness(finding)] <= most:
            yield f"{finding.severity:<8}{finding}"
        if shown[_likeness(finding)] == most and group[most:]:
            yield f"        … and {len(group) - most} more like this{_columns(group[most:])}"


def _likeness(finding: Finding) -> tuple[str, ...]:
    return finding.severity, finding.code, finding.place.sheet


def _columns(findings: Sequence[Finding]) -> str:
    columns = sorted({one.place.column for one in findings if one.place.column})
    if not columns:
        return ""
    letters = " and ".join(column_letters(column) for column in columns)
    return f" in {'column' if len(columns) == 1 else 'columns'} {letters}"


def told_in_a_build(findings: Sequence[Finding]) -> list[str]:
    """Return the first findings a line each, and how to see the rest."""
    lines = list(findings_told(findings))
    if len(lines) <= MOST_IN_A_BUILD:
        return lines
    return [
        *lines[:MOST_IN_A_BUILD],
        "… and more: fairdeal check tells all of the file, fairdeal marks those of a deck’s marks.",
    ]


def verdict(name: str, seen: Inspection) -> str:
    """Return the closing line of a check: what was found, and what to do now."""
    ready = f"{counted(len(seen.asked), 'item')}, ready to build."
    if seen.errors:
        mend = f"mend the {'error' if len(seen.errors) == 1 else 'errors'}, then build."
        return f"{tally(seen.findings)} in {at_fault(name, seen.findings)}: {mend}"
    if not seen.asked:
        return f"There is no row in {name} that a card can be made of.{lacking(seen)}"
    if seen.findings:
        return f"{tally(seen.findings)} in {at_fault(name, seen.findings)}, no errors: {ready}"
    return f"Nothing to mend in {name}: {ready}"


def at_fault(name: str, findings: Sequence[Finding]) -> str:
    """Return in what the findings are: the file of this name, the command, or both."""
    of_command = sum(map(_is_of_the_command, findings))
    if not of_command:
        return name
    return COMMAND if of_command == len(findings) else f"{name} and {COMMAND}"


def _is_of_the_command(finding: Finding) -> bool:
    """Say whether an option is at fault: its name stands where a cell would."""
    return not finding.place.row and finding.place.sheet.startswith("--")


def lacking(seen: Inspection) -> str:
    """Return what to add where there is no item that the activity is made of, or nothing."""
    if seen.recipe.activity is Activity.ORGANIZER:
        return " An organiser needs a Details sheet with the headings Topic, Heading and Detail."
    if not seen.items:
        return ""
    return (
        " Supporting details are for sorting: set Activity to organizer, or add words, facts or "
        "questions on a Vocabulary, Facts or Questions sheet."
    )


def about_opening(file: Path) -> list[str]:
    """Return a line where a spreadsheet program seems to have the file open."""
    if not seems_open(file):
        return []
    opened = f"{file.name} seems to be open in a spreadsheet program"
    return [f"Note    {opened}: this is about what was saved last."]


def marking(file: Path, marked: Path | None) -> str:
    """Say where the marked copy is, and what it lacks."""
    if marked is None:
        return "No marked copy was written: there is nothing to mark."
    without = " without its macros" if file.suffix.lower() == ".xlsm" else ""
    return f"Marked  {marked}: a copy{without}, with its cells coloured and a note on each."


def as_json(name: str, seen: Inspection, marked: Path | None) -> str:
    """Return a check as one JSON document; the README lists its fields."""
    import json  # noqa: PLC0415 (few ask for it)

    counts = Counter(finding.severity for finding in seen.findings)
    document = {
        "file": name,
        "ready": bool(seen.asked) and not seen.errors,
        "items": len(seen.asked),
        "counts": {severity.value: counts[severity] for severity in Severity},
        "findings": [finding_record(finding) for finding in ranked(seen.findings)],
        "marked": str(marked) if marked else None,
    }
    return json.dumps(document, ensure_ascii=False, indent=2)


def finding_record(finding: Finding) -> dict[str, object]:
    """Return a finding as what JSON can hold."""
    place = finding.place
    return {
        "code": finding.code,
        "severity": finding.severity.value,
        "sheet": place.sheet,
        "cell": place.cell,
        "row": place.row or None,
        "column": place.column or None,
        "found": finding.found,
        "wrong": finding.wrong,
        "mend": finding.mend,
    }
