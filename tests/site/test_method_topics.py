"""The topics of Method: listed in one place, each a module, each named by a page it is under."""

import importlib
import subprocess
import sys

from beadwright.pages import PAGES
from beadwright_site.method.contents import TOPICS
from beadwright_site.page_table import SITE_PAGES


def test_every_topic_is_named_by_a_page_and_no_page_names_another() -> None:
    named = {key for name in PAGES for key in SITE_PAGES[name].load().topics}
    assert named == {topic.key for topic in TOPICS}


def test_a_topic_s_key_is_its_module_s_name() -> None:
    for topic in TOPICS:
        module = importlib.import_module(f"beadwright_site.method.topics.{topic.key}")
        assert topic.sections is module.sections


def test_what_the_phone_runs_loads_nothing_of_method() -> None:
    """Every page shown as the phone shows it, in an interpreter of its own."""
    script = (
        "import sys\n"
        "from beadwright.pages import PAGES\n"
        "from beadwright_site import phone\n"
        "from beadwright_site.page_table import SITE_PAGES\n"
        "for name in PAGES: assert SITE_PAGES[name].load().show('').html\n"
        "print([m for m in sys.modules if m.startswith('beadwright_site.method')])"
    )
    run = subprocess.run(
        [sys.executable, "-c", script], capture_output=True, text=True, check=True, timeout=120
    )
    assert run.stdout.strip() == "[]"
