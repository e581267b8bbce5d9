"""Published formulae, each with its source: pure functions of numbers and arrays."""
