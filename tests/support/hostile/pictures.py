"""Pictures in workbooks that would fill all memory, reach outside, or never be drawn."""

import struct
import zlib

from support.hostile.sound import PARTS, archive
from support.pictures import SVG

_MEDIA = "xl/media/image1.png"


def _chunk(name: bytes, data: bytes) -> bytes:
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))


def _png(width: int, height: int, rows: bytes) -> bytes:
    """Return a PNG that says it is so large (ISO/IEC 15948, 11.2.2), with these rows packed."""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    chunks = (_chunk(b"IHDR", head), _chunk(b"IDAT", zlib.compress(rows)), _chunk(b"IEND", b""))
    return b"\x89PNG\r\n\x1a\n" + b"".join(chunks)


def _svg(inside: str) -> bytes:
    return SVG.format(inside).encode()


def _ten_of(part: int) -> str:
    return f'<use xlink:href="#u{part}"/>' * 10


_USES = "".join(f'<g id="u{n}">{_ten_of(n - 1)}</g>' for n in range(1, 12))
_ONE_PIXEL = (
    "data:image/png;base64,iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9Q"
    "DwADhgGAWjR9awAAAABJRU5ErkJggg=="
)
_PICTURES = {
    "claims.png": _png(2**31 - 1, 2**31 - 1, b""),
    "bomb.png": _png(30_000, 30_000, bytes(90_001) * 300),
    "cut.png": _png(500, 500, bytes(1501)),
    "entities.svg": b'<!DOCTYPE svg [<!ENTITY a "ha"><!ENTITY b "&a;&a;&a;">]>' + _svg("&b;"),
    "outside.svg": b'<!DOCTYPE svg SYSTEM "http://127.0.0.1:9/x.dtd">'
    + _svg('<image width="9" height="9" xlink:href="file:///etc/hostname"/>'),
    "fetching.svg": _svg('<style>@import "http://127.0.0.1:9/";</style><rect width="9"/>'),
    "uses.svg": _svg(f'<g id="u0"><rect width="9" height="9"/></g>{_USES}'),
    "cycle.svg": _svg('<g id="a"><use xlink:href="#a"/></g>'),
    "deep.svg": _svg("<g>" * 100_000),
    "inside-another.svg": b"<page>" + _svg("<rect/>") + b"</page>",
    "endless-height.svg": _svg(f'<image width="9" height="4294967296" xlink:href="{_ONE_PIXEL}"/>'),
    "giant-pattern.svg": _svg(
        '<pattern id="a" width="99999" height="99999" patternUnits="userSpaceOnUse">'
        '<rect width="9" height="9"/></pattern><rect width="40" height="20" fill="url(#a)"/>'
    ),
    "masks.svg": _svg(
        '<mask id="m"><rect width="40" height="20" fill="white"/></mask>'
        + '<rect width="40" height="20" mask="url(#m)"/>' * 9000
    ),
}
PICTURES = {
    f"{name.replace('.', '-')}.xlsx": archive(PARTS | {_MEDIA: picture})
    for name, picture in _PICTURES.items()
}
