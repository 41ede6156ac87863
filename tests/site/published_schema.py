"""The JSON Schema of the file of what a phone keeps, as the site publishes it."""

import json
from pathlib import Path
from typing import Any

import beadwright_site

SCHEMA: dict[str, Any] = json.loads(
    (Path(beadwright_site.__file__).parent / "static" / "kept-file.schema.json").read_text()
)
