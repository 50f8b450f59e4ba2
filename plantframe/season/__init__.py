"""The plan worked out: frames with parts, loads and steps; plantings with dates and weights."""
