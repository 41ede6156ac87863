"""What a weld costs and whether another way pays."""
