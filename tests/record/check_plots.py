"""Checks a screenshot or a printed record with nothing but the standard library.

check_plots.py PICTURE.png WIDTH      the picture is WIDTH pixels wide and holds the colours of plotted lines and bars
check_plots.py --pages FILE.pdf MOST  the file has at least one page and at most MOST
"""

import re
import struct
import sys
import zlib

# Colours of the first two lines of every chart and of a bar (Okabe and Ito, 2008), and how many pixels of each must be there.
COLOURS = {"first line and bars": ((0x00, 0x72, 0xB2), 2000), "second line": ((0xD5, 0x5E, 0x00), 100)}


def pixels(path):
    """Rows of a PNG with 8 bits per channel, without interlace, as (width, height, channels, rows)."""
    data = open(path, "rb").read()
    assert data[:8] == b"\x89PNG\r\n\x1a\n", "not a PNG"
    at, packed, header = 8, b"", None
    while at < len(data):
        (length,) = struct.unpack(">I", data[at:at + 4])
        kind, content = data[at + 4:at + 8], data[at + 8:at + 8 + length]
        if kind == b"IHDR":
            header = struct.unpack(">IIBBBBB", content)
        elif kind == b"IDAT":
            packed += content
        at += 12 + length
    width, height, depth, colour, _, _, interlace = header
    assert depth == 8 and colour in (2, 6) and interlace == 0, "unexpected kind of PNG"
    channels = 3 if colour == 2 else 4
    raw, stride = zlib.decompress(packed), width * channels
    rows, above = [], bytearray(stride)
    for y in range(height):
        start = y * (stride + 1)
        method, line = raw[start], bytearray(raw[start + 1:start + 1 + stride])
        for i in range(stride):
            left = line[i - channels] if i >= channels else 0
            up = above[i]
            corner = above[i - channels] if i >= channels else 0
            if method == 1:
                line[i] = (line[i] + left) & 255
            elif method == 2:
                line[i] = (line[i] + up) & 255
            elif method == 3:
                line[i] = (line[i] + ((left + up) >> 1)) & 255
            elif method == 4:
                guess = left + up - corner
                nearest = min((abs(guess - left), 0, left), (abs(guess - up), 1, up), (abs(guess - corner), 2, corner))[2]
                line[i] = (line[i] + nearest) & 255
        rows.append(bytes(line))
        above = line
    return width, height, channels, rows


def count(rows, channels, colour):
    wanted = bytes(colour)
    return sum(1 for row in rows for i in range(0, len(row), channels) if row[i:i + 3] == wanted)


def main():
    if sys.argv[1] == "--pages":
        text = open(sys.argv[2], "rb").read()
        found = len(re.findall(rb"/Type\s*/Page[^s]", text))
        most = int(sys.argv[3])
        if not 1 <= found <= most:
            sys.exit(f"printed on {found} pages; 1 to {most} are allowed")
        print(f"printed: {found} pages")
        return
    wanted = int(sys.argv[2])
    width, _, channels, rows = pixels(sys.argv[1])
    if width != wanted:
        sys.exit(f"the picture is {width} px wide, not {wanted}")
    for name, (colour, least) in COLOURS.items():
        found = count(rows, channels, colour)
        if found < least:
            sys.exit(f"at {width} px: only {found} pixels in the colour of {name}, expected at least {least}: a plot did not render")
    print(f"rendered at {width} px: plots are there")


main()
