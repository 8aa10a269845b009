"""What the terminal says of a build: few lines, places first, the mend beside the fault."""

from collections.abc import Iterator
from pathlib import Path

from cards.finding import Finding
from decks.bank import findings_about
from decks.commands.inspection import Inspection
from decks.commands.report import COMMAND, at_fault, lacking, told_in_a_build
from decks.dealing import deal_warnings, fairness_sentence
from decks.deck import Deck
from decks.history import EarlierDecks
from decks.layout.stacking import Stack
from decks.lesson import Bases, Called, Telling
from decks.lesson.crowd import crowd
from decks.lesson.timing import calls_told
from decks.press.cards.leaf_side import loading
from decks.press.handouts.answers import has_answer_list
from decks.press.runs import runs_of
from decks.press.teacher.how.counts import cards_told
from decks.press.teacher.setting_up import advice, is_enough
from decks.recipe import Activity, Dealing, Ink, Sides, cards_are_the_bank
from decks.words import counted, listed


def made(
    folder: Path,
    deck: Deck,
    stacks: tuple[Stack, ...],
    seen: Inspection,
    earlier: EarlierDecks | None = None,
) -> list[str]:
    """Say what was made, how to print it and how fair it is.

    `earlier` holds the decks beside the workbook where this one was made without regard to them.
    """
    leaves = sum(stack.leaves for stack in stacks)
    names = [team.name for team in deck.recipe.teams]
    return [
        *told_in_a_build([*seen.findings, *_unsound(deck, seen)]),
        f"{deck.name}: {cards_told(deck)}, on {counted(leaves, 'leaf', 'leaves')}.",
        *_printing(deck, stacks, seen),
        *([f"Fair    {fairness_sentence(deck.deal, names)}"] if deck.deal else []),
        *([f"Aim     {line}" for line in deck.plan.sentences] if deck.plan else []),
        *[f"Note    {line}" for line in (*_notes(deck, seen), *_seen_before(deck, earlier))],
        f"Next    teacher.pdf {_what_next(seen)}",
        f"Run     teacher.pdf {_how_it_runs(deck)}",
        f"Folder  {folder}",
    ]


def _printing(deck: Deck, stacks: tuple[Stack, ...], seen: Inspection) -> list[str]:
    """Say which files go on which paper, and how."""
    lines = [f"Print   cards.pdf: {loading(seen.grid)}."]
    if seen.grid.sides is Sides.TWO_PASSES:
        lines = [
            f"Print   cards-fronts.pdf: {loading(seen.grid)}.",
            "        cards-backs.pdf: on the same sheets, put in again by hand.",
        ]
    if has_answer_list(deck, seen.grid):
        lines.append("        answers.pdf: the answers in the order of the cards.")
    if deck.recipe.ink is Ink.STOCK:
        runs = runs_of(deck, seen.grid, stacks)
        loads = [f"{run.sheets} of {run.paper} ({run.team.name})" for run in runs if run.team]
        lines.append(f"Load    {listed(loads, 'and')}.")
    return lines


def _what_next(seen: Inspection) -> str:
    """Say what the teacher's pages are for."""
    if seen.grid.sides is Sides.TWO_PASSES:
        return "says how to put the sheets in again, how to cut and pile, and has the answers."
    if seen.grid.whole:
        return "says how to check what was printed, and has the answers."
    return "says how to cut and pile, and has the answers."


def _how_it_runs(deck: Deck) -> str:
    """Say what the teacher's pages have for the lesson itself, and about how long it takes."""
    lesson, minutes = deck.lesson, counted(deck.recipe.minutes, "minute")
    if isinstance(lesson, Called):
        rounds = counted(len(lesson.rounds), "round")
        return f"has the call sheet: {rounds}, {calls_told(lesson.calls)}."
    if isinstance(lesson, Bases):
        bases = counted(crowd(deck.recipe.students, len(lesson.sets[0])).first, "base")
        return f"has the base plan: {counted(len(lesson.sets), 'set')} for {bases}, {minutes}."
    if isinstance(lesson, Telling):
        return f"says how groups build, explain and compare, {minutes}."
    guide = ", then the study guide" if deck.guides else ""
    if deck.recipe.activity is Activity.COLLECT:
        return f"says how the words are gathered, {minutes}{guide}."
    return f"says how to ask and answer on one’s feet, {minutes}{guide}."


def _unsound(deck: Deck, seen: Inspection) -> list[Finding]:
    """Return where two answers fit in a study guide, as far as no rule has named the cell."""
    named = {finding.place for finding in seen.findings}
    gathered = cards_are_the_bank(deck.recipe)
    found = dict.fromkeys(
        f for guide in deck.guides for f in findings_about(guide, gathered=gathered)
    )
    return [finding for finding in found if finding.place not in named]


def _notes(deck: Deck, seen: Inspection) -> list[str]:
    """Say what a teacher may not expect of this deck."""
    notes = []
    left_out = len(seen.content.items) - len(seen.items)
    if left_out:
        notes.append(f"{counted(left_out, 'row')} with errors left out.")
    if others := len(seen.items) - len(seen.asked):
        notes.append(_not_asked(others, deck.recipe.activity))
    if any(item.team for item in seen.items):
        notes += _pinned(deck)
    if deck.recipe.activity is Activity.COLLECT and not is_enough(deck):
        notes.append(advice(deck))
    if deck.choice:
        notes += [*_chosen(len(deck.choice.items), len(deck.pool)), *deck.choice.advice]
    if deck.deal and len(seen.asked) >= len(deck.hands):
        notes += deal_warnings(deck.deal, [team.name for team in deck.recipe.teams])
    return notes


def _pinned(deck: Deck) -> Iterator[str]:
    """Say where rows that are set to one team are for all."""
    if deck.owners != deck.recipe.teams:
        yield f"The cards of a {deck.owner_word} are for all teams: the Team column has no effect."
    elif deck.recipe.deal is Dealing.COPIES:
        yield "Every team gets every card, also those that the Team column sets to one."


def _seen_before(deck: Deck, earlier: EarlierDecks | None) -> list[str]:
    """Say how many items were in earlier decks, and which command goes on from those."""
    if earlier is None or not earlier.decks:
        return []
    keys = {card.item.key for card in deck.cards}
    again = len(keys & earlier.keys)
    if not again:
        return []
    were = "was" if again == 1 else "were"
    start = f"{again} of {counted(len(keys), 'item')} {were} in earlier decks."
    return [f"{start} To go on from those and their marks: fairdeal next."]


def _not_asked(count: int, activity: Activity) -> str:
    """Say which rows an activity has no use for."""
    if activity is Activity.ORGANIZER:
        return f"{counted(count, 'item')} left out: an organiser sorts supporting details only."
    details = counted(count, "supporting detail")
    return f"{details} left out: they are for sorting, with Activity set to organizer."


def _chosen(number: int, pool: int) -> list[str]:
    return [f"{number} of {counted(pool, 'item')} chosen."] if number < pool else []


def stopped(name: str, seen: Inspection) -> str:
    """Say why nothing was built."""
    where = at_fault(name, seen.errors)
    these = "this" if len(seen.errors) == 1 else "these"
    end = "Change" if where == COMMAND else f"Mend {these} in"
    end = f"Nothing was built. {end} {where} and build again"
    if not seen.deck_errors:
        end += ", or build without those rows: --skip-errors"
    head = f"{counted(len(seen.errors), 'error')} in {where}"
    return "\n".join([head, *told_in_a_build(seen.findings), f"{end}."])


def nothing_left(name: str, seen: Inspection) -> str:
    """Say that there is no item to make a card of."""
    head = f"There is no row in {name} that a card can be made of, so nothing was built."
    return "\n".join([f"{head}{lacking(seen)}", *told_in_a_build(seen.findings)])
