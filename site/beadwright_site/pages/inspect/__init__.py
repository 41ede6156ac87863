"""Inspect: a weld measured, judged, and mended."""
