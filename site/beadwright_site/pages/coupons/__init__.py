"""Coupons: test welds timed, measured, kept, and what they teach."""
