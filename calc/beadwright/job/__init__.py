"""The job as understood: every input of a query with its default, in SI."""
