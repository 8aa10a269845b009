"""Names of elements and attributes, by the schema of OpenDocument 1.3 (OASIS), part 3."""

_NAMESPACES = {
    "office": "urn:oasis:names:tc:opendocument:xmlns:office:1.0",
    "table": "urn:oasis:names:tc:opendocument:xmlns:table:1.0",
    "text": "urn:oasis:names:tc:opendocument:xmlns:text:1.0",
    "style": "urn:oasis:names:tc:opendocument:xmlns:style:1.0",
    "fo": "urn:oasis:names:tc:opendocument:xmlns:xsl-fo-compatible:1.0",
    "draw": "urn:oasis:names:tc:opendocument:xmlns:drawing:1.0",
    "calcext": "urn:org:documentfoundation:names:experimental:calc:xmlns:calcext:1.0",
}
BETWEEN = " "


def name(short: str) -> str:
    """Return the full name of `table:table`, as the parser gives it."""
    prefix, _, local = short.partition(":")
    return f"{_NAMESPACES[prefix]}{BETWEEN}{local}"


DRAWN = name("draw:")
