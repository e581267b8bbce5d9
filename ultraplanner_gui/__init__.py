"""Ultraplanner: plan an ultramarathon from the first training week to the card in the pocket."""

__version__ = "0.1.0"
