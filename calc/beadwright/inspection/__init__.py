"""Inspect: a weld measured, judged by a code, and the change of setting that mends the next one."""
