"""What every figure means and where it comes from, in the words of a runner."""
