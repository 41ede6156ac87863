"""The Dial-in page's keys: the job's, and no others."""

from __future__ import annotations

from beadwright.job.page_query import PageQuery

DialInQuery = PageQuery
"""The Dial-in page's query."""
