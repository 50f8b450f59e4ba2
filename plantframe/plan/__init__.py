"""What a plan is: the garden, its beds and frames, what grows on them, and what is to be done."""
