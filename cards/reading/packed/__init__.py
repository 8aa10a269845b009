"""Packed files: what is in a zip archive, read with care."""
