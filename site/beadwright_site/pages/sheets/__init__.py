"""Tables: the frozen sheets of settings, and the list of them."""
