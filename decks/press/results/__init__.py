"""What the marks of a deck say, on paper."""
