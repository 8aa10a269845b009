"""What marks say, in figures and in words."""

import json
import re

import pytest
from support.marking import TEAMS, deck, for_class, in_rounds, in_sets
from support.tables import table

from decks.deck import Deck
from decks.marks.estimate import STRENGTH, Belief
from decks.marks.figures import figures
from decks.marks.forms import blanks_of
from decks.marks.marked import Count, MarkedGuide, Marks
from decks.marks.results import ENOUGH_PAPERS, results
from decks.marks.summary import band, is_sure, sentences, span, two_places


def words(made, marks, **given):
    return [sentence.text for sentence in sentences(results(made, marks, **given))]


def counted(made: Deck, *counts):
    """Marks of the cards in their order: right and tries each."""
    cards = [card.item.key for card in made.cards]
    return Marks(
        tuple(Count(key, right, tries) for key, (right, tries) in zip(cards, counts, strict=False))
    )


def papers_of(made: Deck, rows, number=0):
    guide = made.guides[number]
    keys = tuple(item.key for item in blanks_of(guide).values())
    return MarkedGuide(guide.team, keys, tuple(map(tuple, rows)))


def lsat6():
    """1000 papers of five blanks (Bock & Lieberman 1970)."""
    patterns = table("lsat6_lsat7_patterns.csv")
    return [
        [int(pattern[f"Q{n}"]) for n in range(1, 6)]
        for pattern in patterns
        for _ in range(int(pattern["n_lsat6"]))
    ]


def test_figures_of_marked_papers_are_the_published_ones():
    made = for_class(5)
    found = results(made, Marks(guides=(papers_of(made, lsat6()),)))
    by_key = {one.item.key: one for one in found.items}
    for key, row in zip(papers_of(made, []).items, table("lsat6_expected.csv"), strict=True):
        one = by_key[key]
        assert one.share == pytest.approx(float(row["p"]))
        assert one.discrimination == pytest.approx(float(row["D27_tie_averaged"]), abs=6e-5)
        assert one.correlation == pytest.approx(float(row["r_rest"]), abs=6e-4)
    (guide,) = found.guides
    assert guide.reliability == pytest.approx(0.294997, abs=5e-7)


def test_team_guides_that_ask_the_same_are_put_together_whatever_their_order():
    """Each team's guide has an order of its own; together they are the class's papers."""
    made = deck(6, chosen=None, **copies_for_teams())
    class_order = [item.key for item in blanks_of(made.guides[0]).values()]
    rows = [[1, 0, 1, 1, 0, n % 2] for n in range(6)] + [[0, 0, 1, 1, 1, 1] for _ in range(6)]
    guides = []
    for number, part in enumerate([rows[:3], rows[3:6], rows[6:9], rows[9:]]):
        own = papers_of(made, [], number)
        at = [class_order.index(key) for key in own.items]
        guides.append(
            MarkedGuide(own.team, own.items, tuple(tuple(r[n] for n in at) for r in part))
        )
    together = results(made, Marks(guides=tuple(guides)))
    assert [(g.teams, g.whole) for g in together.guides] == [(tuple(t.name for t in TEAMS), 12)]
    alone = results(
        made, Marks(guides=(MarkedGuide(None, tuple(class_order), tuple(map(tuple, rows))),))
    )
    assert [(i.discrimination, i.correlation) for i in together.items] == [
        (i.discrimination, i.correlation) for i in alone.items
    ]


def copies_for_teams():
    from decks.recipe import Dealing, GuideFor  # noqa: PLC0415

    return {"deal": Dealing.COPIES, "guide": GuideFor.TEAM}


def test_the_level_counts_for_as_many_tries_as_its_strength():
    made = in_rounds(6)
    easy = made.cards[0].item
    marks = counted(made, (3, 12))
    for strength in (4.0, STRENGTH, 100.0):
        one = results(made, marks, strength=strength).items[0]
        share = easy.level.expected_share
        assert one.before == Belief(share, strength)
        assert one.after.mean == pytest.approx((share * strength + 3) / (strength + 12))


def test_what_earlier_marks_say_comes_before_the_level():
    made = in_rounds(6)
    key = made.cards[0].item.key
    found = results(made, counted(made, (1, 2)), before={key: Belief(0.3, 30)})
    assert found.items[0].after == Belief(10 / 32, 32)


def test_without_marks_nothing_is_told_but_that():
    assert words(in_rounds(6), Marks()) == ["No marks are filled in yet."]


def test_items_that_all_have_and_items_most_missed_are_named():
    made = in_rounds(8)
    told = words(made, counted(made, *[(6, 8)] * 3, (9, 9), (3, 3), (8, 8), (1, 8), (0, 8)))
    answers = {card.label: card.item.answer for card in made.cards}
    assert "Nobody who was asked missed 4 and 6." in told  # three tries at 5 are too few for a word
    assert f"Missed most: 8 ({answers['8']}) 0 of 8; 7 ({answers['7']}) 1 of 8." in told


def test_cards_with_the_same_number_are_told_apart():
    made = in_sets()
    told = words(made, counted(made, (5, 5), (5, 5)))
    assert "Nobody who was asked missed Set 1, 1; Set 1, 2." in told


def test_a_topic_needs_another_lesson_only_where_the_interval_is_below_what_is_good():
    made = in_rounds(24)
    weak = {"Tides": (10, 20), "Zones": (16, 20), "Life": (19, 20)}
    counts = [weak[card.item.topic] for card in made.cards]
    lessons = [text for text in words(made, counted(made, *counts)) if "lesson" in text]
    # 80 of 160: Wilson .423 to .577
    assert lessons == ["Tides needs another lesson: 50 % right (42–58 %)."]
    few = [(right // 10, 2) for right, _ in counts]
    assert not [text for text in words(made, counted(made, *few[:3])) if "lesson" in text]


def rasch_like(wrong_key=False):
    """20 papers that rise evenly; of the first blank the key is wrong, or right."""
    rows = [[int(n + shift >= 10) for shift in (-6, -3, 0, 3, 6, 8)] for n in range(20)]
    return [[row[2] ^ wrong_key, *row] for row in rows]


def test_where_those_who_did_best_got_it_wrong_the_key_is_to_be_looked_at():
    made = for_class(7)
    for wrong in (True, False):
        guide = papers_of(made, rasch_like(wrong_key=wrong))
        found = results(made, Marks(guides=(guide,)))
        name = next(one.name for one in found.items if one.item.key == guide.items[0])
        looked = [text for text in words(made, Marks(guides=(guide,))) if "key" in text]
        assert len(looked) == wrong
        assert all(text.startswith(f"Look at the key of {name} (") for text in looked)


def test_from_too_few_papers_no_blank_is_judged_and_that_is_said():
    made = for_class(7)
    rows = rasch_like(wrong_key=True)[::2][: ENOUGH_PAPERS - 1]
    found = results(made, Marks(guides=(papers_of(made, rows),)))
    told = [sentence.text for sentence in sentences(found)]
    assert not any("key" in text or "KR-20" in text for text in told)
    assert any("too few papers" in text and "9 whole papers" in text for text in told)
    assert all(one["too_few_papers"] for one in figures(found)["items"])
    assert all(one["upper_lower_band"] is None for one in figures(found)["items"])


def test_papers_with_a_blank_unmarked_are_not_whole_but_their_marks_count():
    made = for_class(3)
    guide = papers_of(made, [[1, 0, None]] * 12)
    found = results(made, Marks(guides=(guide,)))
    assert (found.tries, found.guides[0].papers, found.guides[0].whole) == (24, 12, 0)
    assert "no whole paper" in " ".join(words(made, Marks(guides=(guide,))))


def test_what_is_undefined_is_null_for_programs_and_no_crash():
    made = for_class(3)
    document = figures(results(made, Marks(guides=(papers_of(made, [[1, 1, 1]] * 12),))))
    assert json.loads(json.dumps(document, allow_nan=False)) == document
    assert document["guides"][0]["kr20"] is None
    assert {one["corrected_point_biserial"] for one in document["items"]} == {None}


def test_items_without_marks_are_counted():
    made = in_rounds(6)
    assert words(made, counted(made, (1, 2)))[-1] == "5 of 6 items have no marks."


@pytest.mark.parametrize(
    ("figure", "word"),
    [
        (0.4, "very good"),
        (0.399, "good"),
        (0.2, "marginal"),
        (0.19, "poor"),
        (-0.01, "look at the key"),
    ],
)
def test_words_for_discrimination_have_the_published_cut_points(figure, word):
    """Ebel & Frisbie 1991, Essentials of Educational Measurement, 5th edition."""
    assert band(figure) == word


def test_four_of_four_is_the_first_that_is_most_likely_more_than_a_half():
    """Wilson's interval of n of n begins at n / (n + 3.84): .44 for three, .51 for four."""
    made = for_class(3)
    three, four, missed = results(made, counted(made, (3, 3), (4, 4), (4, 5))).items
    assert not is_sure(three)
    assert three.interval[0] < 0.5 < four.interval[0]
    assert is_sure(four)
    assert not is_sure(missed)


def test_programs_get_the_figures_with_six_places():
    made = for_class(3)
    (first, *_) = figures(results(made, counted(made, (2, 3))))["items"]
    assert first["share"] == 0.666667
    # Wilson's for 2 of 3, by hand: (1.30694 ± .83337) / 2.28053
    assert first["interval"] == pytest.approx([0.2077, 0.9385], abs=5e-5)


def test_a_span_is_in_whole_per_cent():
    assert span((0.504, 0.99)) == "50–99 %"
    assert span(None) == "–"


def test_figures_below_one_are_written_as_the_trade_does():
    assert [two_places(n) for n in (0.354, -0.1, -0.01, 1.0, -0.001, None)] == [
        ".35",
        "−.10",
        "−.01",
        "1.00",
        ".00",
        "–",
    ]
    assert not re.search(r"\d\.\d{3}", " ".join(map(two_places, (0.123456, 0.999999))))
