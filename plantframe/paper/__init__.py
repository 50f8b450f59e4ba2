"""What is printed: drawings, the sheets for bench and bed, and the season's book."""
