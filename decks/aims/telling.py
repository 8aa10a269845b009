"""What is told of a plan: few lines, figures first."""

from collections.abc import Iterator, Sequence

from cards.item import Item, folded
from decks.aims.plan import Plan
from decks.choosing import Goal
from decks.recipe import Aim, GuideFor
from decks.words import counted, listed, percent

GAP = (0.2, 0.4)
"""For a test in ten days a gap of two to four days does best (from Cepeda et al. 2008); for other
days the same parts of the time, which is our own reckoning."""

TEN_DAYS = 10


def sentences(plan: Plan, test_in: int | None) -> Iterator[str]:
    """Yield what the next deck does and why."""
    yield _shares(plan)
    yield _cards(plan)
    yield from _left_out(plan)
    yield from _misses(plan)
    if plan.means:
        yield f"By other means too: {listed([means.title.lower() for means in plan.means], 'and')}."
    elif plan.aim is Aim.HARDER and plan.recipe.guide is not GuideFor.NONE:
        yield _no_means(plan)
    if plan.aim is Aim.MIXED:
        yield gap_advice(test_in)


def _shares(plan: Plan) -> str:
    """Say what is expected of this deck, and of the last one's items by now."""
    last = plan.history.last
    then = f"{percent(last.told)} was expected of deck {last.number}"
    if plan.history.last_marked:
        then += f", and {percent(plan.history.mean)} after the marks"
    elif plan.history.marked:
        then += ", which has no marks yet"
    else:
        then += "; there are no marks yet, so levels are all there is to go by"
    return f"{percent(plan.choice.share)} expected right{_target(plan)}; {then}."


def _target(plan: Plan) -> str:
    if plan.target is None:
        return ""
    asked = plan.recipe.target / 100
    if plan.target >= asked:
        return f" (target {percent(plan.target)})"
    last = plan.history.last.number
    easier = f"at {percent(asked)} it would be no harder than deck {last}"
    return f" (target {percent(plan.target)}: {easier})"


def _cards(plan: Plan) -> str:
    """Say how many are new, back and out."""
    parts = [
        f"{len(plan.new)} new",
        f"{len(plan.due)} missed {_back(plan)}" if plan.due else "",
        _of_topics(plan.behind) if plan.behind else "",
        f"{len(plan.again)} seen before" if plan.again else "",
    ]
    told = f"{counted(len(plan.choice.items), 'item')}: {listed([p for p in parts if p], 'and')}."
    dropped = counted(plan.dropped, "item of deck", "items of deck")
    return f"{told} {dropped} {plan.history.last.number} left out." if plan.dropped else told


def _of_topics(items: Sequence[Item]) -> str:
    """Say why items are back that were not missed one by one."""
    one = len({folded(item.topic) for item in items}) == 1
    return f"{len(items)} of {'a topic that needs' if one else 'topics that need'} another lesson"


def _back(plan: Plan) -> str:
    return "and back" if plan.aim is Aim.RETEACH else "and back once"


def _left_out(plan: Plan) -> Iterator[str]:
    if plan.known and plan.aim is Aim.HARDER:
        them = "it" if len(plan.known) == 1 else "them"
        known = f"whoever was asked knows {them}"
        yield f"{counted(len(plan.known), 'item')} left out because {known}."
    if plan.waiting:
        yield (
            f"{counted(len(plan.waiting), 'item')} left out as too hard for now: a deck with "
            "--aim reteach goes over what was missed."
        )
    if plan.gone:
        was = "its row was" if plan.gone == 1 else "their rows were"
        yield (
            f"{counted(plan.gone, 'missed item')} left out: {was} changed or taken out since, or "
            "this activity does not ask such rows."
        )


def _misses(plan: Plan) -> Iterator[str]:
    """Say what could not be had, and whether any choice could."""
    goals = {goal.name: goal for goal in plan.choice.goals}
    if plan.aim is Aim.HARDER and not plan.recipe.cards:
        yield from _smaller(plan, goals["cards"].counts[0].offered)
    seen = goals.get("seen")
    if seen and seen.reached:
        yield (
            f"{plan.seen} of {counted(len(plan.choice.items), 'item')} have been seen before, "
            f"where {plan.recipe.seen_before} % would be {_wanted(seen)}: {_proof(seen)}."
        )
    liked = goals.get("liked")
    if liked and liked.reached:
        left = counted(round(liked.reached), "missed item has", "missed items have")
        yield f"{left} to wait for the deck after this one, so that it is not too hard."
    target = goals.get("target")
    if target and target.reached and plan.target is not None:
        side = "above" if plan.choice.share > plan.target else "below"
        off = 100 * abs(plan.choice.share - plan.target)
        yield f"That is {off:.0f} points {side} the target: {_proof(target)}."
    level = goals.get("level")
    if plan.recipe.mix and level is None:
        yield "Mix has no effect here: what was missed comes back, whatever its level."
    elif plan.recipe.mix and plan.target is not None and level and level.reached:
        yield "The mix and the target cannot both be had; the target goes first."


def _smaller(plan: Plan, offered: int) -> Iterator[str]:
    """Say why there are fewer items than usual, where there would have been more."""
    taken, usual = len(plan.choice.items), sum(plan.history.last.usual)
    if taken < min(offered, usual):
        yield (
            f"Fewer than the {usual} of before, so that the target holds. To have more all the "
            "same, say how many: --cards."
        )


def _wanted(seen: Goal) -> str:
    return f"{seen.counts[0].wanted:.0f}"


def _proof(goal: Goal) -> str:
    return "no choice from this workbook comes nearer" if goal.proven else "no nearer one was found"


def _no_means(plan: Plan) -> str:
    return (
        f"The class is not past the target yet, at {percent(plan.history.mean)}, so the study "
        "guide stays as it was."
    )


def gap_advice(test_in: int | None) -> str:
    """Return when to use a deck in which older items come back, with or without a day of a test."""
    if test_in is None:
        return (
            "For a test in ten days, two to four days between a deck and its return do best (from "
            "Cepeda and others 2008). Say when yours is: --test-in 10."
        )
    least, most = (max(1, round(part * test_in)) for part in GAP)
    days = f"{least} to {most} days" if least < most else counted(least, "day")
    source = "from Cepeda and others 2008" + ("" if test_in == TEN_DAYS else ", scaled")
    return f"For a test in {counted(test_in, 'day')}, use it {days} after the last one ({source})."
