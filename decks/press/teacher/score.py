"""The score sheet for pencil: teams across, questions down, and sums as the lesson goes on."""

from collections.abc import Sequence

from msgspec import Struct
from msgspec.structs import replace

from decks.deck import Deck
from decks.layout.flow import Block
from decks.layout.frame import Box, Frame, Line, Placed, Text, Thing
from decks.layout.units import mm
from decks.lesson import Called
from decks.press.teacher.keys import title_block
from decks.press.type.setting import Style, line_of, swatch, upright, width_of
from decks.recipe import Points

NAME = Style(10, strong=True)
LETTER = Style(9, tone="quiet")
ROUND = Style(10, strong=True)
LABEL = Style(10, tone="quiet")

MARGIN_WIDTH = 78.0
"""The column at the left, for the labels of the cards and the names of the sums."""

WIDEST = 120.0
BETWEEN = 10.0
"""The widest a team's column is, and the white between two teams' places."""

TICK, LEAST_TICK = mm(8), mm(4.9)
"""How wide a place to tick is; where it would be smaller, a team gets one place for a number."""

NUMBER = mm(14)
CLOSE = 2.0
ROW, ROOMY_ROW, SUM_ROW, HEAD_ROW = 17.5, 22.0, 21.0, 19.0
FEW = 24
"""So many questions have room for roomy rows on one page."""

LONGEST_NAME = 84.0
RIBBON = 8.0


class Way(Struct, frozen=True):
    """A way to earn points: its letter on the sheet, what it stands for, and how many."""

    letter: str
    meaning: str
    points: int


class Plan(Struct, frozen=True):
    """The columns of a sheet; `ways` are those with a place to tick, none for a number."""

    names: tuple[str, ...]
    first_ribbon: int
    ways: tuple[Way, ...]
    each: float
    places: float
    row: float

    @property
    def width(self) -> float:
        """The width of the whole sheet."""
        return MARGIN_WIDTH + self.each * len(self.names)

    def x(self, team: int) -> float:
        """Return where a team's places begin."""
        return MARGIN_WIDTH + self.each * team + (self.each - self.places) / 2


def score_sheet(deck: Deck, called: Called, width: float) -> list[Block]:
    """Return the score sheet; every page has the names of the teams at its head.

    There is none where no points are counted. A round stays on one page. The ribbons of teams
    have the numbers after those of the owners, which are the rounds.
    """
    ways = ways_of(deck.points)
    if not ways:
        return []
    plan = _plan(deck, ways, width)
    title = title_block("Score sheet", _subtitle(ways, plan, len(called.rounds)), width)
    head = _head(plan)
    blocks = [title, Block(head, space=16, with_next=True)]
    for number, calls in enumerate(called.rounds):
        labels = [call.label for call in calls]
        rows = _round(deck.owners[number].name, labels, plan)
        rows += _sums(number, deck.owners[number].name, len(called.rounds), plan)
        blocks += [replace(block, head=head) for block in rows]
    return blocks


def is_ticked(deck: Deck, width: float) -> bool:
    """Say whether every way to earn points has a place of its own, and not one number all."""
    return bool(_plan(deck, ways_of(deck.points), width).ways)


def ways_of(points: Points) -> tuple[Way, ...]:
    """Return the ways in which points are earned in this deck."""
    ways = (
        Way("R", "right", points.right),
        Way("F", "right and first", points.first),
        Way("T", "moving together", points.together),
    )
    return tuple(way for way in ways if way.points)


def _subtitle(ways: Sequence[Way], plan: Plan, rounds: int) -> str:
    when = "after each round" if rounds > 1 else "at the end"
    alike = len({way.points for way in ways}) == 1 and ways[0].points == 1
    meanings = ", ".join(
        f"{way.letter} {way.meaning}{'' if alike else f' ({way.points})'}" for way in ways
    )
    if plan.ways:
        rest = "Count the ticks" if alike else "Add up the points"
        team = "the team" if len(plan.names) == 1 else "a team"
        return f"Tick what {team} earns: {meanings}. {rest} {when}."
    most = sum(way.points for way in ways)
    worth = " + ".join(f"{way.points} {way.meaning}" for way in ways)
    ring = " Put a ring round points with a right answer among them." if _has_right(ways) else ""
    return f"Write each team’s points, 0 to {most}: {worth}.{ring} Add up {when}."


def _has_right(ways: Sequence[Way]) -> bool:
    """Say whether some of the points are for a right answer: marks ask how many teams had it."""
    return any(way.letter == "R" for way in ways)


def _plan(deck: Deck, ways: tuple[Way, ...], width: float) -> Plan:
    names = tuple(team.name for team in deck.recipe.teams)
    each = min(WIDEST, (width - MARGIN_WIDTH) / len(names))
    room = each - BETWEEN
    gaps = (len(ways) - 1) * CLOSE
    row = ROOMY_ROW if len(deck.cards) <= FEW else ROW
    if len(ways) * LEAST_TICK + gaps > room:
        return Plan(names, len(deck.owners), (), each, min(room, NUMBER), row)
    places = min(len(ways) * TICK + gaps, room)
    return Plan(names, len(deck.owners), ways, each, places, row)


def _head(plan: Plan) -> Frame:
    """Return the teams' names with their ribbons, and the letters of their places."""
    turn = any(width_of(name, NAME) > plan.each - RIBBON - 8 for name in plan.names)
    top = min(LONGEST_NAME, max(width_of(name, NAME) for name in plan.names)) if turn else 14
    letters = HEAD_ROW if plan.ways else 8.0
    height = letters + top + (26 if turn else 4)
    things: list[Thing] = [Line(0, 0.5, plan.width, 0.5, 0.6, "frame")]
    for team, name in enumerate(plan.names):
        ribbon = swatch(plan.first_ribbon + team, width=RIBBON, height=20 if turn else 14)
        middle = plan.x(team) + plan.places / 2
        if turn:
            things.append(Placed(middle - RIBBON / 2, letters, ribbon))
            turned = upright(name, NAME, longest=LONGEST_NAME)
            things.append(Placed(middle - turned.width / 2, letters + 24, turned))
        else:
            left = middle - (RIBBON + 5 + width_of(name, NAME)) / 2
            things.append(Placed(left, letters + 1, ribbon))
            things.append(line_of(name, NAME, x=left + RIBBON + 5, y=letters + 4.5))
        things += _letters(plan, team)
    return Frame(plan.width, height, tuple(things))


def _letters(plan: Plan, team: int) -> list[Text]:
    return [
        line_of(way.letter, LETTER, x=x + (wide - width_of(way.letter, LETTER)) / 2, y=5.5)
        for way, (x, wide) in zip(plan.ways, _places(plan, team), strict=True)
    ]


def _places(plan: Plan, team: int) -> list[tuple[float, float]]:
    """Return where a team's places begin and how wide they are; one for each way if ticked."""
    count = len(plan.ways)
    if not count:
        return []
    wide = (plan.places - (count - 1) * CLOSE) / count
    return [(plan.x(team) + n * (wide + CLOSE), wide) for n in range(count)]


def _round(name: str, labels: Sequence[str], plan: Plan) -> list[Block]:
    title = Frame(plan.width, HEAD_ROW, (line_of(name, ROUND, y=5),))
    rows = [Block(_question(label, plan), with_next=True) for label in labels]
    return [Block(title, space=4, with_next=True), *rows]


def _question(label: str, plan: Plan) -> Frame:
    things: list[Thing] = [line_of(f"Card {label}", LABEL, x=10, y=plan.row / 2 - 3.6)]
    for team in range(len(plan.names)):
        spans = _places(plan, team) or [(plan.x(team), plan.places)]
        things += [Box(x, 1.2, wide, plan.row - 2.4, radius=2, stroke="frame") for x, wide in spans]
    return Frame(plan.width, plan.row, tuple(things))


def _sums(number: int, name: str, rounds: int, plan: Plan) -> list[Block]:
    """Return the sum of a round and the sum so far; the last of these is the total."""
    before = f"Rounds 1 {'and' if number == 1 else 'to'} {number + 1}" if number else ""
    so_far = "Total" if number == rounds - 1 else before
    sums = [] if rounds == 1 else [_sum(f"{name}: sum", plan)]
    if so_far:
        sums.append(_sum(so_far, plan, fill="panel"))
    return [Block(each, with_next=n < len(sums) - 1) for n, each in enumerate(sums)]


def _sum(line: str, plan: Plan, *, fill: str | None = None) -> Frame:
    boxes = [
        Box(plan.x(team), 2, plan.places, SUM_ROW - 4, radius=2, fill=fill, stroke="rule")
        for team in range(len(plan.names))
    ]
    return Frame(plan.width, SUM_ROW, (line_of(line, ROUND, y=6.5), *boxes))
