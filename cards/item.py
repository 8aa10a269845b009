"""One row of content."""

import hashlib
import unicodedata
from collections.abc import Iterable
from enum import IntEnum, StrEnum

from msgspec import Struct

from cards.picture import Picture
from cards.place import Place
from cards.style import Spans


class Kind(StrEnum):
    """What an item is, by the sheet or the headings it stands under."""

    VOCABULARY = "vocabulary"
    FACT = "fact"
    QUESTION = "question"
    DETAIL = "detail"


class Level(IntEnum):
    """How hard an item is, as the teacher sees it."""

    EASY = 1
    MEDIUM = 2
    HARD = 3

    @property
    def expected_share(self) -> float:
        """The share of students expected to get such an item right before there are marks.

        Our own judgement: an even mix gives .75, a little under the share of about .80 right in
        good lessons (Rosenshine 2012), and a hard item stays at .60, above mere guessing.
        """
        return {1: 0.90, 2: 0.75, 3: 0.60}[self]


class Item(Struct, frozen=True):
    """One row of content: what is asked, what is right, and where it belongs.

    `team` is the name of the team that the item is pinned to, or None. `wrong` holds the wrong
    choices, `also_right` the other right answers. Texts may hold line breaks. The places are those
    of the cells that the texts stand in; `also_right_places` and `wrong_places` go with the texts
    one by one. `topic_place` and `level_place` are None where the cell is blank. `picture` names a
    file in the workbook's folder, or is blank; `image` is the picture itself, be it that file's or
    one pasted into the row, and `picture_place` where it was named or pasted.
    """

    prompt: str
    answer: str
    kind: Kind
    level: Level
    topic: str
    prompt_place: Place
    answer_place: Place
    also_right: tuple[str, ...] = ()
    wrong: tuple[str, ...] = ()
    team: str | None = None
    team_place: Place | None = None
    prompt_spans: Spans = ()
    answer_spans: Spans = ()
    topic_place: Place | None = None
    level_place: Place | None = None
    also_right_places: tuple[Place, ...] = ()
    wrong_places: tuple[Place, ...] = ()
    picture: str = ""
    picture_place: Place | None = None
    image: Picture | None = None

    @property
    def key(self) -> str:
        """A short digest of prompt, picture and answer: the same from deck to deck.

        Capitals and styles say nothing here, so that mending them leaves an item what it was.
        """
        pictures = [self.image.digest] if self.image else []
        text = "\0".join([folded(self.prompt), *pictures, folded(self.answer)])
        return hashlib.sha256(text.encode()).hexdigest()[:12]


def topics_of(items: Iterable[Item]) -> dict[str, str]:
    """Return the topics of some items as they are compared, each as it is first spelt."""
    topics: dict[str, str] = {}
    for item in items:
        topics.setdefault(folded(item.topic), item.topic)
    return topics


def folded(text: str) -> str:
    """Return the text as it is compared: composed, caseless, every run of white space one space."""
    return " ".join(unicodedata.normalize("NFC", text).casefold().split())
