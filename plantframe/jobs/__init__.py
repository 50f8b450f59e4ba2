"""The jobs of a plan: what has to be done, in which order, and by when."""
