"""What a class got right: written down, reckoned with, and what it means for the next deck."""
