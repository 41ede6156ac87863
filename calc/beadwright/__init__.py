"""Welding sums for gas metal arc with solid and cored wire, in SI, with sources.

The core of Beadwright: pure Python, no I/O, no HTML. ``beadwright.api`` is the entry.
"""

__version__ = "0.4.0"
