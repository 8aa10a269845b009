"""Texts that pretend to be something else, or that hardly anybody would type."""

import unicodedata

MARKUP = (
    '<font color="red" size="900">loud</font>',
    '<img src="/etc/passwd" width="10" height="10"/>',
    '<img src="http://127.0.0.1:9/x.png"/>',
    '<a href="file:///etc/passwd">here</a>',
    "<para backColor='[[1]]'><b>never closed",
    "</para></b></font>",
    "&lt;b&gt; &amp;amp; &#x0; &nosuch; &",
    "<font color=\"[[[getattr(pow, Word('__self__')) for Word in [str]] for x in [1]]]\">x</font>",
    "<font color=\"toColor(__import__('os').system('id'))\">x</font>",
    "<!-- --> <![CDATA[x]]> <?xml version='1.0'?> <!DOCTYPE a>",
    "<onDraw name='x'/><seq id='a'/><evalString>1</evalString><bullet>x</bullet>",
)
"""Markup as text setters know it, with what they might fetch, run or choke on."""

OF_PDF = (
    ") Tj ET Q /JavaScript (app.alert(1)) endstream endobj",
    "\\(\\)\\101\\",
    "(((((",
    "%PDF-1.7 %%EOF",
)
FORMULAS = (
    "=1+1",
    '=HYPERLINK("http://127.0.0.1:9/","x")',
    '=WEBSERVICE("http://127.0.0.1:9/")',
    "+cmd|' /C calc'!A0",
    "-2+3",
    "@SUM(1)",
    "{=A1}",
)
PLACES = (
    "CON",
    "NUL",
    "aux.png",
    "../x",
    "../../../etc/passwd",
    "a/../../b.png",
    "/etc/passwd",
    "/dev/zero",
    "C:\\x.png",
    "\\\\server\\share\\x.png",
    "file:///etc/passwd",
    "http://127.0.0.1:9/x.png",
    "~/.ssh/id_rsa",
    "$HOME/x",
    "x.png\0.svg",
)
"""Names of devices, and paths and addresses, that nothing is to be read from."""

TEMPLATES = ("%s %d %n %(x)s", "{} {0} {x.__class__} {", "${x} `id` $(id)", "'; DROP TABLE x; --")
CONTROLS = (
    "".join(map(chr, range(32))) + "end",
    "a\x7fb\x80c\x85d\x9fe",
    "_x0000_ _x000D_ _x0041_ _xD800_ _xFFFF_ _x005F_x0000_",
    "\r\n\r\v\f\u2028\u2029",
    "\ufeffbefore and after\ufeff",
)
DIRECTIONS = (
    "\u202egnirts desrever",
    "a\u2067\u2067\u2066\u2068 never closed",
    "\u202a\u202b\u202d\u202e" * 100 + "deep",
    "\u2066" * 300 + "deeper \u05d0\u05d1 12",
    "\u202c\u2069\u202c closed twice",
    "\u05e9\u05dc\u05d5\u05dd (abc) \u0627\u0628 12%",
    "\u200e\u200f\u061c",
)
UNSEEN = (
    "\u200b\u200c\u200d\u2060",
    "z\u200be\u200br\u200bo",
    "\u00ad" * 50,
    "\ufe0f",
    "x\U000e0100\U000e01ef",
    "\U0001f3f4\U000e0067\U000e0062\U000e0073\U000e0063\U000e0074\U000e007f",
    "\U000e0001\U000e0041" * 20,
    "\u3164\u115f\u1160",
    "\u00a0\u2007\u202f",
)
PILED = (
    "Z" + "\u0300\u0315\u0334\u0489\u20dd" * 100,
    "\u0300\u0301 at the start",
    "".join(letter + "\u0336\u035b" * 10 for letter in "zalgo"),
    "\u1112\u1161\u11ab" * 50,
    "\u0e01\u0e49\u0e49\u0e49\u0e49\u0e49" * 40,
    "\u0915\u094d" * 200 + "\u0937",
    "\u0644\u064e\u0651" * 200,
)
"""More marks on a letter, or letters in a cluster, than any language has."""

PICTURED = (
    "\U0001f469\u200d\U0001f469\u200d\U0001f467\u200d\U0001f466",
    "\U0001f44d\U0001f3ff" * 30,
    "\U0001f1e9\U0001f1ea\U0001f1eb",
    "1\ufe0f\u20e3#\ufe0f\u20e3",
    "\u200d\U0001f469\u200d",
    "\U0001f600" * 500,
)
NO_CHARACTERS = (
    "\ufffe\uffff\ufdd0\U0001fffe\U0010ffff",
    "\ue000\uf8ff\U000f0000\U00100000",
    "\u0378\U000e0fff",
    "\ufffd\ufffc\ufff9\ufffa\ufffb",
)
LONE_SURROGATES = ("\ud800", "a\udc80b", "\udfff\ud800", "\udcff\udcfe.png")
"""Halves of pairs. No file can hold them in UTF-8, but a sloppy writer, an escape in a workbook
or a command line of odd bytes can."""

LONG = (
    "word" * 1250,
    "a " * 2500,
    "x" * 32_767,
    "line\n" * 6000,
    "\n" * 10_000 + "x",
    "W" * 40,
    "-" * 400,
    "3/4 " * 500,
    ";" * 3000,
    "|".join(map(str, range(2000))),
    "word; " * 2000,
    "(" * 1000,
    "___ " * 1000,
    "9" * 5000,
    "a\u0301" * 2500,
    "\u6c34" * 5000,
    "\u05d0" * 5000,
    "H\u2082O x\u00b2 " * 800,
)


def every_block() -> tuple[str, ...]:
    """Return texts of which each has sixteen characters of 4096; what is not assigned is in them.

    Surrogates are left out. The step is a prime, so that it does not keep to a column of the
    charts.
    """
    points = [point for point in range(0x20, 0x110000, 251) if not 0xD800 <= point < 0xE000]
    return tuple(
        "".join(map(chr, points[start : start + 16])) for start in range(0, len(points), 16)
    )


def assigned_letters(step: int = 7) -> tuple[str, ...]:
    """Return texts of twelve assigned letters and marks each, from all of Unicode."""
    kept = [
        chr(point)
        for point in range(0x20, 0x32000, step)
        if unicodedata.category(chr(point))[0] in "LMNPS"
    ]
    return tuple("".join(kept[start : start + 12]) for start in range(0, len(kept), 12))


SHORT = (
    *MARKUP,
    *OF_PDF,
    *FORMULAS,
    *PLACES,
    *TEMPLATES,
    *CONTROLS,
    *DIRECTIONS,
    *UNSEEN,
    *PILED,
    *PICTURED,
    *NO_CHARACTERS,
)
ALL = (*SHORT, *LONG)
