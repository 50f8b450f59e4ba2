"""The plan text: what may be written, how it is read, and what is said of a slip."""
