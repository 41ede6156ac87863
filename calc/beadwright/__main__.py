"""The terminal: ``python -m beadwright PAGE 'QUERY'`` prints the page's answer as JSON."""

from __future__ import annotations

import argparse
import json
import sys
from collections.abc import Sequence

from beadwright import __version__
from beadwright.api import answer_csv, answer_json
from beadwright.errors import FieldErrors
from beadwright.pages import PAGES, Page


def _parser(page: Page) -> argparse.ArgumentParser:
    """Return the parser, with the keys of a page in its help."""
    keys = "\n".join(
        f"  {key:<14} {field.help}" + (f" [{field.default}]" if field.default else "")
        for key, field in page.fields.items()
    )
    parser = argparse.ArgumentParser(
        prog="beadwright",
        description="Welding settings for a joint, as the pages give them, in JSON.",
        epilog=f"keys of a query for {page.name} (default in brackets):\n{keys}\n\n"
        f"keys of another page:\n  beadwright PAGE --help\n\n"
        f"example:\n  beadwright {page.name} '{page.example}'\n",
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
