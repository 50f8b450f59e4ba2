"""The commands: reading arguments, printing answers."""
