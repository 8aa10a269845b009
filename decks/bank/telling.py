"""What the teacher is told of a part: what guessing earns, and whether one way alone is right."""

from collections.abc import Mapping

from cards.item import Item
from decks.bank.fits import fits_of
from decks.bank.guide import Guide, GuidePart, as_one
from decks.bank.soundness import Swap, has_one_word_each, swappable
from decks.words import listed

_NEVER_MIND = 1_000_000_000
_SMALL = 10


def about_guessing(part: GuidePart) -> str:
    """Say how many blanks guessing gets right, and how seldom all of them."""
    blanks = len(part.blanks)
    score = f"Guessing alone earns {part.guess_mean:.1f} of {blanks} on average"
    return f"{score}; {'all ' if blanks > 1 else ''}right by luck: {_odds(part.guess_all)}."


def _odds(chance: float) -> str:
    if chance >= 1:
        return "always"
    times = 1 / chance
    if times > _NEVER_MIND:
        return "less than 1 time in a thousand million"
    whole = round(times)
    if abs(times - whole) * _NEVER_MIND < times:
        return f"1 time in {whole:,}"
    return f"about 1 time in {times:.1f}" if times < _SMALL else f"about 1 time in {whole:,}"


def about_last_blank(part: GuidePart, *, asked: int) -> str:
    """Say what a bank without extra words gives away, or nothing where it gives nothing away.

    `asked` is the number of extra words that the recipe asks for.
    """
    blanks = len(part.worded)
    if part.reusable or blanks <= 1 or len(part.bank) > blanks:
        return ""
    these = f"the {blanks} without choices" if part.choices else str(blanks)
    knows = f"A student who knows {blanks - 1} of {these} gets the last for nothing"
    if asked:
        return f"{knows}: the unit has no other words that could be extra words here."
    return f"{knows}: ask for two extra words (Extra words on the Deck sheet)."


def about_solutions(part: GuidePart) -> str:
    """Say whether each clue has one word, or one way alone fills the blanks, or what else is right.

    Blanks are named by their numbers in the part.
    """
    if has_one_word_each(part):
        clue = "clue without choices" if part.choices else "clue"
        return f"Each {clue} has one fitting word." if len(part.worded) > 1 else ""
    swaps = swappable(part)
    if not swaps:
        fits = fits_of(part.worded, part.bank)
        numbers = [
            str(place + 1)
            for place, words in zip(part.worded_places, fits, strict=True)
            if len(words) > 1
        ]
        verb = "has" if len(numbers) == 1 else "have"
        return (
            f"{_blanks(numbers)} {verb} more than one right word, but only one way fills every "
            "blank."
        )
    return " ".join(_accept(part, swap) for swap in swaps)


def about_cards(guide: Guide) -> str:
    """Say what else is right where gathered cards are the bank of all parts; nothing, as a rule."""
    swaps = swappable(as_one(guide.parts))
    places = _places(guide) if swaps else {}
    return " ".join(_accept_anywhere(guide, swap, places) for swap in swaps)


_Places = Mapping[Item, Mapping[int, int]]
"""For each item the parts that ask it, and its blank in each, all from 1."""


def _places(guide: Guide) -> _Places:
    places: dict[Item, dict[int, int]] = {}
    for n, part in enumerate(guide.parts, start=1):
        for number, item in enumerate(part.blanks, start=1):
            places.setdefault(item, {}).setdefault(n, number)
    return places


def _accept_anywhere(guide: Guide, swap: Swap, places: _Places) -> str:
    found = sorted(place for item in swap.items for place in places[item].items())
    if len(guide.parts) == 1:
        blanks = _blanks([str(blank) for _part, blank in found])
    else:
        blanks = listed([f"part {part}, blank {blank}" for part, blank in found], "and")
        blanks = blanks[0].upper() + blanks[1:]
    return _accepted(blanks, len(found), swap)


def _accept(part: GuidePart, swap: Swap) -> str:
    numbers = sorted(part.blanks.index(item) + 1 for item in swap.items)
    return _accepted(_blanks([str(number) for number in numbers]), len(numbers), swap)


def _accepted(blanks: str, count: int, swap: Swap) -> str:
    if swap.word:
        return f"{blanks}: accept “{swap.word}” too."
    round_about = "either way round" if count == 2 else "changed round"  # noqa: PLR2004 (a pair)
    return f"{blanks}: accept their answers {round_about}."


def _blanks(numbers: list[str]) -> str:
    return f"{'Blanks' if len(numbers) > 1 else 'Blank'} {listed(numbers, 'and')}"
