"""Forms: the entries of a query, how each looks, and what the phone keeps of them."""
