"""How hypothesis works here: the same examples every run, however slow the machine.

``pytest tests/calc --hypothesis-profile=search`` looks for new ones.
"""

from hypothesis import settings

settings.register_profile("repeatable", derandomize=True, deadline=None)
settings.register_profile("search", max_examples=1000, deadline=None)
settings.load_profile("repeatable")
