"""The terminal: ``python -m beadwright PAGE 'QUERY'`` prints the page's answer as JSON.

``python -m beadwright learn FILE`` prints what the coupons of a phone's file taught.
"""

from __future__ import annotations

import argparse
import json
import os
import sys
from collections.abc import Sequence
from pathlib import Path
from urllib.parse import quote

from beadwright import __version__
from beadwright.api import answer_csv, answer_json
from beadwright.errors import FieldErrors
from beadwright.key_help import key_help
from beadwright.pages import PAGES, Page


def _parser(page: Page) -> argparse.ArgumentParser:
    """Return the parser, with the keys of a page in its help."""
    name = page.name
    parser = argparse.ArgumentParser(
        prog="beadwright",
        description="Welding settings for a joint, as the pages give them, in JSON.",
        epilog=f"A query is keys and values, as key=value&key=value.\n\n"
        f"keys of {name}, in the groups of its page\n\n{key_help(page)}\n\n"
        f"keys of another page:\n  beadwright PAGE --help\n\n"
        f"what the coupons in a file saved on Shop taught, by wire, gas, machine and welder:\n"
        f"  beadwright learn FILE\n\n"
        f"examples:\n  beadwright {name} '{page.example}'\n"
        f"  beadwright {name} 'units=si&plate=10mm&leg=8mm&position=PB&gas=75/25'\n"
        f"a list of welds in a file:\n    beadwright list FILE.csv 'margin=25%25'\n",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("page", choices=tuple(PAGES), help="the page to answer")
    parser.add_argument("query", nargs="?", default="", help="the query string, as in the address")
    parser.add_argument("more", nargs="?", default="", help="of a list in a file: the other keys")
    parser.add_argument("--csv", action="store_true", help="the page's table instead of JSON")
    parser.add_argument("--version", action="version", version=__version__)
    return parser


PIPE_CLOSED = 141
"""Status where nobody reads on, as in ``… | head``: what a shell gives for other commands then."""


def main(arguments: Sequence[str] | None = None) -> int:
    """Print an answer; return 0, 2 if the query has errors, 141 if nobody reads it to its end.

    Args:
        arguments: Command line, or None for the process's own [-].
    """
    try:
        try:
            return _told(arguments)
        finally:
            sys.stdout.flush()  # here, not when Python ends: an error there is printed
    except BrokenPipeError:
        # What is still held for the closed pipe goes nowhere when Python ends.
        os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return PIPE_CLOSED


def _told(arguments: Sequence[str] | None) -> int:
    given = sys.argv[1:] if arguments is None else list(arguments)
    if given[:1] == ["learn"] and len(given) == 2 and not given[1].startswith("-"):
        return _learn(Path(given[1]))
    named = next((PAGES[each] for each in given if each in PAGES), PAGES["dial-in"])
    asked = _parser(named).parse_args(given)
    try:
        query = _query(asked.page, asked.query, asked.more)
    except OSError as error:
        return _refused({"query": [f"{asked.query} cannot be read: {error.strerror}."]})
    if asked.csv:
        return _print_csv(asked.page, query)
    found = answer_json(asked.page, query)
    json.dump(found, sys.stdout, indent=2, ensure_ascii=False)
    sys.stdout.write("\n")
    return 2 if "errors" in found else 0


def _query(page: str, given: str, more: str) -> str:
    """The query asked; of a weld list the file named in its place, as its lines."""
    if page != "list" or not given or "=" in given:
        return "&".join(part for part in (given, more) if part)
    raw = Path(given).read_bytes()
    try:
        text = raw.decode("utf-16" if raw[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError:
        text = raw.decode("cp1252", errors="replace")  # as spreadsheets on Windows write CSV
    lines = f"lines={quote(text)}"
    return f"{lines}&{more}" if more else lines


def _refused(messages: dict[str, list[str]]) -> int:
    json.dump({"errors": messages}, sys.stdout, indent=2, ensure_ascii=False)
    sys.stdout.write("\n")
    return 2


def _learn(path: Path) -> int:
    """Print what the coupons of a file taught; what is wrong goes to the terminal's error side."""
    from beadwright.coupons.kept_file import MOST_CHARACTERS, KeptFileError, read_kept_file
    from beadwright.coupons.learned_report import learned_report

    try:
        with path.open(encoding="utf-8-sig") as file:
            read = read_kept_file(file.read(MOST_CHARACTERS + 1))
    except (OSError, UnicodeDecodeError, KeptFileError) as error:
        sys.stderr.write(f"{path}: {error}\n")
        return 2
    json.dump({"learned": learned_report(read.coupons)}, sys.stdout, indent=2, ensure_ascii=False)
    sys.stdout.write("\n")
    return 0


def _print_csv(page: str, query: str) -> int:
    try:
        sys.stdout.write(answer_csv(page, query).replace("\r\n", "\n"))
    except FieldErrors as error:
        return _refused(error.messages)
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
