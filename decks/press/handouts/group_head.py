"""The head of a page that a group works on: which text, whose it is, and the date."""

from decks.deck import Deck
from decks.layout.frame import Frame
from decks.press.handouts.guide_type import GuideType
from decks.press.handouts.sheet_head import sheet_head


def group_header(  # noqa: PLR0913 (what it says, and for whom)
    deck: Deck, title: str, what: str, width: float, *, sizes: GuideType, team: int | None
) -> Frame:
    """Return the head; without a team there is a line for the group's name.

    `title` may be blank: the deck's title stands for it.
    """
    whose = [] if team is None else [deck.owners[team].name]
    where = [deck.recipe.title] if title else []
    group = [("Group", sizes.name)] if team is None else []
    return sheet_head(
        title or deck.recipe.title,
        " · ".join([what, *where, *whose]),
        [*group, ("Date", sizes.date)],
        width,
        sizes,
        team=team,
        below=16,
    )
