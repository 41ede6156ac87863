"""The pages of Beadwright: live under Flask, frozen at build time, and run on the phone."""
