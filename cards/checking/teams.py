"""Items that are pinned to a team."""

from collections.abc import Iterator, Sequence

from cards.checking.rule import Remark
from cards.content import Content
from cards.item import folded
from cards.quoting import quoted
from cards.reading.near import near_miss


def unknown_team(content: Content, team_names: Sequence[str]) -> Iterator[Remark]:
    """Find items that are pinned to a team that is not in the deck."""
    known = {folded(name) for name in team_names}
    for item in content.items:
        if item.team and item.team_place and folded(item.team) not in known:
            near = near_miss(item.team, team_names)
            yield Remark(
                item.team_place,
                item.team,
                f"{quoted(item.team)} is not one of the teams ({', '.join(team_names)}).",
                f"{f'Did you mean {near}? ' if near else ''}"
                "Write one of these, or clear the cell, or add the team to the Teams sheet.",
            )
