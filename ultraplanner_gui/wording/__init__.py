"""The only place where numbers become text for people."""
