"""Answers that stand in the prompt of another item."""

from collections import defaultdict
from collections.abc import Iterator
from functools import lru_cache

from cards.checking.names import PROMPT_NAMES
from cards.checking.rule import Remark
from cards.checking.runs import Words, is_within, lengths_of, runs
from cards.checking.words import (
    ARTICLES,
    begins_with_a_note,
    content_words,
    is_value,
    word_set,
    words,
)
from cards.content import Content
from cards.item import Item, Kind
from cards.quoting import quoted

Pair = tuple[Item, Item]
_LEAST_LETTERS = 5
_MOST_PROMPTS = 3
_MOST_SOURCES = 20  # of one answer; each is held against every prompt that has it
# answers that prompts cannot do without, and that tell nobody anything
_COMMON = word_set(
    "above action after again air always animal animals answer area before below between "
    "black blood bodies body books bottom brown cells centre change child children circle "
    "city clean clock clouds colour colours country degrees different earth eight energy "
    "english equal family father field first fire fish flower flowers food force fourth "
    "fresh front girls glass grams grass great green ground group hands heart heavy hours "
    "house human island large larger layer leaves length letter letters level light liquid litre "
    "little local males matter meaning means metal metre metres middle minute minutes "
    "months mother mountain mouth music nature never night north number numbers ocean often "
    "orange order paper parts people person place plant plants point points power purple "
    "question questions right river round science sentence seven shape short sides small "
    "smaller solid sound south space speed square stars state stone story street strong "
    "summer surface table teacher teeth there thing things three today together tree trees "
    "under upper using value verb water waves weather weight white whole winter woman women "
    "words world write wrong years yellow young"
)


def answer_in_other_prompt(content: Content) -> Iterator[Remark]:
    """Find prompts that hold the answer of another item, of a dozen words at most, word for word.

    An answer in many prompts is told of once.
    """
    for source, hosts in _told(content):
        shown = hosts if len(hosts) <= _MOST_PROMPTS else hosts[:1]
        more = "" if len(shown) == len(hosts) else f" So have {len(hosts) - 1} other prompts."
        for host in shown:
            yield Remark(
                host.prompt_place,
                host.prompt,
                f"This {PROMPT_NAMES[host.kind]} has {quoted(source.answer)} in it, "
                f"the answer in {source.answer_place}.{more}",
                "Say it in other words, if whoever holds the one card should not read the other.",
            )


def _told(content: Content) -> Iterator[tuple[Item, list[Item]]]:
    """Yield each item whose answer is told elsewhere, with the items that tell it."""
    hosts: dict[Words, list[Pair]] = defaultdict(list)
    for source, host in _unpatterned(content):
        hosts[_telling(source)].append((source, host))
    for pairs in hosts.values():
        told = {id(host): host for _, host in pairs}
        yield pairs[0][0], list(told.values())


def _unpatterned(content: Content) -> Iterator[Pair]:
    """Yield sources with their hosts, but for prompts that ask one thing of one after the other.

    Whoever asks for the atomic number of each element has to name them all.
    """
    patterns: dict[str, list[Pair]] = defaultdict(list)
    for source, host in _pairs(content):
        name = " ".join(_telling(source))
        patterns[" ".join(words(host.prompt)).replace(name, "\0")].append((source, host))
    for pairs in patterns.values():
        if len(pairs) <= _MOST_PROMPTS:
            yield from pairs


def _pairs(content: Content) -> Iterator[Pair]:
    """Yield each item whose answer stands in another's prompt, with that other."""
    sources: dict[Words, list[Item]] = defaultdict(list)
    for item in content.items:
        answer = _telling(item)
        if answer and len(sources[answer]) < _MOST_SOURCES:
            sources[answer].append(item)
    lengths = lengths_of(sources)
    for host in content.items:
        for answer in runs(words(host.prompt), lengths):
            for source in sources.get(answer, ()):
                if not _belongs(host, source, answer):
                    yield source, host


def _belongs(host: Item, source: Item, answer: Words) -> bool:
    """Say whether the host may have the answer: it is the same item, its reverse, or its like."""
    if host is source or words(host.answer) == words(source.answer) or words(host.prompt) == answer:
        return True
    reverse = words(host.answer)
    if not reverse or not _asked_with(source.prompt).issuperset(reverse):
        return False
    return is_within(reverse, words(source.prompt))


@lru_cache(maxsize=1024)
def _asked_with(prompt: str) -> frozenset[str]:
    return frozenset(words(prompt))


def _telling(item: Item) -> Words:
    """Return the words of an answer that would tell it, or nothing: `the moon` is too common."""
    found = words(item.answer)
    if begins_with_a_note(item.answer):
        return found
    found = found[1:] if found[:1] and found[0] in ARTICLES else found
    if item.kind is Kind.DETAIL or is_value(item.answer):
        return ()
    if len(found) == 1:
        return found if len(found[0]) >= _LEAST_LETTERS and found[0] not in _COMMON else ()
    return found if len(content_words(item.answer)) > 1 else ()
