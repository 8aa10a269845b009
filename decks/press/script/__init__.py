"""Scripts beyond plain Latin, Greek and Cyrillic: order, shapes, fallback faces, drawn signs."""
