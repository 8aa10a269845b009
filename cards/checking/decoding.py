"""Text that was read in the wrong encoding somewhere on its way."""

import re
from collections.abc import Iterator

from cards.checking.rule import Remark
from cards.checking.where import also_right_place, topic_place, wrong_place
from cards.content import Content
from cards.item import Item
from cards.place import Place
from cards.quoting import quoted

# What UTF-8 looks like when read as cp1252: a letter that leads, and signs that follow. Signs that
# may follow a real capital (quotes, dashes, three dots, a hard space) count after small letters.
_SIGN = "\x81\x8d\x8f\x90\x9d€ƒ†‡ˆ‰Š‹ŒŽ˜™š›œžŸ¡-¿"
_ANY = f"{_SIGN}‚„…‘’“”•–—\xa0"
# Looked for in few texts, so it is compiled when the first of them comes.
_MANGLED = (
    rf"Ã[{_SIGN}]|(?<=[a-zà-ÿ])Ã[{_ANY}]|Â[\xa0-¿]|(?<=[a-z])[ÄÅ][{_ANY}]|[ÄÅ][{_ANY}](?=[a-z])"
    rf"|â€[{_ANY}]?|â‚¬|â[ˆ‰†„…][{_ANY}]|ï»¿|ðŸ|(?:[ÐÑ][{_ANY}]){{2,}}|(?:[ÎÏ][{_ANY}]){{2,}}"
    rf"|(?:[ØÙ][{_ANY}]){{2,}}|(?:×[{_ANY}]){{2,}}|(?:à[¤¥][{_ANY}])+|(?<=[a-z])√[©®°±≠§∂†º]"
    r"|(?<=[a-z])‚Ä[ôúù]"
)
_LOST = "\ufffd"


def wrongly_decoded(content: Content) -> Iterator[Remark]:
    """Find texts with marks of a wrong encoding: Ã© for é, â€™ for ’, or � for a lost letter."""
    for item in content.items:
        for place, text in dict(_texts(item)).items():
            mark = _mark(text)
            if mark:
                yield Remark(
                    place,
                    text,
                    f"{quoted(mark)} looks like a letter that was lost between two programs.",
                    "Type the letter again, here and wherever it looks like this; "
                    "or open the text anew as Unicode (UTF-8).",
                )


def _mark(text: str) -> str | None:
    if text.isascii():
        return None
    found = re.search(_MANGLED, text)
    return found[0] if found else _LOST if _LOST in text else None


def _texts(item: Item) -> Iterator[tuple[Place, str]]:
    """Yield the texts of an item that have a mark, with their cells."""
    texts = [(item.prompt_place, item.prompt), (item.answer_place, item.answer)]
    texts += [(topic_place(item), item.topic)]
    texts += [(wrong_place(item, number), text) for number, text in enumerate(item.wrong)]
    texts += [(also_right_place(item, number), text) for number, text in enumerate(item.also_right)]
    return ((place, text) for place, text in texts if _mark(text))
