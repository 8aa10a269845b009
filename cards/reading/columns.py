"""Which column holds what."""

from collections.abc import Mapping

from msgspec import Struct

from cards.item import Kind
from cards.reading.role import Role

# Which two columns make a card, front and back; the first pair that is there is taken.
_PAIRS = (
    (Role.MEANING, Role.WORD),
    (Role.QUESTION, Role.ANSWER),
    (Role.PROMPT, Role.ANSWER),
    (Role.DETAIL, Role.HEADING),
    (Role.MEANING, Role.ANSWER),
    (Role.QUESTION, Role.WORD),
    (Role.PROMPT, Role.WORD),
    (Role.WORD, Role.ANSWER),
    (Role.QUESTION, Role.MEANING),
    (Role.PROMPT, Role.MEANING),
    (Role.DETAIL, Role.ANSWER),
)
FRONTS = frozenset(front for front, _ in _PAIRS)
BACKS = frozenset(back for _, back in _PAIRS)
_KINDS = {
    Role.MEANING: Kind.VOCABULARY,
    Role.WORD: Kind.VOCABULARY,
    Role.QUESTION: Kind.QUESTION,
    Role.DETAIL: Kind.DETAIL,
}

Roles = Mapping[int, Role]


class Columns(Struct, frozen=True):
    """The columns that make items, counted from 1; None or nothing where there is no such column.

    `last` is the last column that has a heading; `whole` are those of `wrong` that hold one choice
    each, whatever stands in it.
    """

    kind: Kind
    prompt: int
    answer: int
    last: int
    topic: int | None = None
    level: int | None = None
    team: int | None = None
    picture: int | None = None
    also_right: tuple[int, ...] = ()
    wrong: tuple[int, ...] = ()
    whole: frozenset[int] = frozenset()


def pair_of(roles: Roles) -> tuple[Role, Role] | None:
    """Return the roles of the two columns that make a card, or None if one is wanting."""
    present = set(roles.values())
    return next((pair for pair in _PAIRS if present.issuperset(pair)), None)


def columns_of(roles: Roles, *, last: int, kind: Kind | None = None) -> Columns | None:
    """Return the columns under these headings, or None if no two of them make a card.

    `kind` is the kind that the sheet's name tells: it counts where the headings tell none.
    """
    pair = pair_of(roles)
    if pair is None:
        return None
    front, back = pair
    return Columns(
        kind=_KINDS.get(front) or kind or Kind.FACT,
        prompt=_all(roles, front)[0],
        answer=_all(roles, back)[0],
        last=last,
        topic=_first(roles, Role.TOPIC),
        level=_first(roles, Role.LEVEL),
        team=_first(roles, Role.TEAM),
        picture=_first(roles, Role.PICTURE),
        also_right=_all(roles, Role.ALSO_RIGHT),
        wrong=_all(roles, Role.WRONG),
    )


def _all(roles: Roles, role: Role) -> tuple[int, ...]:
    return tuple(column for column in sorted(roles) if roles[column] is role)


def _first(roles: Roles, role: Role) -> int | None:
    return next(iter(_all(roles, role)), None)
