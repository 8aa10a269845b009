"""The parts of a card's side: where the ribbon stands, and what room there is to read in."""

from enum import Enum, auto
from functools import cached_property

from msgspec import Struct

from decks.layout.units import mm
from decks.recipe import Choices, Fractions

INSET = mm(5)
"""Nothing to be read is nearer to the trim: a millimetre of shift and of cut never shows."""

RIBBON = mm(4.5)
GAP = mm(4)
BLED_RIBBON = INSET + mm(2)
"""How much of a ribbon that runs over the trim is left on the card."""

LARGEST = 0.24
"""Letters larger than this share of the card's height shout at a reader who holds it."""

_LABELS = ((mm(80), 9), (mm(150), 11), (mm(200), 13))
_LARGEST_LABEL = 15


class Shows(Enum):
    """What a side of a card says: what is asked, what is right, or only whose it is."""

    PROMPT = auto()
    ANSWER = auto()
    OWNER = auto()


class Shape(Struct, frozen=True, dict=True):
    """A side of a card: its trimmed size in points, and whether it is the back.

    The ribbon stands on the same physical edge of the card: left in front, right behind. With a
    `bleed` it runs over the trim by so many points at its outer side, head and foot. Without a
    `ribbon` its room goes to what is to be read. `fractions` says how 3/4 is set, `choices`
    whether a question has its choices with it, `says` what stands on the side, as a rule the
    prompt in front and the answer behind, with its `topic` above it; `read_from` from how many
    millimetres it is to be read.
    """

    width: float
    height: float
    back: bool
    bleed: float = 0
    inset: float = INSET
    ribbon: bool = True
    fractions: Fractions = Fractions.PLAIN
    choices: Choices = Choices.HIDDEN
    read_from: float = 400
    says: Shows | None = None
    topic: bool = True

    @cached_property
    def shows(self) -> Shows:
        """What stands on the side."""
        return self.says or (Shows.ANSWER if self.back else Shows.PROMPT)

    @cached_property
    def label_size(self) -> float:
        """The size of the small labels, in points."""
        sizes = (size for height, size in _LABELS if self.height < height)
        return next(sizes, _LARGEST_LABEL)

    @cached_property
    def largest(self) -> float:
        """The largest size for what is to be read, where no distance asks for a larger one."""
        return LARGEST * self.height

    @cached_property
    def air(self) -> float:
        """The white between what is to be read and the small labels."""
        return mm(2.6) if self.height < mm(80) else 0.4 * mm(self.label_size)

    @cached_property
    def ribbon_box(self) -> tuple[float, float, float, float]:
        """The ribbon's lower left corner, width and height."""
        if not self.bleed:
            x = self.width - self.inset - RIBBON if self.back else self.inset
            return x, self.inset, RIBBON, self.height - 2 * self.inset
        x = self.width - BLED_RIBBON if self.back else -self.bleed
        return x, -self.bleed, BLED_RIBBON + self.bleed, self.height + 2 * self.bleed

    @cached_property
    def _beside(self) -> float:
        return RIBBON + GAP if self.ribbon else 0

    @cached_property
    def left(self) -> float:
        """The left edge of what is to be read."""
        return self.inset if self.back else self.inset + self._beside

    @cached_property
    def text_width(self) -> float:
        """The width for what is to be read."""
        return self.width - 2 * self.inset - self._beside

    @cached_property
    def bottom(self) -> float:
        """The lower edge of what is to be read: above the team's name and the label."""
        return self.inset + 1.4 * self.label_size + self.air

    @cached_property
    def text_height(self) -> float:
        """The height for what is to be read: below the topic."""
        return self.height - self.inset - self.label_size - self.air - self.bottom
