"""A picture's file without what was written beside the picture: where it was taken, by whom.

Nothing is decoded: what remains is byte for byte what the file held.
"""

from collections.abc import Iterator

_PNG_START = b"\x89PNG\r\n\x1a\n"
# The chunks that make the picture (ISO/IEC 15948, 11.2 and 11.3.2.1).
_PNG_KEPT = frozenset((b"IHDR", b"PLTE", b"tRNS", b"IDAT", b"IEND"))
_SOI, _EOI, _SOS = b"\xff\xd8", 0xD9, 0xDA
# APP1 to APP15 and comments (ITU-T T.81, table B.1); Adobe's APP14 tells how colours are coded.
_JPEG_DROPPED = frozenset((*range(0xE1, 0xF0), 0xFE)) - {0xEE}
_ALONE = frozenset((0x01, *range(0xD0, 0xD8)))


def stripped_png(data: bytes) -> bytes:
    """Return a PNG file with nothing but its picture; raise `ValueError` if it is damaged."""
    return _PNG_START + b"".join(_png_chunks(data))


def _png_chunks(data: bytes) -> Iterator[bytes]:
    at = len(_PNG_START)
    name = b""
    while name != b"IEND":
        length, name = int.from_bytes(data[at : at + 4]), data[at + 4 : at + 8]
        end = at + 12 + length
        if not name or end > len(data):
            raise ValueError(at)
        if name in _PNG_KEPT:
            yield data[at:end]
        at = end


def stripped_jpeg(data: bytes) -> bytes:
    """Return a JPEG file with nothing but its picture; raise `ValueError` if it is damaged.

    Whatever stands behind the picture, such as a second one, is left out.
    """
    return _SOI + b"".join(_jpeg_segments(data))


def _jpeg_segments(data: bytes) -> Iterator[bytes]:
    at = len(_SOI)
    marker = 0
    while marker != _EOI:
        start = data.index(b"\xff", at)
        marker = data[start + 1]
        end = _end_of(data, start, marker)
        if marker not in _JPEG_DROPPED:
            yield data[start:end]
        at = end


def _end_of(data: bytes, start: int, marker: int) -> int:
    if marker == _EOI or marker in _ALONE:
        return start + 2
    if marker == 0xFF:  # noqa: PLR2004 (a byte that fills up, before the marker proper)
        return start + 1
    end = start + 2 + int.from_bytes(data[start + 2 : start + 4])
    if end > len(data) or end < start + 4:
        raise ValueError(start)
    return _end_of_scan(data, end) if marker == _SOS else end


def _end_of_scan(data: bytes, at: int) -> int:
    """Return where the next marker stands that is not part of the coded picture."""
    while True:
        at = data.index(b"\xff", at)
        after = data[at + 1] if at + 1 < len(data) else _EOI
        if after and after not in _ALONE and after != 0xFF:  # noqa: PLR2004 (as above)
            return at
        at += 1 if after == 0xFF else 2  # noqa: PLR2004 (as above)
