"""Other right answers that are written as one."""

import re
from collections import defaultdict
from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.checking.where import also_right_place
from cards.content import Content
from cards.item import Item, folded
from cards.place import Place
from cards.quoting import quoted

# Not a comma or slash of a number, nor the slash of a unit such as km/h.
_BETWEEN = re.compile(r",(?!\d)|\s/|/\s|(?<=\w{3})/(?=\w{3})")
_LEAST = 4
# Of so many cells one may hold one answer.
_NEARLY_ALL = 10


def several_right_in_one(content: Content) -> Iterator[Remark]:
    """Find columns of other right answers of which nearly all cells are lists, without semicolons.

    A few such cells may be meant, and so may a list where the answer is one, a name with its parts
    turned round, or the answer with more said of it, as “Paris, France”.
    """
    columns: dict[tuple[str, int], dict[Place, list[tuple[Item, str]]]] = defaultdict(dict)
    for item in content.items:
        for number, text in enumerate(item.also_right):
            place = also_right_place(item, number)
            columns[place.sheet, place.column].setdefault(place, []).append((item, text))
    for cells in columns.values():
        if max(map(len, cells.values())) == 1:
            yield from _remarks({place: inside[0] for place, inside in cells.items()})


def _remarks(cells: dict[Place, tuple[Item, str]]) -> Iterator[Remark]:
    lists = [place for place, (item, text) in cells.items() if _is_list(item, text)]
    if len(lists) >= max(_LEAST, len(cells) - len(cells) // _NEARLY_ALL):
        yield _remark(lists[0], cells[lists[0]][1])


def _is_list(item: Item, text: str) -> bool:
    parts = _BETWEEN.split(text)
    if len(parts) == 1 or not all(any(map(str.isalpha, part)) for part in parts):
        return False
    answer = folded(item.answer)
    turned = set(re.findall(r"\w+", answer)).issuperset(re.findall(r"\w+", folded(text)))
    explained = answer in map(folded, parts)
    return not (turned or explained or _BETWEEN.search(item.answer))


def _remark(place: Place, text: str) -> Remark:
    return Remark(
        place,
        text,
        f"In this column commas or slashes stand between texts, as in {quoted(text)}; each cell is "
        "read as one answer that is right as well.",
        "If a cell holds several, part them with semicolons.",
    )
