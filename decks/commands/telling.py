"""What the terminal says: few lines, places first, the mend beside the fault."""

from collections.abc import Sequence
from pathlib import Path

from cards.finding import Finding, Severity
from decks.dealing import fairness_sentence
from decks.deck import Deck
from decks.layout.grid import Grid
from decks.layout.stacking import Stack
from decks.press.cards import loading
from decks.words import counted

MOST_FINDINGS = 20


def made(
    folder: Path, deck: Deck, grid: Grid, stacks: tuple[Stack, ...], findings: Sequence[Finding]
) -> list[str]:
    """Say what was made, how to print it and how fair it is."""
    leaves = sum(stack.leaves for stack in stacks)
    names = [team.name for team in deck.recipe.teams]
    cards = f"{counted(len(deck.cards), 'card')} for {counted(len(names), 'team')}"
    return [
        *listed(findings),
        f"{deck.name}: {cards}, on {counted(leaves, 'leaf', 'leaves')}.",
        f"Print   cards.pdf: {loading(grid)}.",
        f"Fair    {fairness_sentence(deck.deal, names)}",
        "Next    teacher.pdf says how to cut and pile, and has the answers.",
        f"Folder  {folder}",
    ]


def stopped(name: str, findings: Sequence[Finding]) -> str:
    """Say why nothing was built."""
    errors = sum(finding.severity is Severity.ERROR for finding in findings)
    end = (
        f"Nothing was built. Mend {'this' if errors == 1 else 'these'} in {name} and build again, "
        "or build without those rows: --skip-errors."
    )
    return "\n".join([f"{counted(errors, 'error')} in {name}", *listed(findings), end])


def nothing_left(name: str, findings: Sequence[Finding]) -> str:
    """Say that there is no item to make a card of."""
    head = f"There is no row in {name} that a card can be made of, so nothing was built."
    return "\n".join([head, *listed(findings)])


def listed(findings: Sequence[Finding]) -> list[str]:
    """Return the findings a line each, errors first, the rest of a long list counted."""
    order = list(Severity)
    ranked = sorted(findings, key=lambda f: (order.index(f.severity), f.place))
    lines = [f"{finding.severity:<8}{finding}" for finding in ranked[:MOST_FINDINGS]]
    if len(ranked) > MOST_FINDINGS:
        lines.append(f"… and {len(ranked) - MOST_FINDINGS} more.")
    return lines
