"""What is known of plants, structures, materials and sources, one file an entry."""
