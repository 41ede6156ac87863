"""The terminal: ``python -m beadwright PAGE 'QUERY'`` prints the page's answer as JSON."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Sequence

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
        f"examples:\n  beadwright {name} '{page.example}'\n"
        f"  beadwright {name} 'units=si&plate=10mm&leg=8mm&position=PB&gas=75/25'\n",
        formatter_class=argparse.RawDescriptionHelpFormatter,
    )
    parser.add_argument("page", choices=tuple(PAGES), help="the page to answer")
    parser.add_argument("query", nargs="?", default="", help="the query string, as in the address")
    parser.add_argument("--csv", action="store_true", help="the page's table instead of JSON")
    parser.add_argument("--version", action="version", version=__version__)
    return parser


def main(arguments: Sequence[str] | None = None) -> int:
    """Print an answer; return 0, or 2 if the query has errors.

    Args:
        arguments: Command line, or None for the process's own [-].
    """
    given = sys.argv[1:] if arguments is None else list(arguments)
    named = next((PAGES[each] for each in given if each in PAGES), PAGES["dial-in"])
    asked = _parser(named).parse_args(given)
    if asked.csv:
        return _print_csv(asked.page, asked.query)
    found = answer_json(asked.page, asked.query)
    json.dump(found, sys.stdout, indent=2, ensure_ascii=False)
    sys.stdout.write("\n")
    return 2 if "errors" in found else 0


def _print_csv(page: str, query: str) -> int:
    try:
        sys.stdout.write(answer_csv(page, query).replace("\r\n", "\n"))
    except FieldErrors as error:
        json.dump({"errors": error.messages}, sys.stdout, indent=2, ensure_ascii=False)
        sys.stdout.write("\n")
        return 2
    return 0


if __name__ == "__main__":
    raise SystemExit(main())
