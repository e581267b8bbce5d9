"""Printed cards: content, then layout in millimetres, then paint."""
