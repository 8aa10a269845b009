"""Whether the teams' colours can be told apart: by every eye in ink, by their names on stock."""

from collections.abc import Iterator

from cards.content import Cell
from cards.finding import Finding, Severity
from cards.place import Place
from decks.colour import Sight, apart, apart_for, choose, contrast, difference, lab
from decks.roster import Roster
from decks.team import COLOURS, DARK_STOCK, STOCK, WHITE, Team, colour_word, stock_name

PALEST = 1.5
"""The least contrast with white paper; WCAG 2.2 asks 3 of a mark that has nothing else to tell it,
which no yellow reaches. Below half of it a ribbon and its texture are hardly seen at all."""

ENOUGH = 1.0

ONE_COLOUR = 0.2
"""Below this part of what is asked, two inks are called the same (a ΔE00 of 4)."""


def about_inks(roster: Roster) -> Iterator[Finding]:
    """Yield what is wrong with the colours that were given, where teams are told by ink.

    Greys that come near are not found: textures are there for copiers, and blue, red and green
    would always be.
    """
    for index, (team, cell) in enumerate(zip(roster.teams, roster.given, strict=True)):
        if cell is None:
            continue
        if contrast(team.colour) < PALEST:
            yield _pale(team, cell, roster)
        elif near := _nearest(team, roster, before=index):
            yield from _close(team, near, cell, roster)


def about_stock(roster: Roster) -> Iterator[Finding]:
    """Yield what is wrong with the colours where each team is printed on stock of its colour."""
    first: dict[str, Team] = {}
    for team, given in zip(roster.teams, roster.given, strict=True):
        cell = given or Cell("", Place("Teams"))
        stock = stock_name(team)
        if stock == DARK_STOCK:
            yield _dark(team, cell, roster)
        earlier = first.setdefault(stock, team)
        if earlier is not team:
            yield _same_stock(team, earlier, cell, roster)


def _nearest(team: Team, roster: Roster, *, before: int) -> Team | None:
    """Return the earlier team of a given colour that is hardest to tell from this one."""
    earlier = [
        other
        for other, cell in zip(roster.teams[:before], roster.given, strict=False)
        if cell is not None
    ]
    return min(earlier, key=lambda other: apart(team.colour, other.colour), default=None)


def _close(team: Team, near: Team, cell: Cell, roster: Roster) -> Iterator[Finding]:
    told = apart(team.colour, near.colour)
    better = _better(team, roster)
    if told < ENOUGH and told < min(apart(COLOURS[better], ink) for ink in _others(team, roster)):
        wrong = f"The colour of {team.name} is {_likeness(team, near)}."
        mend = f"Texture and name still tell the teams; {better} would do it by colour too."
        yield _finding("close-colours", Severity.WARNING, cell, wrong, mend)


def _likeness(team: Team, near: Team) -> str:
    if apart_for(Sight.NORMAL, team.colour, near.colour) < ONE_COLOUR:
        return f"the same as that of {near.name}"
    to_whom = ""
    if apart_for(Sight.NORMAL, team.colour, near.colour) >= ENOUGH:
        to_whom = " to colour-blind eyes"
    return f"too close to that of {near.name}{to_whom}"


def _pale(team: Team, cell: Cell, roster: Roster) -> Finding:
    white = team.colour == WHITE
    darker = _better(team, roster) if white else _nearest_word(team, roster)
    wrong = f"The colour of {team.name} is too pale to be seen on white paper."
    mend = f"Take a darker one, such as {darker}."
    return _finding("pale-colour", Severity.WARNING, cell, wrong, mend)


def _dark(team: Team, cell: Cell, roster: Roster) -> Finding:
    wrong = f"{team.name} would be printed on {DARK_STOCK} paper, where nothing can be read."
    mend = f"Take a light colour for this team, such as {_free(team, roster, STOCK)[0]}."
    return _finding("dark-stock", Severity.ERROR, cell, wrong, mend)


def _same_stock(team: Team, earlier: Team, cell: Cell, roster: Roster) -> Finding:
    stock = stock_name(team)
    wrong = f"{team.name} and {earlier.name} would both be printed on {stock} paper."
    mend = f"Take another colour for one of them, such as {_free(team, roster, STOCK)[0]}."
    return _finding("same-stock", Severity.ERROR, cell, wrong, mend)


def _finding(code: str, severity: Severity, cell: Cell, wrong: str, mend: str) -> Finding:
    return Finding(code, severity, cell.place, cell.text, wrong, mend)


def _better(team: Team, roster: Roster) -> str:
    """Return the colour word that goes best with the other teams."""
    inks = [COLOURS[word] for word in _free(team, roster, list(COLOURS))]
    (ink,) = choose(1, inks, _others(team, roster))
    return colour_word(ink)


def _nearest_word(team: Team, roster: Roster) -> str:
    """Return the colour word that is free and looks most like the team's colour."""
    own = lab(team.colour)
    free = _free(team, roster, list(COLOURS))
    return min(free, key=lambda word: difference(lab(COLOURS[word]), own))


def _free(team: Team, roster: Roster, words: list[str]) -> list[str]:
    """Return the words that are not what the colour of any other team is called."""
    taken = {colour_word(ink) for ink in _others(team, roster)}
    return [word for word in words if word not in taken]


def _others(team: Team, roster: Roster) -> list[str]:
    return [other.colour for other in roster.teams if other is not team]
