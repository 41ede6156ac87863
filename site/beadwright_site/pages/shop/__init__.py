"""Shop: machine, circuit, prices and rates, asked once."""
