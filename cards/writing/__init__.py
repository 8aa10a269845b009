"""Files that we write: whole or not at all, and never over one that is there."""
