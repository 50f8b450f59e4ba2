"""What a knowledgeable friend would check: rules, findings, and what has been set aside."""
