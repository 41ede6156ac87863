"""Says, as JSON, where a page is found: ``python page_seen.py PAGE QUERY``.

Run by itself, with the sources to look at on the path.
"""

from __future__ import annotations

import json
import shutil
import sys
from pathlib import Path
from typing import Any

from beadwright_build.freeze import freeze
from beadwright_build.places import OUT
from beadwright_build.release import list_files
from beadwright_site import phone
from beadwright_site.app import create_app
from beadwright_site.page_keys import carried


def _call(action: str, **payload: Any) -> Any:
    return json.loads(phone.call(action, json.dumps(payload)))


def _offline(page: str) -> list[str]:
    """Return what the release list names of a page, frozen with all others."""
    vendor, frozen, small = (OUT / name for name in ("vendor", "frozen", "small"))
    vendor.mkdir(parents=True)
    urls = freeze(vendor, frozen)
    assert f"/{page}/" in urls
    for path in (Path(page) / "index.html", Path("static/css") / f"{page}.css"):
        (small / path).parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(frozen / path, small / path)
    return [file.url for file in list_files(small, OUT / "cache")]


def main(page: str, query: str) -> None:
    """Print where the page is found."""
    client = create_app().test_client()
    seen = {
        "route": client.get(f"/{page}/?{query}").text,
        "bar": client.get("/").text,
        "style": client.get(f"/static/css/{page}.css").text,
        "keys": carried(page).split(),
        "phone": _call("page", page=page, query=query),
        "refused": _call("page", page=page, query="copies=many"),
        "json": _call("json", page=page, query=query),
        "offline": _offline(page),
    }
    json.dump(seen, sys.stdout)


if __name__ == "__main__":
    main(*sys.argv[1:])
