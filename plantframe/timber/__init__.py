"""What the frames need from the yard and the shed, and how boards are cut into pieces."""
