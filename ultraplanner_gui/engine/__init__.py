"""Derived figures: pure functions from the project to what the sheet shows."""
