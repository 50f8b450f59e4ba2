"""One plan's answers: its season with advice, pairing and jobs, and offers that were tried."""
