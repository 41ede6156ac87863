"""The power source: how long it holds a current, what it draws from its circuit."""
