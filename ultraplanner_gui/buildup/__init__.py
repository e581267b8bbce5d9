"""The upper storey: day grid and its lanes."""
