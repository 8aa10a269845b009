"""How fair a deal is, in sentences that a student of ten would accept."""

from collections import Counter
from collections.abc import Sequence
from math import floor

from cards.item import folded
from cards.quoting import quoted
from decks.dealing.deal import CARDS, Deal, Goal
from decks.words import counted, listed

_MOST_NAMED = 3
_MOST_LISTED = 6
_SMALL = 0.1


def chance_sentence(deal: Deal, team_names: Sequence[str]) -> str:
    """Say how often each team would finish first if all teams were equally good.

    Nothing is said where nothing can be told apart: with one team, or without cards.
    """
    if len(team_names) == 1 or not any(deal.hands):
        return ""
    equal = f"{_times(1 / len(team_names))} in 100"
    shown = [_times(chance) for chance in deal.chances]
    if len(set(shown)) == 1:
        return f"If every team is equally good, each finishes first about {shown[0]} times in 100."
    if len(team_names) > _MOST_LISTED:
        said = f"each finishes first about {min(shown, key=float)} to {max(shown, key=float)}"
        return f"If every team is equally good, {said} times in 100; an equal chance is {equal}."
    named = [f"{name} {times}" for name, times in zip(team_names, shown, strict=True)]
    first = f"{team_names[0]} finishes first about {shown[0]} times in 100"
    others = listed(named[1:], "and")
    return f"If every team is equally good, {first}, {others}; an equal chance is {equal}."


def deal_warnings(deal: Deal, team_names: Sequence[str]) -> list[str]:
    """Say what a teacher should know before the cards are cut: teams that go without."""
    empty = [name for name, hand in zip(team_names, deal.hands, strict=True) if not hand]
    if not empty or not any(deal.hands):
        return []
    cards, get = sum(map(len, deal.hands)), "gets" if len(empty) == 1 else "get"
    found = f"{listed(empty, 'and')} {get} no card: {_cards(cards)} for {len(team_names)} teams."
    return [f"{found} Add rows, clear cells of the Team column, or have fewer teams."]


def fairness_sentence(deal: Deal, team_names: Sequence[str]) -> str:
    """Say how many cards the teams have, how far they differ, and whether that can be bettered.

    A goal counts as even when no two teams differ by more than one card of any of its values: the
    counts are then those that the number of cards alone allows.
    """
    if not any(deal.hands):
        return "There are no cards to deal."
    if len(team_names) == 1:
        cards = len(deal.hands[0])
        return f"The one team has {f'all {_cards(cards)}' if cards > 1 else 'the only card'}."
    if len(set(deal.hands)) == 1:
        return f"Every team has the same {_cards(len(deal.hands[0]))}."
    in_cards = [goal for goal in deal.goals if goal.unit == CARDS]
    uneven = [goal for goal in in_cards if goal.reached > 1 and _is_news(goal)]
    sentences = [_sizes(deal), _even(in_cards), *map(_uneven, uneven)]
    if uneven:
        sentences.append(_reason(deal, uneven, team_names))
    return " ".join(filter(None, sentences))


def _sizes(deal: Deal) -> str:
    sizes = [len(hand) for hand in deal.hands]
    least, most = min(sizes), max(sizes)
    if least == most:
        return f"Every team has {_cards(most)}."
    if most - least > 1:
        return f"The smallest hand has {_cards(least)}, the largest {_cards(most)}."
    fewer, more = sizes.count(least), sizes.count(most)
    return f"{_teams(more)} {_cards(most)}, {_teams(fewer).lower()} {least or 'none'}."


def _even(goals: Sequence[Goal]) -> str:
    told = [goal for goal in goals if goal.name != "cards" and _is_news(goal) and goal.reached <= 1]
    if not told:
        return ""
    names = listed([goal.name for goal in told], "and")
    if any(goal.reached for goal in told):
        found = f"Of every {names}, no two teams differ by more than one card"
    else:
        found = f"Of every {names}, every team has the same number of cards"
    return f"{found}: no deal can be more even."


def _is_news(goal: Goal) -> bool:
    """Whether a goal says more than the number of cards does: with one value it does not."""
    return goal.name == "cards" or len(goal.counts) > 1


def _uneven(goal: Goal) -> str:
    if goal.name == "cards":
        return ""
    worst = [value for value, held in goal.counts if max(held) - min(held) == goal.reached]
    if len(worst) == 1:
        return f"Cards of {goal.name} {quoted(worst[0])} differ by up to {goal.reached}."
    return f"Cards of some {goal.name}s differ by up to {goal.reached}."


def _reason(deal: Deal, uneven: Sequence[Goal], team_names: Sequence[str]) -> str:
    reasons = [*_pins(deal, team_names), *_first(uneven)]
    unproven = [goal for goal in uneven if not goal.proven]
    if unproven:
        goal = unproven[0]
        return f"Whether a difference of {goal.bound} by {goal.name} can be had is not known."
    return f"With {listed(reasons, 'and')}, no deal can be more even."


def _pins(deal: Deal, team_names: Sequence[str]) -> list[str]:
    pinned = Counter(
        folded(item.team) for hand in deal.hands for item in hand if item.team is not None
    )
    named = [(pinned[folded(name)], name) for name in team_names if pinned[folded(name)]]
    if len(named) > _MOST_NAMED:
        return [f"{_cards(sum(pinned.values()))} set to teams beforehand"]
    return [f"{_cards(count)} set to {name}" for count, name in named]


def _first(uneven: Sequence[Goal]) -> list[str]:
    """Kinds may have to give way to levels and topics, which are evened out before them."""
    if any(goal.name == "kind" for goal in uneven):
        return ["levels and topics evened out before kinds"]
    return []


def _cards(count: int) -> str:
    return counted(count, "card")


def _teams(count: int) -> str:
    return "One team has" if count == 1 else f"{count} teams have"


def _times(chance: float) -> str:
    """Return a chance as times in 100: whole, halves up, but small ones, which would look alike."""
    return f"{floor(100 * chance + 0.5)}" if chance >= _SMALL else f"{100 * chance:.1f}"
