"""The Dial-in page's keys: the job's, and no others."""

from __future__ import annotations

from beadwright.job.job_query import DEFAULTS, KEY_WORDS, JobQuery, read_query

__all__ = ["DEFAULTS", "KEY_WORDS", "JobQuery", "read_query"]
