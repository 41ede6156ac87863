"""Power source, circuit and what the shop keeps."""
