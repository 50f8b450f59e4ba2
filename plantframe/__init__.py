"""plantframe: which vine climbs what, what carries it, and what to do first."""

__version__ = "0.1.0"
