"""A query in fewer characters, so that a printed code can hold it: deflated, in letters of a link.

A check sum goes along: a link with one letter changed is refused, not answered as another job.

``queries.PACKED`` is the key it goes under.
"""

from __future__ import annotations

import re
import zlib
from binascii import Error, a2b_base64, b2a_base64

LONGEST_UNPACKED = 200_000
"""Characters a packed query may unpack to: what a weld list may have, written as a link [-]."""

_LETTERS = re.compile(r"[A-Za-z0-9_-]+")


class PackedQueryError(ValueError):
    """A packed query that cannot be unpacked."""


def packed(query: str) -> str:
    """Return a query deflated with its check sum, in letters, digits, ``-`` and ``_``.

    The form is that of RFC 1950 (zlib), in the letters of RFC 4648, section 5 (for addresses).

    Args:
        query: The query string [-].
    """
    text = b2a_base64(zlib.compress(query.encode(), 9), newline=False).decode("ascii")
    return text.rstrip("=").replace("+", "-").replace("/", "_")


def unpacked(text: str) -> str:
    """Return the query ``packed`` made a text from.

    Args:
        text: The packed query [-].

    Raises:
        PackedQueryError: If it is cut short, changed, or holds more than ``LONGEST_UNPACKED``.
    """
    if not _LETTERS.fullmatch(text):
        raise PackedQueryError("other letters than a packed query has")
    plain = text.replace("-", "+").replace("_", "/")
    expand = zlib.decompressobj()
    try:
        data = expand.decompress(a2b_base64(plain + "=" * (-len(plain) % 4)), LONGEST_UNPACKED)
        found = data.decode()
    except (Error, zlib.error, UnicodeDecodeError) as error:
        raise PackedQueryError("it cannot be unpacked") from error
    if not expand.eof or expand.unused_data:
        raise PackedQueryError("it ends too early or too late")
    return found
