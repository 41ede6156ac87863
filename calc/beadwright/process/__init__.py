"""What wire, gas and arc do: melting, transfer, metal laid, plate melted."""
