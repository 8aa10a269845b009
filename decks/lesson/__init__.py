"""What happens in the lesson itself: who moves when, what is called, and how much is enough."""
