"""The document: frozen values in SI units, and the errors that speak to the user."""
