"""The page for an address that leads nowhere."""
