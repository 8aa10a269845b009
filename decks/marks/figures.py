"""Every figure that the marks lead to, for programs."""

from typing import Any

from msgspec.structs import asdict

from cards.raised import written_out
from decks.marks.results import ENOUGH_PAPERS, ItemResult, Results
from decks.marks.summary import (
    band,
    is_key_doubtful,
    is_still_missed,
    is_sure,
    needs_lesson,
    sentences,
)

_PLACES = 6


def figures(found: Results) -> dict[str, Any]:
    """Return the results as what JSON can hold; what is undefined is null."""
    return {
        "strength": found.strength,
        "enough_papers": ENOUGH_PAPERS,
        "right": found.right,
        "tries": found.tries,
        "words": [sentence.text for sentence in sentences(found)],
        "items": [_item(result) for result in found.items],
        "topics": [
            asdict(topic)
            | {
                "interval": _rounded(topic.interval),
                "share": _rounded(topic.share),
                "needs_lesson": needs_lesson(topic.interval),
            }
            for topic in found.topics
        ],
        "guides": [
            {
                "teams": list(guide.teams),
                "blanks": guide.blanks,
                "papers": guide.papers,
                "whole_papers": guide.whole,
                "too_few_papers": guide.too_few,
                "mean": _rounded(guide.mean),
                "kr20": _rounded(guide.reliability),
                "standard_error": _rounded(guide.error),
            }
            for guide in found.guides
        ],
    }


def _item(result: ItemResult) -> dict[str, Any]:
    apart = result.discrimination
    return {
        "item": result.item.key,
        "card": result.name,
        "prompt": written_out(result.item.prompt, result.item.prompt_spans),
        "answer": written_out(result.item.answer, result.item.answer_spans),
        "topic": result.item.topic,
        "level": int(result.item.level),
        "right": result.right,
        "tries": result.tries,
        "share": _rounded(result.share),
        "interval": _rounded(result.interval),
        "expected_before": _rounded(result.before.mean),
        "expected_after": _rounded(result.after.mean),
        "expected_interval": _rounded(result.likely),
        "whole_papers": result.papers,
        "too_few_papers": result.too_few,
        "upper_lower": _rounded(apart),
        "upper_lower_band": None if apart is None or result.too_few else band(apart),
        "corrected_point_biserial": _rounded(result.correlation),
        "look_at_key": is_key_doubtful(result),
        "everyone_has_it": is_sure(result),
        "missed": is_still_missed(result),
    }


def _rounded(value: Any) -> Any:  # noqa: ANN401 (a figure, a pair of them, or none)
    if isinstance(value, tuple):
        return [_rounded(part) for part in value]
    return value if value is None else round(value, _PLACES)
