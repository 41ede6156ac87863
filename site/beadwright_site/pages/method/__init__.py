"""Method: where every number comes from."""
