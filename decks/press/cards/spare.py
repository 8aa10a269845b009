"""Spare cards: a team's mark, and a line to write a lost word on."""

from decks.layout.frame import Frame, Line, Ribbon, Thing
from decks.press.cards.faces import framed_label, name_of, owners_mark, quiet_on
from decks.press.cards.shape import Shape
from decks.press.type.setting import Style, line_of
from decks.team import Team

TOLD = "Write the lost word here"
LABEL = "spare"


def spare_face(team: int, owner: Team, shape: Shape) -> Frame:
    """Return one side of a spare card; its back is that of any card where backs tell the owner."""
    if shape.back:
        return owners_mark(team, owner, shape)
    line = shape.bottom + 0.42 * shape.text_height
    right = shape.left + shape.text_width
    style = Style(shape.label_size, tone=quiet_on(shape))
    things: list[Thing] = [
        *([Ribbon(*shape.ribbon_box, team)] if shape.ribbon else []),
        line_of(TOLD, style, x=shape.left, y=shape.height - shape.inset - 0.95 * style.size),
        Line(shape.left, line, right, line, 0.7),
        name_of(owner, shape),
        *framed_label(LABEL, shape),
    ]
    return Frame(shape.width, shape.height, tuple(things))
