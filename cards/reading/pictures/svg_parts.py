"""What of an SVG drawing is kept: shapes, letters, paints, and nothing that reaches outside.

Names are those of SVG 1.1 (Second Edition). There are no scripts, animations, pages of other
kinds, fonts or filters among them, and links lead to parts of the same drawing only.
"""

import re
from collections.abc import Iterator, Mapping
from xml.etree import ElementTree as ET

SVG = "{http://www.w3.org/2000/svg}"
XLINK = "{http://www.w3.org/1999/xlink}"
_SPACE = "{http://www.w3.org/XML/1998/namespace}space"
_NAMES = (
    *("svg", "g", "defs", "symbol", "use", "switch", "a", "style", "title", "desc"),
    *("path", "rect", "circle", "ellipse", "line", "polyline", "polygon", "image"),
    *("text", "tspan", "textPath", "linearGradient", "radialGradient", "stop", "pattern"),
    *("clipPath", "mask", "marker"),
)
KEPT = frozenset(SVG + name for name in _NAMES)
LINK = "href"

# Anything that is fetched is either written url(…), or imported by a style sheet.
_FETCHED = re.compile(
    r"url\((?!\s*['\"]?\s*#)[^)]*\)?|@import[^;]*;?|@font-face\s*\{[^}]*\}?", re.IGNORECASE
)
_FILTER = re.compile(r"(?<![\w-])filter\s*:[^;}]*")
# Comments and escapes could hide what is fetched.
_HIDING = re.compile(r"/\*.*?(?:\*/|$)|\\", re.DOTALL)
_DATA = re.compile(r"data:image/(?:png|jpe?g);base64,[A-Za-z0-9+/=\s]*")
_REFERENCES = re.compile(r"url\(\s*['\"]?#([^()'\"]*)['\"]?\s*\)")


def kept_attributes(given: Mapping[str, str]) -> Iterator[tuple[str, str]]:
    """Yield the attributes of an element that are safe, made safe where they are styles."""
    for name, value in given.items():
        bare = name.removeprefix(XLINK)
        if bare == LINK:
            if value.strip().startswith("#"):
                yield XLINK + LINK, value.strip()
        elif name == _SPACE:
            yield name, value
        elif not name.startswith("{") and not bare.startswith("on") and bare != "filter":
            yield name, safe_style(value)


def safe_style(text: str) -> str:
    """Return a style, or any value, that fetches nothing and names no filter."""
    return _FILTER.sub("", _FETCHED.sub("none", _HIDING.sub("", text)))


def embedded(given: Mapping[str, str]) -> str | None:
    """Return the picture that an image element holds in itself, or None."""
    link = given.get(XLINK + LINK) or given.get(LINK) or ""
    return link.strip() if _DATA.fullmatch(link.strip()) else None


def references_of(element: ET.Element) -> Iterator[str]:
    """Yield the names of the parts that an element draws with."""
    link = element.get(XLINK + LINK, "")
    if link.startswith("#"):
        yield link[1:]
    for value in element.attrib.values():
        yield from _REFERENCES.findall(value)
