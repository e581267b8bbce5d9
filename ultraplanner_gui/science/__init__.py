"""Published formulae, one module per subject: pure functions of numbers and arrays, each with its source."""
