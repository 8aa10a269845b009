"""Extra words do not give themselves away by their form.

The odd one out is sought as a student would who knows nothing: by capital, plural, figures, number
of words and length. Among the banks of the sample unit it should not be an extra word more often
than a word of the bank is by chance.
"""

import statistics
from pathlib import Path

import pytest

from cards.item import Kind
from cards.reading import read
from decks.bank import Pool, make_guide
from decks.dealing import deal_shares

SAMPLE = Path(__file__).parents[3] / "sample_content" / "Saltmarsh week.xlsx"
TEAMS = ("Heron", "Otter", "Samphire", "Curlew")


def form(word):
    parts = word.split()
    return word[0].isupper(), parts[-1].endswith("s"), any(map(str.isdigit, word)), len(parts)


def odd_ones(bank):
    """Return the words that differ most from the others in form and in length."""
    middle = statistics.mean(map(len, bank))
    spread = statistics.pstdev(map(len, bank)) or 1
    forms = [form(word) for word in bank]

    def oddness(word):
        unlike = sum(
            mine != other for held in forms for mine, other in zip(form(word), held, strict=True)
        )
        return unlike / len(bank) + abs(len(word) - middle) / spread / 2

    most = max(map(oddness, bank))
    return [word for word in bank if oddness(word) == most]


def rates(parts):
    """Return how often an extra word and how often an answer is picked out."""
    picked = {True: 0.0, False: 0.0}
    seen = {True: 0, False: 0}
    for part in parts:
        odd = odd_ones(part.bank)
        for word in part.bank:
            is_extra = word in part.extra_words
            seen[is_extra] += 1
            picked[is_extra] += (word in odd) / len(odd)
    return picked[True] / seen[True], picked[False] / seen[False]


@pytest.mark.parametrize("shared", [True, False])
def test_the_odd_one_out_is_an_extra_word_no_more_often_than_an_answer(shared):
    items = [item for item in read(SAMPLE).items if item.kind is not Kind.DETAIL]
    parts = []
    for seed in map(str, range(1, 51)):
        hands = deal_shares(items, TEAMS, seed).hands if shared else (tuple(items),)
        for team, hand in zip(TEAMS, hands, strict=False):
            parts += make_guide(team, hand, Pool(items), extra_words=2, seed=seed).parts
    extra, answer = rates(parts)
    assert extra <= answer


def test_a_word_that_stands_out_is_picked_out():
    assert odd_ones(["crab", "eel", "goby", "Arctic Oceans 2015"]) == ["Arctic Oceans 2015"]
