"""The diary: what was picked and learned, beds by year, and how one season leads to the next."""
