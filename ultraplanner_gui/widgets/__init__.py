"""Shared Qt pieces: tokens of colour and type, lane kit, tables, fields."""
