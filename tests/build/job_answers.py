"""Answers to many jobs as JSON: run here and, on the shipped runtime, inside Pyodide."""

import json

from beadwright.api import answer_json


def main(text: str) -> str:
    """Take a JSON list of [page, query]; return the JSON list of answers."""
    asked: list[tuple[str, str]] = json.loads(text)
    return json.dumps([answer_json(page, query) for page, query in asked])
