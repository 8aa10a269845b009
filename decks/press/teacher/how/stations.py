"""Safe at the bases: walk from base to base, answer, and be safe there."""

from decks.deck import Deck
from decks.lesson import Bases
from decks.lesson.crowd import Crowd, crowd
from decks.press.teacher.how.counts import (
    cards_made,
    each_has,
    hands,
    lost,
    points,
    span,
    where_answers_are,
)
from decks.press.teacher.how.play import Part, Play
from decks.press.teacher.how.sets import all_sets, bases_laid, keep_others, sets_today
from decks.recipe import Sides
from decks.words import counted, listed

WALK = (
    "On “Go” everyone walks to another base, any but the one just left. Whoever catches walks too."
)
SAFE = (
    "Whoever has answered is safe at that base to a slow count of ten, then walks on to another. "
    "Two or three may share a base. Catchers keep two arms’ lengths away."
)
ONE_BASE_WALK = "On “Go” everyone walks to the base. Whoever catches walks too."
ONE_BASE_SAFE = (
    "Whoever has answered is safe at the base to a slow count of ten, then walks off and may come "
    "back. Catchers keep two arms’ lengths away."
)
CAUGHT = (
    "an open hand shown at arm’s length, and the word “caught”. Nobody is touched. The one who is "
    "caught takes the band and catches, the other is free. Nobody is out. Whoever runs takes the "
    "band too."
)


def stations(deck: Deck, bases: Bases) -> Play:
    """Return how to play at the bases with this deck."""
    return Play(
        name="Safe at the bases",
        lasts=counted(deck.recipe.minutes, "minute"),
        needs=_needs(deck, bases),
        setting=_setting(deck, bases),
        steps=_steps(deck, bases),
        moving=1,
        asides=_asides(deck, bases),
    )


def _crowd(deck: Deck, bases: Bases) -> Crowd:
    return crowd(deck.recipe.students, len(bases.sets[0]))


def _is_one(bases: Bases) -> bool:
    return len(bases.sets[0]) == 1


def _needs(deck: Deck, bases: Bases) -> tuple[str, ...]:
    number = len(deck.hands)
    several = f"{counted(number, 'set')} of {each_has(hands(deck))}, a pile each"
    sets = several if number > 1 else "one set"
    catchers = _crowd(deck, bases).catchers
    bands = counted(catchers, "band or coloured sheet", "bands or coloured sheets")
    who = "catcher" if catchers == 1 else "catchers"
    return (
        f"{cards_made(deck)}: {counted(len(deck.cards), 'card')} in {sets}",
        *_answers_needed(deck, bases),
        "The base plan and the set list of this file",
        f"{bands} for the {who}, a slip and a pencil for everyone",
        "A clock, a stop signal",
    )


def _answers_needed(deck: Deck, bases: Bases) -> list[str]:
    """Return the list of answers where cards have no backs: one for every base."""
    if deck.recipe.sides is not Sides.FRONTS:
        return []
    if _is_one(bases):
        return ["answers.pdf: one for the base"]
    return [f"answers.pdf: one for each base, {bases_laid(deck, bases)} in all"]


def _setting(deck: Deck, bases: Bases) -> tuple[str, ...]:
    first, cards = bases_laid(deck, bases), len(bases.sets[0])
    of_set = " of set 1" if bases.sets[1:] else ""
    lie = f"Card 1{of_set} lies" if first == 1 else f"Cards {span(1, first)}{of_set} lie"
    apart = "along the walls, two arm’s lengths apart" if first > 1 else "along a wall"
    others = "the other waits" if first + 1 == cards else f"the other {cards - first} wait"
    numbers = "A card’s number is that of its base."
    if first < cards:
        numbers = f"Their numbers are those of the bases; {others} with you."
    return (
        (
            f"{counted(first, 'base')} {apart}, never on the floor: the base plan says where, and "
            "how many for fewer or more students."
        ),
        f"{lie} out, {_side_up(deck, bases)}. {numbers}",
        _today(deck, bases),
    )


def _today(deck: Deck, bases: Bases) -> str:
    """Say how many sets the time is for."""
    number, (used, each) = len(bases.sets), sets_today(deck, bases)
    minutes = counted(deck.recipe.minutes, "minute")
    if number == 1:
        return f"The set lies for {minutes}."
    if used == number:
        which = all_sets(number)
        each_lies = counted(each, "minute")
        return f"{which[0].upper()}{which[1:]} are for today, about {each_lies} each."
    sets = "set 1" if used == 1 else f"sets {span(1, used)}"
    return f"{minutes} are right for {sets}; {keep_others(number - used)}."


def _side_up(deck: Deck, bases: Bases) -> str:
    if deck.recipe.sides is Sides.TENT:
        return "question towards the room"
    if deck.recipe.sides is Sides.FRONTS:
        beside = "it" if _is_one(bases) else "each"
        return f"question up, a list of answers face down beside {beside}"
    return "question up"


def _steps(deck: Deck, bases: Bases) -> tuple[Part, ...]:
    several = sets_today(deck, bases)[0] > 1
    one = _is_one(bases)
    return (
        Part("Who stands where", _start(deck, bases)),
        Part("Walk", ONE_BASE_WALK if one else WALK),
        Part("Answer", _answer(deck, one=one)),
        Part("Safe", ONE_BASE_SAFE if one else SAFE),
        Part("Caught", f"{'Away from the base' if one else 'Between bases'}: {CAUGHT}"),
        *([Part("The next set", _next_set(deck, bases))] if several else []),
        Part("The end", _end(deck)),
    )


def _start(deck: Deck, bases: Bases) -> str:
    catchers = _crowd(deck, bases).catchers
    wear = "students wear a band and catch" if catchers > 1 else "student wears a band and catches"
    return (
        f"{catchers} {wear}. The others stand anywhere in the room. Show once how to walk, to "
        "catch, and to stop."
    )


def how_checked(deck: Deck) -> str:
    """Say how one finds out at a base whether an answer is right."""
    if deck.recipe.sides is Sides.FRONTS:
        return "look at the list that lies there"
    if deck.recipe.sides is Sides.TENT:
        return "look at the other side"
    return "turn the card and look"


def _answer(deck: Deck, *, one: bool) -> str:
    first = "The first time write the card’s" if one else "The first time at a card write its"
    return (
        f"At the base read the question, say the answer aloud, {how_checked(deck)}. {first} "
        "number on your slip, with a tick if you were right. Not right: say it again from "
        f"{where_answers_are(deck)}; that makes safe too, without a tick."
    )


def _next_set(deck: Deck, bases: Bases) -> str:
    used, minutes = sets_today(deck, bases)
    at = listed([str(minutes * n) for n in range(1, used)], "and")
    where = "on the old cards, number on number"
    if deck.recipe.sides is Sides.TENT:
        where = "in front of the old cards, number by number"
    return (
        f"After {at} minutes give the stop signal. Two students lay the next pile {where}; all "
        f"begin a new line on their slips. Then “Go” again.{_plan_says(deck, bases)}"
    )


def _plan_says(deck: Deck, bases: Bases) -> str:
    """Return what the base plan says of bases that go, where any do."""
    crowd_ = _crowd(deck, bases)
    if crowd_.last < crowd_.first:
        return " The base plan says when to take a base away or add one."
    last = sets_today(deck, bases)[0] - 1
    lacking = len(bases.sets[last]) < crowd_.first
    return " The base plan says when to take a base away." if lacking else ""


def _end(deck: Deck) -> str:
    return (
        f"After {counted(deck.recipe.minutes, 'minute')} everyone walks back to their place. Ask "
        "which question was the hardest, and answer it together. Gather the slips. Count the "
        f"cards back{', set by set' if len(deck.owners) > 1 else ''}."
    )


def _asides(deck: Deck, bases: Bases) -> tuple[Part, ...]:
    go = "the team goes" if deck.is_one_team else "teams go"
    round_ = "" if _is_one(bases) else f": {go} round together as the page Rotation says"
    return (
        Part("Points", _points(deck)),
        Part(
            "Gentler, and seated",
            f"No catcher{round_}. Seated: keep a base, read its card out, judge the answers.",
        ),
        Part("A card is lost", lost("a blank card", "the set list")),
    )


def _points(deck: Deck) -> str:
    right = deck.points.right
    if not right:
        return "No points are counted: ticks are for each student alone."
    if deck.is_one_team:
        return f"A tick is {points(right)}. Add up all slips. Or no points at all."
    return (
        f"A tick is {points(right)}. Add up the slips of a team; where teams differ in number, "
        "divide by the students in each. Or no points at all."
    )
