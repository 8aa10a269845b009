"""How a lesson is run, as words and as the height of a page."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from msgspec.structs import replace
from strategies import TEAMS, card

from cards.item import Kind
from decks.activities import make_deck
from decks.layout.flow import flow
from decks.press.teacher import steps
from decks.press.teacher.how import play_of
from decks.press.teacher.how.counts import a_team, class_told, each_told, span, spread
from decks.press.teacher.how_to import SIZES, how_to
from decks.press.teacher.keeping import keeping
from decks.press.type.pages import BOTTOM, TOP, column, page_paper
from decks.recipe import (
    Activity,
    CardSize,
    Dealing,
    GuideFor,
    Ink,
    PaperName,
    Points,
    Recipe,
    Sides,
    Support,
)
from decks.team import make_teams

ASKED = [card(n, n % 3 + 1, answer=f"{n} tide") for n in range(30)]
DETAILS = [
    replace(
        card(n, topic=f"Text {n % 2}", kind=Kind.DETAIL, answer=f"Heading {n % 3}"),
        prompt=f"detail {n}",
    )
    for n in range(12)
]


def deck_for(activity, *, teams=4, names=None, items=None, **settings):
    names = names or TEAMS[:teams]
    recipe = Recipe("Shore", make_teams(names, [None] * len(names)), activity=activity, **settings)
    given_items = items or (DETAILS if activity is Activity.ORGANIZER else ASKED)
    return make_deck(recipe, given_items, number=1, seed="s")


def words(deck):
    play = play_of(deck)
    parts = [*play.steps, *play.asides]
    return " ".join([*play.needs, *play.setting, *(f"{part.title} {part.text}" for part in parts)])


def pages_of(deck):
    paper = page_paper(deck.recipe.paper)
    blocks = how_to(deck, column(paper))
    return flow(blocks, x=0, top=paper.height - TOP, bottom=BOTTOM), blocks


CHOICES = st.fixed_dictionaries(
    {
        "activity": st.sampled_from(Activity),
        "paper": st.sampled_from([PaperName.LETTER, PaperName.A4]),
        "teams": st.integers(1, 12),
        "students": st.integers(1, 60),
        "minutes": st.integers(1, 90),
        "sides": st.sampled_from(Sides),
        "deal": st.sampled_from(Dealing),
        "support": st.sampled_from(Support),
        "guide": st.sampled_from(GuideFor),
        "rounds": st.integers(1, 12) | st.none(),
    }
)


@settings(deadline=None, max_examples=40)
@given(CHOICES)
def test_every_how_to_is_one_page_whatever_the_class(choices):
    pages, _blocks = pages_of(deck_for(**choices))
    assert len(pages) == 1


@pytest.mark.parametrize("activity", Activity)
def test_an_ordinary_class_needs_no_small_type(activity):
    page = page_paper(PaperName.LETTER)
    heights = [block.frame.height for block in how_to(deck_for(activity), column(page))]
    sizes = {
        text.size
        for block in how_to(deck_for(activity), column(page))
        for text in texts_in(block.frame)
    }
    assert min(sizes) >= SIZES[1] - 0.5
    assert sum(heights) > 0.75 * (page.height - TOP - BOTTOM)


def texts_in(frame):
    for thing in frame.things:
        if hasattr(thing, "frame"):
            yield from texts_in(thing.frame)
        elif hasattr(thing, "text"):
            yield thing


@pytest.mark.parametrize("activity", Activity)
def test_the_caution_stands_where_people_begin_to_move(activity):
    made = deck_for(activity)
    play = play_of(made)
    _pages, blocks = pages_of(made)
    said = [" ".join(text.text for text in texts_in(block.frame)) for block in blocks]
    at = next(n for n, text in enumerate(said) if "Before anyone moves" in text)
    assert " ".join(steps.MOVING.split()[:6]) in said[at]
    assert said[at + 1].split()[0] == str(play.moving + 1)
    before = " ".join(part.text for part in play.steps[: play.moving])
    assert "walks" not in before


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize(("students", "size"), [(24, "6"), (25, "6 or 7"), (4, "1")])
def test_the_size_of_a_team_is_that_of_the_class_divided(activity, students, size):
    made = deck_for(activity, students=students)
    assert class_told(made) == f"4 teams · {students} students, {size} a team"


@pytest.mark.parametrize("activity", Activity)
def test_cards_without_backs_are_not_told_to_be_turned(activity):
    said = words(deck_for(activity, sides=Sides.FRONTS))
    assert not [back for back in ("the back", "its back", "team mark", "turn the") if back in said]


@pytest.mark.parametrize(("level", "is_told"), [(1, True), (3, False)])
def test_the_last_call_is_told_to_be_one_that_most_can_answer_only_if_it_is(level, is_told):
    rows = [card(n, level, answer=f"{n} tide") for n in range(12)]
    said = words(deck_for(Activity.ROUNDS, items=rows))
    assert ("most can answer" in said) is is_told


def test_a_team_is_never_told_to_be_of_nobody():
    assert a_team(deck_for(Activity.COLLECT, teams=12, students=5)) == (1, 1)


def test_numbers_are_told_as_they_spread():
    assert [spread(each) for each in ([18], [17, 18, 18], [3, 6])] == ["18", "17 or 18", "3 to 6"]


@pytest.mark.parametrize(
    ("numbers", "words"),
    [
        ([1], "1 card"),
        ([0, 1], "0 or 1 card"),
        ([17, 18], "17 or 18 cards"),
        ([24, 12], "12 and 24 cards"),
        ([24, 12, 18], "12 to 24 cards"),
    ],
)
def test_what_each_of_two_has_is_told_of_both(numbers, words):
    assert each_told(numbers, "card") == words


def test_numbers_that_follow_one_another_are_told_as_one_says_them():
    assert [span(1, last) for last in (1, 2, 3)] == ["1", "1 and 2", "1 to 3"]


@pytest.mark.parametrize("activity", Activity)
def test_every_activity_has_gentler_and_seated_ways_and_says_what_to_do_with_a_lost_card(activity):
    titles = [part.title for part in play_of(deck_for(activity)).asides]
    assert titles[1:] == ["Gentler, and seated", "A card is lost"]


@pytest.mark.parametrize("activity", Activity)
def test_nobody_is_touched_or_put_out_or_told_to_run(activity):
    text = words(deck_for(activity))
    for harm in ("loser", "punish", "is out of", "as fast as", "hurry", "race"):
        assert harm not in text.lower()
    if "aught" in text:
        assert "nobody is touched" in text.lower()
        assert "nobody is out" in text.lower()


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize(
    ("size", "sides", "made"),
    [
        (CardSize.SMALL, Sides.DUPLEX, "cards.pdf, cut: "),
        (CardSize.SMALL, Sides.FOLD, "cards.pdf, cut and folded: "),
        (CardSize.LARGE, Sides.TENT, "cards.pdf, cut and folded: "),
        (CardSize.FULL, Sides.FOLD, "cards.pdf, folded: "),
        (CardSize.FULL, Sides.DUPLEX, "cards.pdf: "),
        (CardSize.FULL, Sides.TWO_PASSES, "cards-fronts.pdf and cards-backs.pdf: "),
    ],
)
def test_cards_are_told_to_be_cut_and_folded_only_where_they_are(activity, size, sides, made):
    needs = play_of(deck_for(activity, card_size=size, sides=sides)).needs
    assert sum(need.startswith(made) for need in needs) == 1


def test_in_review_the_list_tells_where_cards_have_no_backs():
    assert "the back tells" in words(deck_for(Activity.REVIEW))
    text = words(deck_for(Activity.REVIEW, sides=Sides.FRONTS))
    assert "the list tells" in text
    assert "answers.pdf: one for every team, 4 in all" in text


def test_cards_that_were_put_aside_are_back_in_the_pile_before_they_are_taken():
    titles = {part.title: part.text for part in play_of(deck_for(Activity.REVIEW)).steps}
    assert "No card left: begin again." in titles["At home, 7 min"]
    assert titles["Take one, walk"].startswith("Lay all cards in one pile again. Everyone takes")


def test_a_lone_team_meets_no_other():
    assert "another team" not in words(deck_for(Activity.REVIEW, teams=1))


@pytest.mark.parametrize("activity", [Activity.REVIEW, Activity.COLLECT])
def test_without_a_study_guide_none_is_mentioned(activity):
    made = deck_for(activity, guide=GuideFor.NONE)
    text = words(made)
    assert "study guide" not in (text + play_of(made).lasts).lower()
    assert not [part for part in ("study-guide", "guides", "blank that", "blanks") if part in text]


def test_a_guide_for_the_class_is_not_said_to_ask_only_for_the_words_of_a_team():
    def guide(**settings):
        return words(deck_for(Activity.COLLECT, **settings))

    only = "It asks only for the team’s words."
    shared = guide(deal=Dealing.SHARES, guide=GuideFor.CLASS)
    assert only not in shared
    assert "A team’s own words fill only some of them." in shared
    assert "read out all the words, then the key" in shared
    # every word is read out, so that a blank counts if it was filled in before
    assert "Blanks filled in after the words were read out are for learning" in shared
    assert "whose word was read out" not in shared
    for other in (
        guide(deal=Dealing.COPIES, guide=GuideFor.CLASS),
        guide(deal=Dealing.SHARES, guide=GuideFor.CLASS, teams=1),
    ):
        assert "fill only some" not in other
        assert "Blanks whose word was read out at the end are for learning" in other
        assert only not in other
    assert only in guide(deal=Dealing.SHARES, guide=GuideFor.TEAM)


def test_where_cards_are_fewer_than_students_not_everyone_is_told_to_have_one():
    # 30 cards for 4 teams, 7 or 8 each; 6 students a team, then 8
    fewer = "fewer cards than students"
    assert fewer not in words(deck_for(Activity.REVIEW))
    assert fewer in words(deck_for(Activity.REVIEW, students=32))
    alone = words(deck_for(Activity.REVIEW, items=ASKED[:1]))
    assert fewer in alone
    assert "1 card, 0 or 1 a team" in alone


def test_a_list_of_answers_is_needed_wherever_it_is_spoken_of():
    for activity in (Activity.REVIEW, Activity.ROUNDS, Activity.STATIONS, Activity.ORGANIZER):
        fronts = deck_for(activity, sides=Sides.FRONTS)
        assert sum("answers.pdf" in need for need in play_of(fronts).needs) == 1
        assert "answers.pdf" not in words(deck_for(activity))


def test_at_bases_without_backs_a_list_lies_at_each():
    # 24 students want eight bases of the 10 cards of a set
    text = words(deck_for(Activity.STATIONS, sides=Sides.FRONTS))
    assert "answers.pdf: one for each base, 8 in all" in text
    assert "question up, a list of answers face down beside each" in text
    alone = words(deck_for(Activity.STATIONS, sides=Sides.FRONTS, items=ASKED[:1]))
    assert "answers.pdf: one for the base" in alone
    assert "face down beside it" in alone
    assert "look at the list that lies there" in text


def test_a_list_that_stays_at_home_tells_nobody_in_the_middle_of_the_room():
    titles = ("Take one, walk", "Ask each other", "Home and out again")
    for sides, tells in ((Sides.DUPLEX, "the back tells"), (Sides.FRONTS, "whoever asked tells")):
        parts = {
            part.title: part.text for part in play_of(deck_for(Activity.REVIEW, sides=sides)).steps
        }
        take, ask, home = (parts[title] for title in titles)
        assert tells in ask
        assert "the list tells" not in ask
        looked = [("looks up its answer in the list" in take), ("look up its answer" in home)]
        assert looked == [sides is Sides.FRONTS] * 2


def test_a_lone_team_or_group_is_not_told_of_others():
    for activity in (Activity.REVIEW, Activity.COLLECT, Activity.ORGANIZER):
        alone, several = words(deck_for(activity, teams=1)), words(deck_for(activity))
        for part in ("another team", "All teams’", "from another"):
            assert part not in alone
        assert "another" in several
    told_alone = words(deck_for(Activity.ORGANIZER, teams=1))
    assert not [
        part for part in ("next table", "to the next", "Half of each") if part in told_alone
    ]


@pytest.mark.parametrize("activity", Activity)
@pytest.mark.parametrize("ink", [Ink.COLOUR, Ink.GREY])
def test_no_team_is_told_by_its_colour(activity, ink):
    made = deck_for(activity, ink=ink)
    paper = page_paper(made.recipe.paper)
    kept = " ".join(
        text for b in keeping(made, column(paper)) for text in [t.text for t in texts_in(b.frame)]
    )
    for part in ("every colour", "another colour", "’s colour"):
        assert part not in words(made) + kept


def test_points_are_those_of_the_recipe():
    text = words(deck_for(Activity.ROUNDS, points=Points(3, 2, 0)))
    assert "Right: 3 points. Right and first down: 2 more. Write" in text
    assert "marks.xlsx" in text
    none = words(deck_for(Activity.ROUNDS, points=Points(0, 0, 0)))
    assert "No points are counted" in none
    assert "marks.xlsx" not in none


@pytest.mark.parametrize("activity", [each for each in Activity if each is not Activity.ORGANIZER])
def test_no_points_are_told_where_none_are_counted(activity):
    text = words(deck_for(activity, points=Points(0, 0, 0)))
    assert "No points are counted" in text
    for part in (
        "each point",
        "no points for",
        "is no points",
        "A tie",
        "then fall away",
        "Add up",
    ):
        assert part not in text
    assert "No points are counted" not in words(deck_for(activity))


@pytest.mark.parametrize(
    ("points", "counts"),
    [
        (Points(0, 1, 0), "Right and first down: 1 point. Write"),
        (Points(0, 0, 2), "Moved together, each in their own way: 2 points, right or not. Write"),
        (Points(2, 0, 1), "Right: 2 points. Moved together, each in their own way: 1 more, right"),
    ],
)
def test_points_are_more_only_than_others(points, counts):
    assert f"What counts {counts}" in words(deck_for(Activity.ROUNDS, points=points))


def test_what_earns_no_point_is_not_noted_and_does_not_fall_away():
    text = words(deck_for(Activity.ROUNDS, points=Points(2, 0, 0)))
    assert "is noted" not in text
    assert "fall away" not in text
    every = words(deck_for(Activity.ROUNDS))
    assert "The first team whose paper is down is noted." in every
    assert "then fall away" in every


def test_the_next_set_of_tents_is_put_before_the_old_one():
    assert "in front of the old cards" in words(deck_for(Activity.STATIONS, sides=Sides.TENT))
    assert "on the old cards" in words(deck_for(Activity.STATIONS))


def test_the_base_plan_is_said_to_tell_of_taking_bases_away_only_where_it_does():
    # 10 sets of 3 for 24 students: three bases at first as at last
    assert "take a base away" not in words(deck_for(Activity.STATIONS, rounds=10))
    assert "take a base away or add one" in words(deck_for(Activity.STATIONS))
    # 32 students at all six bases; the second set has five cards
    uneven = words(deck_for(Activity.STATIONS, items=ASKED[:11], rounds=2, students=32))
    assert "The base plan says when to take a base away. " in uneven
    # two bases of five are laid out, so that none goes
    few = words(deck_for(Activity.STATIONS, items=ASKED[:9], rounds=2, students=6))
    assert "take a base away" not in few


def test_one_base_is_not_told_of_others():
    text = words(deck_for(Activity.STATIONS, items=ASKED[:1]))
    for part in (
        "another base",
        "to another",
        "Rotation",
        "Between bases",
        "share a base",
        "apart,",
    ):
        assert part not in text
    assert "nobody is touched" in text.lower()


def test_sets_that_would_lie_too_shortly_are_kept_for_another_day():
    # 30 questions in 6 sets of 5; 12 minutes are three times four
    text = words(deck_for(Activity.STATIONS, rounds=6, minutes=12))
    assert "12 minutes are right for sets 1 to 3; keep the others for another day" in text
    assert "After 4 and 8 minutes give the stop signal" in text
    all_of_them = words(deck_for(Activity.STATIONS, rounds=3, minutes=12))
    assert "All 3 sets are for today, about 4 minutes each" in all_of_them


def test_one_is_not_told_as_several_at_the_bases():
    # 16 students want six bases of seven, and one catcher
    few = words(deck_for(Activity.STATIONS, items=ASKED[:7], rounds=1, students=16))
    assert " Their numbers are those of the bases; the other waits with you. " in few
    assert "1 band or coloured sheet for the catcher, " in few
    several = words(deck_for(Activity.STATIONS, items=ASKED[:8], rounds=1, students=16))
    assert " Their numbers are those of the bases; the other 2 wait with you. " in several
    assert "number is that of its base" not in several
    assert "2 bands or coloured sheets for the catchers, " in words(deck_for(Activity.STATIONS))


def test_who_comes_back_to_an_only_base_writes_its_card_down_once():
    alone = words(deck_for(Activity.STATIONS, items=ASKED[:1], rounds=1))
    assert "walks off and may come back" in alone
    assert ". The first time write the card’s number on your slip, with a tick if" in alone


def test_two_sets_are_told_as_both_and_one_that_is_kept_as_the_other():
    two = words(deck_for(Activity.STATIONS, rounds=2, minutes=8))
    assert "Both sets are for today, about 4 minutes each" in two
    kept = words(deck_for(Activity.STATIONS, rounds=2, minutes=7))
    assert "7 minutes are right for set 1; keep the other for another day" in kept


@pytest.mark.parametrize("activity", [Activity.REVIEW, Activity.COLLECT, Activity.ORGANIZER])
def test_the_cards_of_one_team_are_told_once(activity):
    many = len(DETAILS if activity is Activity.ORGANIZER else ASKED)
    (alone,) = [n for n in play_of(deck_for(activity, teams=1)).needs if n.startswith("cards.pdf")]
    assert alone == f"cards.pdf, cut: {many} cards"
    copies = deck_for(activity, teams=2, deal=Dealing.COPIES)
    (both,) = [n for n in play_of(copies).needs if n.startswith("cards.pdf")]
    whose = "group" if activity is Activity.ORGANIZER else "team"
    assert both.startswith(f"cards.pdf, cut: {2 * many} cards, {many} a {whose}")


def test_one_group_that_stayed_at_its_table_does_not_walk_home():
    alone = play_of(deck_for(Activity.ORGANIZER, teams=1)).steps[-1].text
    assert alone == "The cards are counted back: 12 cards."
    assert "Everyone walks home" in words(deck_for(Activity.ORGANIZER))


def test_one_set_is_never_changed():
    assert "next pile" not in words(deck_for(Activity.STATIONS, rounds=1))


def test_parts_of_an_organisers_time_fill_it():
    titles = [part.title for part in play_of(deck_for(Activity.ORGANIZER, minutes=30)).steps]
    minutes = [int(title.split()[1]) for title in titles if title.endswith("min")]
    assert sum(minutes) == 30


def test_a_group_with_several_texts_takes_one_after_another():
    one = words(deck_for(Activity.ORGANIZER, deal=Dealing.SHARES))
    assert "one text after another" not in one
    assert "Write it on the planning sheet" in one
    several = words(deck_for(Activity.ORGANIZER, deal=Dealing.COPIES))
    assert "Take one text after another, steps 1 to 3 for each; the minutes are for all." in several
    assert "Write it on its planning sheet" in several


@pytest.mark.parametrize("support", Support)
def test_sheets_that_tell_of_headings_are_not_seen_before_these_were_looked_for(support):
    text = words(deck_for(Activity.ORGANIZER, support=support))
    told = "; the planning sheet face down until the cards are sorted" in text
    assert told is (support is not Support.NONE)


@pytest.mark.parametrize("activity", Activity)
def test_teams_of_one_student_are_told_to_be_fewer_where_they_do_something_together(activity):
    alone = "A team of one student cannot do this as told: take fewer teams"
    together = activity is not Activity.STATIONS
    for teams, students, is_told in ((4, 4, together), (4, 7, together), (4, 8, 0), (1, 1, 0)):
        assert (alone in words(deck_for(activity, teams=teams, students=students))) == is_told


def test_groups_with_one_text_tick_and_groups_with_several_look_for_what_is_common():
    same = words(deck_for(Activity.ORGANIZER, deal=Dealing.COPIES))
    several = words(deck_for(Activity.ORGANIZER, deal=Dealing.SHARES))
    assert "in common" not in same
    assert "in common" in several
    assert "“Text 0” and “Text 1”" in same
