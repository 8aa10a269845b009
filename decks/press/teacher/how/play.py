"""How an activity goes, in words, before anything is set on a page."""

from msgspec import Struct


class Part(Struct, frozen=True):
    """Something to do or to know: a title of a few words, and how it is done."""

    title: str
    text: str


class Play(Struct, frozen=True):
    """A lesson that can be run from one page.

    `name` says what is done, `lasts` for how long. `needs` and `setting` are made ready before the
    lesson, `steps` follow one another in it; before step number `moving` (from 0) people begin to
    move. `asides` hold for the whole lesson.
    """

    name: str
    lasts: str
    needs: tuple[str, ...]
    setting: tuple[str, ...]
    steps: tuple[Part, ...]
    moving: int
    asides: tuple[Part, ...]
