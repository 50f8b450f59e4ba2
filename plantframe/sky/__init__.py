"""The sky over a garden: sun and shade, frost, soil warmth, warmth added up; pure functions."""
