"""The web app manifest as data: what a phone needs to put the app on its home screen.

Every address is relative to the manifest itself, so the app can live in any folder of any host.
There is no ``id``: it would be resolved against the host's root, and two copies in two folders
would be taken for one app. Without it a browser uses the start address, which is never changed.
"""

from typing import TypedDict


class Icon(TypedDict):
    """One picture of the app."""

    src: str
    sizes: str
    type: str
    purpose: str


class FileHandler(TypedDict):
    """Files the installed app opens, where a browser lets apps open files."""

    action: str
    accept: dict[str, list[str]]


class Manifest(TypedDict):
    """The members we set; see the W3C Web Application Manifest for what each does."""

    name: str
    short_name: str
    description: str
    lang: str
    dir: str
    start_url: str
    scope: str
    display: str
    display_override: list[str]
    background_color: str
    theme_color: str
    categories: list[str]
    icons: list[Icon]
    file_handlers: list[FileHandler]


SCALE = "#14181b"
"""The page's ground, so that nothing flashes while the app opens."""


def _icon(name: str, sizes: str, purpose: str) -> Icon:
    kind = "image/svg+xml" if name.endswith(".svg") else "image/png"
    return {"src": f"static/icons/{name}", "sizes": sizes, "type": kind, "purpose": purpose}


MANIFEST: Manifest = {
    "name": "Beadwright",
    "short_name": "Beadwright",
    "description": "Dial in a MIG/MAG joint beside the machine, with no signal.",
    "lang": "en",
    "dir": "ltr",
    "start_url": "./",
    "scope": "./",
    "display": "standalone",
    "display_override": ["standalone", "minimal-ui"],
    "background_color": SCALE,
    "theme_color": SCALE,
    "categories": ["utilities", "productivity"],
    "icons": [
        _icon("icon.svg", "any", "any"),
        _icon("icon-192.png", "192x192", "any"),
        _icon("icon-512.png", "512x512", "any"),
        _icon("icon-maskable-512.png", "512x512", "maskable"),
    ],
    "file_handlers": [{"action": "./shop/", "accept": {"application/json": [".beadwright"]}}],
}
