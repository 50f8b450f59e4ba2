"""Which plant suits which support: six questions asked of every pair, answered aloud."""
