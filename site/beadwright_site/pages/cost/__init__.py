"""Cost: whether another way to weld pays."""
