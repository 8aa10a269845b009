"""Drawing only: fonts, inks, textures, faces, and one module for each paper."""
