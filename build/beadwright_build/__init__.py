"""Make the static folder: freeze the pages, pack the Python they run on, list and hash it all."""
