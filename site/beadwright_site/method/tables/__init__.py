"""Tables of Method that stand apart from their topic, a module each, for their length."""
