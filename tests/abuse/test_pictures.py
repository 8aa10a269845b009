"""Pictures that are absurd or hostile: little memory, one finding, and the cards all the same."""

import struct
import zlib

import pytest
from support.pictures import SVG

bounded = pytest.importorskip("support.bounded", reason="memory is bounded in another way here")
START = b"\x89PNG\r\n\x1a\n"


def chunk(name, data):
    return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))


def png(width, height, rows):
    """Return a PNG that says it is so large (ISO/IEC 15948, 11.2.2), with these rows packed."""
    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    body = zlib.compress(rows, 9)
    return START + chunk(b"IHDR", head) + chunk(b"IDAT", body) + chunk(b"IEND", b"")


def jpeg(width, height):
    """Return the start of a JPEG that says it is so large (ITU-T T.81, B.2.2)."""
    frame = struct.pack(">HBHHB", 11, 8, height, width, 1) + b"\x01\x11\x00"
    return b"\xff\xd8\xff\xc0" + frame + b"\xff\xd9"


def comments(count):
    text = zlib.compress(b"a" * 1_000_000, 9)
    many = b"".join(chunk(b"zTXt", b"a\0\0" + text) for _ in range(count))
    return png(1, 1, b"\0\0\0\0").replace(chunk(b"IEND", b""), many + chunk(b"IEND", b""))


HOSTILE = {
    "bomb.png": png(30_000, 30_000, bytes(90_001) * 300),
    "claim.png": png(2**31 - 1, 2**31 - 1, b""),
    "claim.jpg": jpeg(65_535, 65_535),
    "comments.png": comments(2000),
    "cut.png": png(5000, 5000, bytes(15_001) * 10),
    "deep.svg": SVG.format("<g>" * 200_000).encode(),
    "wide.svg": b'<svg xmlns="http://www.w3.org/2000/svg" width="1" height="999999"/>',
}


@pytest.mark.parametrize("name", HOSTILE)
def test_a_hostile_picture_is_never_unpacked(tmp_path, name):
    (tmp_path / name).write_bytes(HOSTILE[name])
    path = tmp_path / "Shore.csv"
    path.write_text(f"Prompt,Answer,Picture\nTides a day,2,{name}\n")
    assert bounded.content(path) == "Tides a day: 2"
