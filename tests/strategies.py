"""Hypothesis strategies for items and teams."""

from hypothesis import strategies as st

from cards.item import Item, Kind, Level
from cards.place import Place

TOPICS = ("Tides", "Zones", "Shells", "Birds", "Weed")
TEAMS = (
    *("Heron", "Otter", "Samphire", "Curlew", "Limpet", "Dunlin"),
    *("Whelk", "Redshank", "Sea-lavender", "Goby", "Sandhopper", "Oystercatcher"),
)


def card(number, level=1, topic="Tides", kind=Kind.VOCABULARY, **more):
    """Return the item in the given row of a sheet, with a prompt and an answer like no other."""
    return Item(
        prompt=f"clue {number}",
        answer=more.pop("answer", f"word {number}"),
        kind=kind,
        level=Level(level),
        topic=topic,
        prompt_place=Place("Vocabulary", number + 2, 2),
        answer_place=Place("Vocabulary", number + 2, 1),
        **more,
    )


TEAM_COUNTS = st.integers(1, len(TEAMS))


@st.composite
def decks(draw, *, most_cards=40, teams=TEAM_COUNTS, kinds=tuple(Kind), pins=False):
    """Draw items and team names; with `pins` some of the items are set to a team."""
    names = TEAMS[: draw(teams)]
    pinned = st.sampled_from([None, None, *names]) if pins else st.none()
    row = st.tuples(st.sampled_from(Level), st.sampled_from(TOPICS), st.sampled_from(kinds), pinned)
    rows = draw(st.lists(row, max_size=most_cards))
    items = [
        card(number, level, topic, kind, team=team)
        for number, (level, topic, kind, team) in enumerate(rows)
    ]
    return items, names
