"""What can go wrong in a build, each with the sentence the person at the terminal needs."""


class BuildError(Exception):
    """The build cannot go on; the message says what to do about it."""
