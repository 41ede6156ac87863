"""Build the site; then serve it, or with ``--out DIR`` only write it to a folder.

Run as ``python -m beadwright_build``; ``build/serve`` prepares the environment first.
"""

import argparse
import sys
from pathlib import Path

from beadwright_build.errors import BuildError
from beadwright_build.publish import publish
from beadwright_build.serve import SiteServer
from beadwright_build.steps import build_site, size_report

DEFAULT_PORT = 8000


def main() -> int:
    """Run the command line; return the exit status."""
    asked = _arguments().parse_args()
    try:
        site = build_site(say=_say)
        if asked.out:
            publish(site, asked.out)
            print(size_report(), end="")
            print(f"written to {asked.out.resolve()}")
            return 0
        return _serve(site, asked.host, asked.port)
    except BuildError as error:
        print(f"build: {error}", file=sys.stderr)
        return 1


def _arguments() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="build/serve", description="Build the site and serve it on this machine."
    )
    parser.add_argument("--out", type=Path, metavar="DIR", help="only write the static folder here")
    parser.add_argument("--host", default="127.0.0.1", help="address to listen on (%(default)s)")
    parser.add_argument(
        "--port", type=int, help=f"port to listen on ({DEFAULT_PORT}, or any free one)"
    )
    return parser


def _serve(site: Path, host: str, port: int | None) -> int:
    server = _listen(site, host, port)
    server.start()
    print(f"{server.url}\nstop with Ctrl-C", flush=True)
    try:
        server.wait()
    except KeyboardInterrupt:
        server.stop()
    return 0


def _listen(site: Path, host: str, port: int | None) -> SiteServer:
    try:
        return SiteServer(site, host, DEFAULT_PORT if port is None else port)
    except OSError as error:
        if port is not None:
            raise BuildError(f"cannot listen on {host} port {port}: {error.strerror}") from error
        return SiteServer(site, host)


def _say(line: str) -> None:
    print(line, flush=True)


if __name__ == "__main__":
    sys.exit(main())
