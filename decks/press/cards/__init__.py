"""The pages of cards: what stands on a card's side, and what printing and cutting need round it."""
