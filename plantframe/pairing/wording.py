"""Small turns of phrase that every answer uses."""

from __future__ import annotations


def capital(text: str) -> str:
    """A text with its first letter large, the others as they are."""
    return text[:1].upper() + text[1:]


def uncapital(text: str) -> str:
    """A text with its first letter small, the others as they are."""
    return text[:1].lower() + text[1:]
