"""A list of welds of one part: lines in, totals, an order to weld in and a quote out."""
