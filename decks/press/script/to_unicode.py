"""ToUnicode maps: the text that each code of a font shows (ISO 32000-1, §9.10.3)."""

from collections.abc import Sequence

LINES = 100
"""The most lines that one section of a map may have."""


def to_unicode(texts: Sequence[str]) -> str:
    """Return the map for the two-byte codes 0, 1, 2…."""
    lines = [f"<{code:04X}> <{_utf_16(text)}>" for code, text in enumerate(texts)]
    parts = [lines[at : at + LINES] for at in range(0, len(lines), LINES)]
    sections = [f"{len(part)} beginbfchar\n" + "\n".join(part) + "\nendbfchar" for part in parts]
    return "\n".join(
        [
            "/CIDInit /ProcSet findresource begin",
            "12 dict begin",
            "begincmap",
            "/CIDSystemInfo << /Registry (Adobe) /Ordering (UCS) /Supplement 0 >> def",
            "/CMapName /Adobe-Identity-UCS def",
            "/CMapType 2 def",
            "1 begincodespacerange",
            "<0000> <FFFF>",
            "endcodespacerange",
            *sections,
            "endcmap",
            "CMapName currentdict /CMap defineresource pop",
            "end",
            "end",
        ]
    )


def _utf_16(text: str) -> str:
    """Return a text as the hexadecimal digits of its UTF-16, high byte first."""
    return text.encode("utf-16-be").hex().upper()
