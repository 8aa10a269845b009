"""How many cards of each level, topic and kind every team holds."""

from collections import Counter
from collections.abc import Callable, Sequence

from cards.item import Item, Kind, Level, folded, topics_of
from decks.dealing.deal import Goal, Hands

Tally = tuple[tuple[str, tuple[int, ...]], ...]

_VALUES: dict[str, Callable[[Item], str]] = {
    "cards": lambda _item: "all",
    "level": lambda item: item.level.name.lower(),
    "topic": lambda item: folded(item.topic),
    "kind": lambda item: item.kind.value,
}


def tally(hands: Hands, name: str, content: Sequence[Item]) -> Tally:
    """Return (value, cards of each team) for the values of `cards`, `level`, `topic` or `kind`.

    Values stand in their natural order: levels rising, kinds as they are declared, topics as they
    first appear in the content, spelt as there. Values that no item of the content has are left
    out.
    """
    value = _VALUES[name]
    held = [Counter(map(value, hand)) for hand in hands]
    return tuple(
        (shown, tuple(counter[key] for counter in held))
        for key, shown in _in_order(name, content).items()
    )


def goal(hands: Hands, name: str, bound: int, content: Sequence[Item]) -> Goal:
    """Return a goal with the difference that the hands reach."""
    counts = tally(hands, name, content)
    reached = max((max(held) - min(held) for _value, held in counts), default=0)
    return Goal(name, reached, bound, counts)


def _in_order(name: str, content: Sequence[Item]) -> dict[str, str]:
    """Return each value as it is compared and as it is shown."""
    if name == "topic":
        return topics_of(content)
    natural = {
        "cards": ["all"],
        "level": [level.name.lower() for level in Level],
        "kind": [kind.value for kind in Kind],
    }[name]
    present = set(map(_VALUES[name], content))
    return {value: value for value in natural if value in present}
