"""What the marks of a deck say of its items, topics and guides, in figures.

The intervals take every try as an observation of its own. Answers of one student, or of one team,
are more alike than that, so that the truth is a little less sure than they say.
"""

from collections import Counter
from collections.abc import Mapping, Sequence

from msgspec import Struct

from cards.item import Item, folded
from decks.deck import Deck
from decks.marks.credible import credible
from decks.marks.discrimination import corrected_point_biserial, upper_lower
from decks.marks.estimate import STRENGTH, Belief, after
from decks.marks.forms import tally_rows
from decks.marks.interval import wilson
from decks.marks.marked import MarkedGuide, Marks
from decks.marks.matrix import Papers, Whole, scores, whole_papers
from decks.marks.reliability import kr20, standard_error

ENOUGH_PAPERS = 10
"""Fewer whole papers are too few to say how a blank or a guide works, our own judgement: among ten,
the upper group is less than three papers, and a correlation of nought comes out as far as a third
from it two times in three (its standard error is one over the root of papers less one)."""


class ItemResult(Struct, frozen=True):
    """What the marks say of one item.

    `name` tells it from others in words: `7`, or `Set 2, 7`. `interval` is Wilson's for the share
    right, None where nothing was tried; `before` and `after` are what is believed of the share that
    get it right, and `likely` holds it 95 times in 100, by the marks and by what was thought
    before. `discrimination` (upper less lower group) and `correlation` (with the rest of the guide)
    come from so many whole `papers`.
    """

    name: str
    item: Item
    right: int
    tries: int
    interval: tuple[float, float] | None
    before: Belief
    after: Belief
    likely: tuple[float, float] | None
    papers: int
    discrimination: float | None
    correlation: float | None

    @property
    def share(self) -> float | None:
        """The share right, or None where nothing was tried."""
        return self.right / self.tries if self.tries else None

    @property
    def too_few(self) -> bool:
        """Whether there are too few papers to say how it works."""
        return self.papers < ENOUGH_PAPERS


class TopicResult(Struct, frozen=True):
    """All tries at the items of a topic together."""

    topic: str
    items: int
    right: int
    tries: int
    interval: tuple[float, float] | None

    @property
    def share(self) -> float | None:
        """The share right, or None where nothing was tried."""
        return self.right / self.tries if self.tries else None


class GuideResult(Struct, frozen=True):
    """How far the scores of a guide can be relied on; `teams` is blank for the class's.

    `papers` counts those with any mark, `whole` those with all; `mean` and `error` are in points.
    """

    teams: tuple[str, ...]
    blanks: int
    papers: int
    whole: int
    mean: float | None
    reliability: float | None
    error: float | None

    @property
    def too_few(self) -> bool:
        """Whether there are too few whole papers to say anything."""
        return self.whole < ENOUGH_PAPERS


class Results(Struct, frozen=True):
    """All that the marks of a deck say; items in the order of the deck's labels."""

    items: tuple[ItemResult, ...]
    topics: tuple[TopicResult, ...]
    guides: tuple[GuideResult, ...]
    strength: float

    @property
    def right(self) -> int:
        """How often an answer was right."""
        return sum(item.right for item in self.items)

    @property
    def tries(self) -> int:
        """How often anything was tried."""
        return sum(item.tries for item in self.items)


class _Pooled(Struct, frozen=True):
    """Guides with the same blanks, whatever their order, as one set of papers.

    `items` are the keys of their blanks, and `blanks` says by the key which blank it is, from 0;
    `papers` counts those with any mark, `totals` are the scores of the `whole` papers.
    """

    teams: tuple[str, ...]
    items: tuple[str, ...]
    blanks: Mapping[str, int]
    papers: int
    whole: Whole
    totals: Sequence[int]


def results(
    deck: Deck,
    marks: Marks,
    *,
    strength: float = STRENGTH,
    before: Mapping[str, Belief] | None = None,
) -> Results:
    """Return what the marks say; `strength` is how many tries a level counts for, above 0.

    `before` holds, by an item's key, what was believed before the lesson where earlier marks say
    more than what the deck expects.
    """
    pooled = _pooled(marks.guides)
    items = _items(deck, marks, pooled, strength, before or {})
    return Results(items, _topics(items), tuple(map(_guide, pooled)), strength)


def belief_before(deck: Deck, item: Item, strength: float) -> Belief:
    """Return what is believed of an item before a lesson, without earlier marks."""
    return Belief(deck.expected(item), strength)


def _items(
    deck: Deck,
    marks: Marks,
    pooled: Sequence[_Pooled],
    strength: float,
    before: Mapping[str, Belief],
) -> tuple[ItemResult, ...]:
    counted = marks.by_item
    found = []
    for key, (name, item) in _named(deck).items():
        right, tries = counted.get(key, (0, 0))
        prior = before.get(key) or belief_before(deck, item, strength)
        posterior = after(prior, right, tries)
        found.append(
            ItemResult(
                name,
                item,
                right,
                tries,
                wilson(right, tries),
                prior,
                posterior,
                credible(posterior),
                *_working(key, pooled),
            )
        )
    return tuple(found)


def _named(deck: Deck) -> dict[str, tuple[str, Item]]:
    """Return the items by key in the order of the cards, each with what to call it."""
    rows = tally_rows(deck)
    labels = Counter(row.label for row in rows)
    named: dict[str, tuple[str, Item]] = {}
    for row in rows:
        alone = labels[row.label] == 1 or row.owner is None
        name = row.label if alone else f"{row.owner}, {row.label}"
        named.setdefault(row.item.key, (name, row.item))
    return named


def _working(key: str, pooled: Sequence[_Pooled]) -> tuple[int, float | None, float | None]:
    """Return how many whole papers ask an item, and how well it tells their scores apart."""
    asking = [one for one in pooled if key in one.blanks]
    if not asking:
        return 0, None, None
    most = max(asking, key=lambda one: len(one.whole))
    blank = most.blanks[key]
    marks = [paper[blank] for paper in most.whole]
    apart, rest = upper_lower(marks, most.totals), corrected_point_biserial(marks, most.totals)
    return len(marks), apart, rest


def _pooled(guides: Sequence[MarkedGuide]) -> tuple[_Pooled, ...]:
    """Put together the papers of guides that ask the same, be it in another order."""
    groups: dict[tuple[str, ...], list[MarkedGuide]] = {}
    for guide in guides:
        groups.setdefault(tuple(sorted(guide.items)), []).append(guide)
    return tuple(map(_pool, groups.values()))


def _pool(group: Sequence[MarkedGuide]) -> _Pooled:
    items = group[0].items
    papers = [paper for guide in group for paper in _reordered(guide, items)]
    whole = whole_papers(papers)
    teams = tuple(guide.team for guide in group if guide.team)
    return _Pooled(teams, items, _places(items), len(papers), whole, scores(whole))


def _reordered(guide: MarkedGuide, items: tuple[str, ...]) -> Papers:
    if guide.items == items:
        return guide.papers
    places = _places(guide.items)
    at = [places[item] for item in items]
    return [[paper[n] for n in at] for paper in guide.papers]


def _places(items: Sequence[str]) -> dict[str, int]:
    """Return for each item the first of its places, counted from 0."""
    places: dict[str, int] = {}
    for place, item in enumerate(items):
        places.setdefault(item, place)
    return places


def _topics(items: Sequence[ItemResult]) -> tuple[TopicResult, ...]:
    groups: dict[str, list[ItemResult]] = {}
    for item in items:
        groups.setdefault(folded(item.item.topic), []).append(item)
    return tuple(_topic(group) for group in groups.values())


def _topic(group: Sequence[ItemResult]) -> TopicResult:
    right, tries = sum(item.right for item in group), sum(item.tries for item in group)
    return TopicResult(group[0].item.topic, len(group), right, tries, wilson(right, tries))


def _guide(pooled: _Pooled) -> GuideResult:
    return GuideResult(
        pooled.teams,
        len(pooled.items),
        pooled.papers,
        len(pooled.whole),
        sum(pooled.totals) / len(pooled.whole) if pooled.whole else None,
        kr20(pooled.whole),
        standard_error(pooled.whole),
    )
