"""What the marks say in words: what everyone has, what was missed, which keys to look at."""

from collections.abc import Sequence
from math import sqrt

from msgspec import Struct

from cards.entries import entry_of
from decks.aims.past import is_missed
from decks.marks.forms import in_short
from decks.marks.results import ENOUGH_PAPERS, GuideResult, ItemResult, Results, TopicResult
from decks.words import counted, listed, percent

GOOD = 0.80
"""About this share is right in good lessons (Rosenshine 2012, American Educator 36)."""

FEW_TRIES = 4
"""So many tries without a miss are worth a word: the interval then begins above a half."""

MOST_NAMED = 5
_BANDS = ((0.40, "very good"), (0.30, "good"), (0.20, "marginal"), (0.0, "poor"))
_LONGEST_ANSWER = 28


class Sentence(Struct, frozen=True):
    """A sentence; `to_do` says that it asks the teacher to do something."""

    text: str
    to_do: bool = False


def band(discrimination: float) -> str:
    """Return the word for how well an item tells high scores from low.

    The cut points of Ebel & Frisbie 1991, Essentials of Educational Measurement; below nought the
    key is to be looked at first.
    """
    return next((word for least, word in _BANDS if discrimination >= least), "look at the key")


def is_key_doubtful(result: ItemResult) -> bool:
    """Say whether those who did best on the rest of the guide did worse on this item.

    Both figures are below nought, and the correlation by more than its standard error. Chance alone
    does it in one guide of twelve where abilities differ as usual, and more often where they are
    much alike; a stricter bound would miss more keys that are wrong.
    """
    apart, rest = result.discrimination, result.correlation
    if result.too_few or apart is None or rest is None:
        return False
    return apart < 0 and rest < -1 / sqrt(result.papers - 1)


def is_sure(result: ItemResult) -> bool:
    """Say whether nobody missed an item that was tried often enough."""
    return result.tries >= FEW_TRIES and result.right == result.tries


def is_still_missed(result: ItemResult) -> bool:
    """Say whether an item was missed, and fewer than are good are expected to get it right now."""
    return is_missed(result.right, result.tries) and result.after.mean < GOOD


def needs_lesson(interval: tuple[float, float] | None) -> bool:
    """Say whether a topic is below what good lessons reach, even at the top of its interval."""
    return interval is not None and interval[1] < GOOD


def sentences(found: Results) -> list[Sentence]:
    """Return what the marks say, what matters most first; one line where there are no marks."""
    if not found.tries:
        return [Sentence("No marks are filled in yet.")]
    told = [
        _overall(found),
        *map(_look_at_key, filter(is_key_doubtful, found.items)),
        *_lessons(found.topics),
        _missed(found.items),
        _sure(found.items),
        *map(_reliable, found.guides),
        _too_few(found.guides),
        _unmarked(found.items),
    ]
    return [sentence for sentence in told if sentence]


def _overall(found: Results) -> Sentence:
    share = percent(found.right / found.tries)
    verb = "was" if found.tries == 1 else "were"
    return Sentence(f"{found.right} of {counted(found.tries, 'answer')} {verb} right: {share}.")


def _look_at_key(result: ItemResult) -> Sentence:
    return Sentence(
        f"Look at the key of {called(result)}: those who did better on the rest did worse "
        "here, perhaps by chance.",
        to_do=True,
    )


def _lessons(topics: Sequence[TopicResult]) -> list[Sentence]:
    untold = "What has no topic" if any(topic.topic for topic in topics) else "All of it"
    weak = [topic for topic in topics if needs_lesson(topic.interval)]
    return [
        Sentence(
            f"{topic.topic or untold} needs another lesson: "
            f"{percent(topic.share)} right ({span(topic.interval)}).",
            to_do=True,
        )
        for topic in sorted(weak, key=lambda topic: (topic.share or 0, topic.topic))
    ]


def _missed(items: Sequence[ItemResult]) -> Sentence | None:
    missed = sorted(filter(is_still_missed, items), key=lambda one: (one.share, one.after.mean))
    if not missed:
        return None
    told = [f"{called(one)} {one.right} of {one.tries}" for one in missed[:MOST_NAMED]]
    more = f"; and {len(missed) - MOST_NAMED} more" if len(missed) > MOST_NAMED else ""
    return Sentence(f"Missed most: {'; '.join(told)}{more}.", to_do=True)


def _sure(items: Sequence[ItemResult]) -> Sentence | None:
    sure = [one.name for one in items if is_sure(one)]
    if not sure:
        return None
    if len(sure) == len(items):
        return Sentence("Nobody missed any of it.")
    parted = "; ".join(sure) if any("," in name for name in sure) else listed(sure, "and")
    return Sentence(f"Nobody who was asked missed {parted}.")


def _reliable(guide: GuideResult) -> Sentence | None:
    """Say how far a guide's scores go, where there are papers enough."""
    if guide.too_few:
        return None
    whose = f"guide of {listed(guide.teams, 'and')}" if guide.teams else "study guide"
    if guide.reliability is None or guide.error is None:
        return Sentence(f"All scores on the {whose} are alike, so it tells no student from others.")
    return Sentence(
        f"A score on the {whose} may be off by about {guide.error:.1f} of {guide.blanks} points "
        f"(standard error; KR-20 {two_places(guide.reliability)}, {guide.whole} papers)."
    )


def _too_few(guides: Sequence[GuideResult]) -> Sentence | None:
    """Say which guides have too few papers to judge their blanks by."""
    short = [guide for guide in guides if guide.too_few]
    if not short:
        return None
    most = max(guide.whole for guide in short)
    papers = counted(most, "whole paper") if most else "no whole paper"
    told = f"at most {papers} of a guide" if len(short) > 1 else papers
    return Sentence(
        f"There are too few papers to say how single blanks work: {told} so far, and it takes "
        f"{ENOUGH_PAPERS}."
    )


def _unmarked(items: Sequence[ItemResult]) -> Sentence | None:
    blank = sum(not one.tries for one in items)
    if not blank:
        return None
    verb = "has" if blank == 1 else "have"
    return Sentence(f"{blank} of {counted(len(items), 'item')} {verb} no marks.")


def called(result: ItemResult) -> str:
    """Return what to call an item: the card's label, and its answer."""
    return f"{result.name} ({in_short(entry_of(result.item), _LONGEST_ANSWER)})"


def span(interval: tuple[float, float] | None) -> str:
    """Return an interval in whole per cent; a dash where there is none."""
    return "–" if interval is None else f"{100 * interval[0]:.0f}–{100 * interval[1]:.0f} %"


def two_places(figure: float | None) -> str:
    """Return a figure between -1 and 1 with two places, as .35; a dash where there is none."""
    if figure is None:
        return "–"
    text = f"{abs(figure):.2f}".removeprefix("0")
    return f"−{text}" if figure <= -0.005 else text  # noqa: PLR2004 (rounds to nought)
