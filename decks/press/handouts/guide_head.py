"""The head of a study guide's page: what it is, whose it is, and where to write one's name."""

from decks.bank import Guide
from decks.deck import Deck
from decks.layout.frame import Frame
from decks.press.handouts.guide_type import GuideType
from decks.press.handouts.sheet_head import sheet_head


def guide_header(
    deck: Deck, guide: Guide, width: float, sizes: GuideType, *, second: bool = False
) -> Frame:
    """Return the head of every page of a guide; in large print the name has a line of its own."""
    parts = ["Study guide", *(["second version"] if second else []), guide.team or "everyone"]
    names = [team.name for team in deck.recipe.teams]
    return sheet_head(
        deck.recipe.title,
        " · ".join(parts),
        [("Name", sizes.name), ("Date", sizes.date)],
        width,
        sizes,
        team=None if guide.team is None else names.index(guide.team),
        below=18,
    )
