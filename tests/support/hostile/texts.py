"""Delimited text in odd encodings, with odd ends and quotes, and far too wide."""

from support.hostile.sound import ROWS, TEXT

_CRAB = "Prompt,Answer\nWhere crabs live,in the café\nTides a day,2\n"
TEXTS = {
    "nul.csv": TEXT.replace(b"Tides", b"Ti\0des"),
    "utf-16-le.csv": b"\xff\xfe" + _CRAB.encode("utf-16-le"),
    "utf-16-be.csv": b"\xfe\xff" + _CRAB.encode("utf-16-be"),
    "utf-16-no-mark.csv": _CRAB.encode("utf-16-le"),
    "utf-16-odd.csv": b"\xff\xfe" + _CRAB.encode("utf-16-le") + b"x",
    "utf-32.csv": _CRAB.encode("utf-32"),
    "utf-7.csv": _CRAB.encode("utf-7"),
    "latin-1.csv": _CRAB.encode("latin-1"),
    "surrogate.csv": TEXT.replace(b"moon", b"mo\xed\xa0\x80on"),
    "overlong.csv": TEXT.replace(b"moon", b"mo\xc0\xafon"),
    "two-marks.csv": b"\xef\xbb\xbf\xef\xbb\xbf" + TEXT,
    "mark-inside.csv": TEXT.replace(b"moon", b"mo\xef\xbb\xbfon"),
    "only-mark.csv": b"\xef\xbb\xbf",
    "only-quote.csv": b'"',
    "only-commas.csv": b"," * 5000,
    "mixed-lines.csv": b"\r".join([TEXT, TEXT.replace(b"\n", b"\r\n"), TEXT]),
    "returns.csv": TEXT.replace(b"\n", b"\r"),
    "odd-breaks.csv": TEXT.replace(b" ", b"\x0b").replace(b"the", b"\x1c\x85\x0c"),
    "unclosed.csv": TEXT + b'"Where limpets live,rock\n' * 50,
    "quotes.csv": TEXT.replace(b"moon", b'mo"on"""'),
    "wide.csv": b"Prompt,Answer" + b",x" * 100_000 + b"\nTides a day,2\n",
    "wide-rows.csv": TEXT + b"x," * 60_000 + b"\n" + TEXT,
    "long-line.csv": TEXT + b"x" * 3_000_000,
    "long-field.csv": TEXT + b"x" * 140_000 + b",y\n",
    "end-of-file.csv": TEXT + b"\x1a",
    "dash.tsv": TEXT.replace(b",", b"\t"),
    "commands.csv": b"Prompt,Answer\n=cmd|' /C calc'!A0,@SUM(1+1)\n"
    b'"=WEBSERVICE(""http://127.0.0.1:9/"")",+1\n-2+3,\t=1\n',
    "paths.csv": b"Prompt,Answer,Picture\n"
    + b"".join(
        b"Clue %d of the shore,word%d,%b\n" % (n, n, path)
        for n, path in enumerate(
            (
                b"../../etc/passwd",
                b"/etc/passwd",
                b"file:///etc/passwd",
                b"http://127.0.0.1:9/x.png",
                b"\\\\127.0.0.1\\share\\x.png",
                b"C:\\Windows\\win.ini",
                b"con.png",
                b"/dev/zero",
                b"x" * 5000,
                b"~/.ssh/id_rsa",
                b"$HOME/x.png",
                b"{0.__class__}",
            )
        )
    ),
    "all-right.csv": b"Prompt,Answer,Also right\n"
    + b"".join(
        b"Name a thing of the shore (%d),thing%d,%b\n"
        % (n, n, b"; ".join(b"thing%d" % other for other in range(100) if other != n))
        for n in range(100)
    ),
    "headings-only.csv": ",".join(ROWS[0]).encode(),
}
