"""The tones of the workbooks that we write, those of the papers: `AARRGGBB`."""

INK, QUIET, LINK = "FF1E2333", "FF5B6172", "FF1F5C99"
HAIRLINE, PANEL, NEEDED = "FFC9CCD6", "FFF1F2F7", "FFDDE1EE"


def letters_on(tone: str) -> str:
    """Return the tone of letters that can be read on a tone `AARRGGBB`: ink, or white."""
    red, green, blue = (_light(int(tone[i : i + 2], 16)) for i in (2, 4, 6))
    luminance = 0.2126 * red + 0.7152 * green + 0.0722 * blue
    # Above this, ink stands out more than white does (WCAG 2.2, relative luminance).
    return INK if luminance > 0.21 else "FFFFFFFF"  # noqa: PLR2004


def _light(value: int) -> float:
    """Return the linear light of an sRGB value from 0 to 255 (IEC 61966-2-1)."""
    share = value / 255
    return share / 12.92 if share <= 0.04045 else ((share + 0.055) / 1.055) ** 2.4  # noqa: PLR2004
