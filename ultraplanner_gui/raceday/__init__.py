"""The lower storey: profile, targets and fuel along the race."""
